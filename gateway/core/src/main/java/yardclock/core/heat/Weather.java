package yardclock.core.heat;

/**
 * What the outdoor model needs to know of the air and the light.
 *
 * @param celsius air temperature, °C
 * @param percent relative humidity, percent
 * @param windMs wind at 2 m above ground, m/s
 * @param solarWm2 sunlight on a level surface, W/m²
 * @param hectopascal air pressure, hPa
 * @param sun where the sun stands
 */
record Weather(
        double celsius,
        double percent,
        double windMs,
        double solarWm2,
        double hectopascal,
        Sun sun) {
    private static final double SOLAR_CONSTANT = 1367;

    /** No more than this share of the light outside the atmosphere reaches the ground. */
    private static final double CLEAREST = 0.85;

    /** Closer to the horizon than half a degree, no light counts as direct. */
    private static final double LOWEST_COS = StrictMath.cos(StrictMath.toRadians(89.5));

    Weather with(double otherCelsius, double otherPercent) {
        return new Weather(otherCelsius, otherPercent, windMs, solarWm2, hectopascal, sun);
    }

    double kelvin() {
        return celsius + Vapour.ZERO_C;
    }

    /** Vapour pressure, hPa. */
    double vapour() {
        return percent / 100 * MoistAir.saturation(kelvin());
    }

    /** Light on a level surface outside the atmosphere, W/m². */
    static double outside(Sun sun) {
        return SOLAR_CONSTANT * Math.max(0, sun.cosZenith()) / (sun.distance() * sun.distance());
    }

    private double outside() {
        return outside(sun);
    }

    private double clearness() {
        return outside() > 0 ? Math.min(CLEAREST, solarWm2 / outside()) : 0;
    }

    /** The light that counts: no more than a clear sky lets through. */
    double light() {
        return clearness() * outside();
    }

    /** Which part of it comes straight from the sun. */
    double direct() {
        double clear = clearness();
        if (clear <= 0 || sun.cosZenith() < LOWEST_COS) {
            return 0;
        }
        return Math.min(0.9, Math.max(0, StrictMath.exp(3 - 1.34 * clear - 1.65 / clear)));
    }
}
