package yardclock.core.heat;

import yardclock.core.course.HeatRules;

import java.math.BigDecimal;
import java.util.Comparator;

/**
 * What one place or person read off, in whole numbers. Null is "not measured".
 *
 * @param from who or what read it
 * @param arrivedMicros gateway time at which it was known
 * @param measuredMicros gateway time at which it was read off, at most {@code arrivedMicros}
 * @param epochSecond the same by the wall clock, for the place of the sun and nothing else
 * @param windMmPerS wind at 2 m
 * @param solarWm2 sunlight on a level surface
 * @param sky what was declared of the sun when it came; null while nobody said anything
 */
public record HeatReading(
        From from,
        long arrivedMicros,
        long measuredMicros,
        long epochSecond,
        int centiCelsius,
        int centiPercent,
        Integer globeCentiCelsius,
        Integer windMmPerS,
        Integer solarWm2,
        Sky sky) {

    /** A day's order by when it was read off; equal only when nothing but the arrival differs. */
    public static final Comparator<HeatReading> BY_MEASURING =
            Comparator.comparingLong(HeatReading::measuredMicros)
                    .thenComparing(r -> r.from().toString())
                    .thenComparing(HeatReading::values);

    /**
     * Where a reading is from.
     *
     * @param source the unit's id, or the device a person wrote the reading on
     * @param person empty for a sensor
     * @param instrument what a person read it off; empty for a sensor
     */
    public record From(String source, String person, String instrument) {
        public static From sensor(String unit) {
            return new From(unit, "", "");
        }

        public boolean isByHand() {
            return !person.isEmpty();
        }
    }

    /** The values as a text that differs when one does. */
    private String values() {
        return centiCelsius
                + "/"
                + centiPercent
                + "/"
                + globeCentiCelsius
                + "/"
                + windMmPerS
                + "/"
                + solarWm2;
    }

    public boolean hasValuesOf(HeatReading other) {
        return values().equals(other.values());
    }

    /** Sunlight without wind, or in a yard whose place nobody gave, tells the model nothing. */
    boolean lacksForModel(HeatRules rules) {
        return solarWm2 != null
                && globeCentiCelsius == null
                && (windMmPerS == null || rules.place() == null);
    }

    Measured measured(HeatRules rules, int workWatts) {
        HeatRules.Place at = rules.place();
        Measured.Place place =
                at == null
                        ? null
                        : new Measured.Place(
                                epochSecond,
                                scaled(at.northMicroDegrees(), 6),
                                scaled(at.eastMicroDegrees(), 6));
        return new Measured(
                scaled(centiCelsius, 2),
                scaled(centiPercent, 2),
                scaled(globeCentiCelsius, 2),
                null,
                scaled(windMmPerS, 3),
                lacksForModel(rules) ? null : scaled(solarWm2, 0),
                place,
                null,
                BigDecimal.valueOf(workWatts),
                sky);
    }

    private static BigDecimal scaled(Integer value, int digits) {
        return value == null ? null : BigDecimal.valueOf(value, digits);
    }
}
