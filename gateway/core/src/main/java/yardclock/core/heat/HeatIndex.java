package yardclock.core.heat;

/**
 * Heat index of the US National Weather Service (Weather Prediction Center, "Heat Index Equation"),
 * in degrees Fahrenheit from air temperature in degrees Fahrenheit and relative humidity in
 * percent.
 *
 * <p>A simple value is used below 80 °F; above, the nine-term regression with its two adjustments.
 * The regression's own error is stated there as ± 1.3 °F. The function jumps at the switch by up to
 * 3.3 °F, which is why levels need hysteresis.
 */
public final class HeatIndex {
    /** From this averaged simple value on the regression holds, °F. */
    private static final int SWITCH = 80;

    private HeatIndex() {}

    public static double fahrenheit(double t, double rh) {
        double averaged = simple(t, rh);
        if (averaged < SWITCH) {
            return averaged;
        }
        return regression(t, rh) - dryAdjustment(t, rh) + humidAdjustment(t, rh);
    }

    private static double simple(double t, double rh) {
        return (0.5 * (t + 61.0 + (t - 68.0) * 1.2 + rh * 0.094) + t) / 2;
    }

    static double regression(double t, double rh) {
        return -42.379
                + 2.04901523 * t
                + 10.14333127 * rh
                - 0.22475541 * t * rh
                - 0.00683783 * t * t
                - 0.05481717 * rh * rh
                + 0.00122874 * t * t * rh
                + 0.00085282 * t * rh * rh
                - 0.00000199 * t * t * rh * rh;
    }

    /** Which part of the definition gives the value at this temperature and humidity. */
    static String branch(double t, double rh) {
        if (simple(t, rh) < SWITCH) {
            return "simple";
        }
        if (dryAdjustment(t, rh) > 0) {
            return "regression, low humidity";
        }
        return humidAdjustment(t, rh) > 0 ? "regression, high humidity" : "regression";
    }

    private static double dryAdjustment(double t, double rh) {
        return rh < 13 && t >= 80 && t <= 112
                ? (13 - rh) / 4 * Math.sqrt((17 - Math.abs(t - 95)) / 17)
                : 0;
    }

    private static double humidAdjustment(double t, double rh) {
        return rh > 85 && t >= 80 && t <= 87 ? (rh - 85) / 10 * ((87 - t) / 5) : 0;
    }

    public static double toFahrenheit(double celsius) {
        return celsius * 9 / 5 + 32;
    }
}
