package yardclock.core.heat;

/**
 * Water vapour in air: pressures in Pa, temperatures in °C, relative humidity in percent.
 *
 * <p>Saturation after Hyland and Wexler as printed in the ASHRAE Handbook—Fundamentals, chapter 1
 * ("Psychrometrics"), over ice below 0 °C and over water above; valid −100 to 200 °C, and within
 * 0.03 % of the handbook's own table. No method here stores anything; every one may be called from
 * any thread. {@link StrictMath} gives the same bits on every machine.
 */
final class Vapour {
    /** Ratio of the molar masses of water and dry air (the handbook's value). */
    static final double MASS_RATIO = 0.621945;

    /** 0 °C in K. */
    static final double ZERO_C = 273.15;

    private static final double LOWEST_C = -100;

    private Vapour() {}

    /** Pressure of saturated vapour. */
    static double saturationPa(double celsius) {
        double t = celsius + ZERO_C;
        double logarithm =
                celsius < 0
                        ? -5674.5359 / t
                                + 6.3925247
                                + t * (-9.677843e-3 + t * (6.2215701e-7 + t * 2.0747825e-9))
                                - 9.484024e-13 * t * t * t * t
                                + 4.1635019 * StrictMath.log(t)
                        : -5800.2206 / t
                                + 1.3914993
                                + t * (-4.8640239e-2 + t * (4.1764768e-5 - t * 1.4452093e-8))
                                + 6.5459673 * StrictMath.log(t);
        return StrictMath.exp(logarithm);
    }

    static double pressurePa(double celsius, double percent) {
        return percent / 100 * saturationPa(celsius);
    }

    /**
     * Temperature at which this air would be saturated: found, not fitted, so its error is ours.
     */
    static double dewPointC(double celsius, double percent) {
        double vapour = pressurePa(celsius, percent);
        return Root.of(t -> saturationPa(t) - vapour, LOWEST_C, celsius);
    }

    /** Mass of water per mass of dry air. */
    static double ratio(double vapourPa, double airPa) {
        return MASS_RATIO * vapourPa / (airPa - vapourPa);
    }
}
