package yardclock.core.heat;

import yardclock.core.heat.Instruments.Span;

/**
 * WBGT where the sun is declared and nothing measures it: a range from the outdoor model, between
 * the least light with the most wind and the most light with the least wind that the declaration
 * allows. What acts is the upper end; the value is the middle and means little.
 */
final class DeclaredSun {
    /** Wind at 2 m in a yard, when nobody measured it, m/s (common practice, no source). */
    private static final double STILL_MS = 0.5;

    private static final double BREEZY_MS = 4;

    /** The sun's height where the place is not known: 30° to 65° above the horizon. */
    private static final Sun LOW = new Sun(0.5, 1);

    private static final Sun HIGH = new Sun(0.9, 1);

    private final Measured measured;
    private final Sky sky;

    DeclaredSun(Measured measured) {
        this.measured = measured;
        this.sky = measured.sky();
    }

    /** By night the sun shines nowhere, whatever was declared. */
    boolean isUp() {
        return measured.place() == null || sun(HIGH).cosZenith() > 0;
    }

    WbgtReading reading() {
        Span low = span(weather(sky.least(), wind(BREEZY_MS), sun(LOW)));
        Span high = span(weather(sky.most(), wind(STILL_MS), sun(HIGH)));
        return new WbgtReading((low.low() + high.high()) / 2, low.low(), high.high(), method());
    }

    private String method() {
        return "range for the declared sun"
                + (measured.windMs() == null ? ", wind not measured" : "")
                + (measured.place() == null ? ", place not known" : "");
    }

    private Sun sun(Sun unplaced) {
        Measured.Place place = measured.place();
        return place == null
                ? unplaced
                : Sun.at(
                        place.epochSecond(),
                        place.latitude().doubleValue(),
                        place.longitude().doubleValue());
    }

    private double wind(double unmeasured) {
        return measured.windMs() == null ? unmeasured : measured.windMs().doubleValue();
    }

    private Weather weather(double share, double wind, Sun sun) {
        return new Weather(
                measured.celsius().doubleValue(),
                measured.percent().doubleValue(),
                wind,
                share * Weather.outside(sun),
                WbgtReading.pascal(measured) / WbgtReading.PASCAL,
                sun);
    }

    private static Span span(Weather weather) {
        return Instruments.SHT3X.span(
                (t, rh) -> new OutdoorModel(weather.with(t, rh)).wbgtC(),
                weather.celsius(),
                weather.percent());
    }
}
