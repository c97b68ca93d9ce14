package yardclock.core.heat;

/**
 * Where the sun stands: the low-precision formulas of the Astronomical Almanac ("Approximate Solar
 * Coordinates", US Naval Observatory), good to about 0.01° from 1950 to 2050. Without refraction.
 *
 * @param cosZenith cosine of the angle from straight up; negative below the horizon
 * @param distance from the sun in astronomical units
 */
record Sun(double cosZenith, double distance) {
    private static final double DAYS_TO_2000 = 10_957.5;
    private static final double SECONDS = 86_400;

    /** Latitude north and longitude east, in degrees. */
    static Sun at(long epochSecond, double latitude, double longitude) {
        double days = epochSecond / SECONDS - DAYS_TO_2000;
        double anomaly = StrictMath.toRadians(357.528 + 0.9856003 * days);
        double lambda =
                StrictMath.toRadians(
                        280.460
                                + 0.9856474 * days
                                + 1.915 * StrictMath.sin(anomaly)
                                + 0.020 * StrictMath.sin(2 * anomaly));
        double tilt = StrictMath.toRadians(23.439 - 4e-7 * days);
        double ascension =
                StrictMath.atan2(
                        StrictMath.cos(tilt) * StrictMath.sin(lambda), StrictMath.cos(lambda));
        double declination = StrictMath.asin(StrictMath.sin(tilt) * StrictMath.sin(lambda));
        double siderealHours = 18.697374558 + 24.06570982441908 * days;
        double hourAngle = StrictMath.toRadians(siderealHours % 24 * 15 + longitude) - ascension;
        double north = StrictMath.toRadians(latitude);
        double cosZenith =
                StrictMath.sin(north) * StrictMath.sin(declination)
                        + StrictMath.cos(north)
                                * StrictMath.cos(declination)
                                * StrictMath.cos(hourAngle);
        double distance =
                1.00014 - 0.01671 * StrictMath.cos(anomaly) - 0.00014 * StrictMath.cos(2 * anomaly);
        return new Sun(cosZenith, distance);
    }
}
