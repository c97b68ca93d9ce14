package yardclock.core.heat;

/**
 * Wet-bulb globe temperature in °C: how natural wet bulb, globe and air weigh (ISO 7243; OSHA
 * Technical Manual III-4; NIOSH 2016-106). The instruments' own errors are the error.
 */
final class Wbgt {
    /** Wind that a shaded place has if nobody measured it (heat design; common practice). */
    static final double INDOOR_WIND_MS = 0.3;

    private Wbgt() {}

    static double inSun(double naturalWetBulb, double globe, double air) {
        return 0.7 * naturalWetBulb + 0.2 * globe + 0.1 * air;
    }

    static double outOfSun(double naturalWetBulb, double globe) {
        return 0.7 * naturalWetBulb + 0.3 * globe;
    }

    /**
     * From air temperature and humidity alone, where the globe would show the air's temperature: in
     * the shade and nowhere else. In the sun the true value is 2.6 to 6.3 °C higher.
     */
    static double inShade(double celsius, double percent, double airPa, double windMs) {
        double wet = WetBulb.psychrometricC(celsius, percent, airPa);
        return outOfSun(WetBulb.naturalInShadeC(celsius, wet, windMs), celsius);
    }
}
