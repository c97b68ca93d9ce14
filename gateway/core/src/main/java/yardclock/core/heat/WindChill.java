package yardclock.core.heat;

/**
 * Wind chill of the US National Weather Service (2001), °F from air temperature in °F and wind at
 * 10 m in mph. Meant for 50 °F and below and 3 mph and above: below 3 mph it is the air
 * temperature, above 50 °F there is none.
 */
final class WindChill {
    private static final double WARMEST_F = 50;
    private static final double STILL_MPH = 3;
    private static final double MPH_PER_MS = 1 / 0.44704;

    private WindChill() {}

    /** Not a number above 50 °F. */
    static double fahrenheit(double t, double mph) {
        if (t > WARMEST_F) {
            return Double.NaN;
        }
        if (mph < STILL_MPH) {
            return t;
        }
        double wind = StrictMath.pow(mph, 0.16);
        return 35.74 + 0.6215 * t - 35.75 * wind + 0.4275 * t * wind;
    }

    static double mph(double metresPerSecond) {
        return metresPerSecond * MPH_PER_MS;
    }
}
