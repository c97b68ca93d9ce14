package yardclock.core.heat;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * What was measured, as it was read off. Temperature and humidity always are; of the others null is
 * "not measured" and never a value.
 *
 * @param celsius air temperature, °C
 * @param percent relative humidity, percent
 * @param globe globe temperature, °C
 * @param naturalWetBulb natural wet bulb, °C
 * @param windMs wind at 2 m, m/s
 * @param solarWm2 sunlight on a level surface, W/m²; more than nothing means that the sun shines
 * @param place where and when the sunlight was measured
 * @param hectopascal air pressure, hPa; standard where it is null
 * @param workWatts metabolic rate of the work, W
 * @param sky what was said of the sun; asked only where neither globe nor sunlight was measured
 */
public record Measured(
        BigDecimal celsius,
        BigDecimal percent,
        BigDecimal globe,
        BigDecimal naturalWetBulb,
        BigDecimal windMs,
        BigDecimal solarWm2,
        Place place,
        BigDecimal hectopascal,
        BigDecimal workWatts,
        Sky sky) {
    private static final long YEAR_1950 = -631_152_000;
    private static final long YEAR_2050 = 2_524_608_000L;

    /** Globe may be this much colder than the air, by error or under a clear night, K. */
    private static final int GLOBE_BELOW_AIR = 3;

    public Measured {
        Objects.requireNonNull(celsius, "air temperature");
        Objects.requireNonNull(percent, "relative humidity");
    }

    /** Degrees north and east, and the second since 1970. */
    public record Place(long epochSecond, BigDecimal latitude, BigDecimal longitude) {}

    /** Where the formulas hold for a quantity. */
    private record Range(String what, int from, int to, String unit) {
        String notWithin() {
            return " is not within " + from + " to " + to + ' ' + unit + '.';
        }
    }

    /** A sentence for each value no formula here holds for; such a reading is not reckoned with. */
    public List<String> wrong() {
        List<String> wrong = new ArrayList<>();
        check(wrong, celsius, new Range("air temperature", -40, 60, "°C"));
        check(wrong, percent, new Range("relative humidity", 1, 100, "%"));
        check(wrong, globe, new Range("globe temperature", -40, 100, "°C"));
        check(wrong, naturalWetBulb, new Range("natural wet bulb", -40, 60, "°C"));
        check(wrong, windMs, new Range("wind", 0, 60, "m/s"));
        check(wrong, solarWm2, new Range("sunlight", 0, 1_400, "W/m²"));
        check(wrong, hectopascal, new Range("air pressure", 500, 1_100, "hPa"));
        check(wrong, workWatts, new Range("work", 65, 1_200, "W"));
        if (place != null) {
            check(wrong, place.latitude(), new Range("latitude", -90, 90, "degrees"));
            check(wrong, place.longitude(), new Range("longitude", -180, 180, "degrees"));
            if (place.epochSecond() < YEAR_1950 || place.epochSecond() > YEAR_2050) {
                wrong.add("The sun's place is reckoned for the years 1950 to 2050 only.");
            }
        }
        if (wrong.isEmpty()) {
            together(wrong);
        }
        return wrong;
    }

    private void together(List<String> wrong) {
        boolean isGlobeTooCold =
                globe != null && globe.doubleValue() < celsius.doubleValue() - GLOBE_BELOW_AIR;
        if (isGlobeTooCold) {
            wrong.add("The globe is more than 3 °C colder than the air: look at the instruments.");
        }
        if (naturalWetBulb != null && globe == null) {
            wrong.add("A natural wet bulb needs the globe temperature beside it.");
        }
        if (needsModel() && (windMs == null || place == null)) {
            wrong.add("Sunlight without a globe needs wind, time, latitude and longitude too.");
        }
    }

    /** True where sunlight is given and no globe tells what it does. */
    boolean needsModel() {
        return solarWm2 != null && globe == null;
    }

    private static void check(List<String> wrong, BigDecimal value, Range range) {
        boolean isOutside =
                value != null
                        && (value.doubleValue() < range.from() || value.doubleValue() > range.to());
        if (isOutside) {
            wrong.add("The " + range.what() + ' ' + value.toPlainString() + range.notWithin());
        }
    }
}
