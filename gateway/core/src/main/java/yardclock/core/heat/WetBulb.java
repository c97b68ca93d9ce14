package yardclock.core.heat;

/**
 * Wet-bulb temperatures in °C from air temperature in °C and relative humidity in percent.
 *
 * <p>Three kinds, never to be mixed up: the <em>psychrometric</em> one of a well ventilated and
 * shaded wick; Stull's closed form of it, a cross-check; and the <em>natural</em> one of a wick
 * that only the wind there ventilates, which WBGT wants.
 */
final class WetBulb {
    static final double STANDARD_PA = 101_325;

    /** Speeds below and above which the wind no longer matters to a shaded wick, m/s. */
    private static final double STILL = 0.03;

    private static final double VENTILATED = 3;

    private WetBulb() {}

    /**
     * Solves the psychrometric equation for the temperature of adiabatic saturation (ASHRAE
     * Handbook—Fundamentals, chapter 1), with its other constants over ice. Within 0.02 °C of an
     * independent library at sea level.
     */
    static double psychrometricC(double celsius, double percent, double airPa) {
        double ratio = Vapour.ratio(Vapour.pressurePa(celsius, percent), airPa);
        double dewPoint = Vapour.dewPointC(celsius, percent);
        return Root.of(wet -> ratioAt(wet, celsius, airPa) - ratio, dewPoint - 1, celsius);
    }

    /** The humidity ratio that air at {@code celsius} has if its wet bulb shows {@code wet}. */
    private static double ratioAt(double wet, double celsius, double airPa) {
        double saturated = Vapour.ratio(Vapour.saturationPa(wet), airPa);
        return wet >= 0
                ? ((2501 - 2.326 * wet) * saturated - 1.006 * (celsius - wet))
                        / (2501 + 1.86 * celsius - 4.186 * wet)
                : ((2830 - 0.24 * wet) * saturated - 1.006 * (celsius - wet))
                        / (2830 + 1.86 * celsius - 2.1 * wet);
    }

    /**
     * Stull 2011 (doi 10.1175/JAMC-D-11-0143.1): a fit at standard pressure for 5 to 99 % and −20
     * to 50 °C; its own error is −1 to +0.65 °C.
     */
    static double stullC(double celsius, double percent) {
        return celsius * StrictMath.atan(0.151977 * StrictMath.sqrt(percent + 8.313659))
                + StrictMath.atan(celsius + percent)
                - StrictMath.atan(percent - 1.676331)
                + 0.00391838 * StrictMath.pow(percent, 1.5) * StrictMath.atan(0.023101 * percent)
                - 4.686035;
    }

    /**
     * The natural wet bulb in the shade after Bernard: the wick falls short of the psychrometric
     * value by a share that the wind decides, 0.85 in still air and none from 3 m/s.
     */
    static double naturalInShadeC(double celsius, double psychrometricC, double windMs) {
        return celsius - share(windMs) * (celsius - psychrometricC);
    }

    private static double share(double windMs) {
        if (windMs <= STILL) {
            return 0.85;
        }
        return windMs >= VENTILATED ? 1 : 0.96 + 0.069 * StrictMath.log10(windMs);
    }
}
