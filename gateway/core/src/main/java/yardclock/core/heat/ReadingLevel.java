package yardclock.core.heat;

import yardclock.core.course.HeatRules;

import java.util.List;

/**
 * What one reading says of itself: its figures, and the level its upper ends reach.
 *
 * @param level 0 to 4, by value + U
 * @param heldLevel what the reading keeps a level from falling under: the bounds count from 3 °F or
 *     1.0 °C sooner; never below {@code level}
 * @param indexDeciF heat index, tenths of °F
 * @param indexHighDeciF its upper end by the instruments' tolerances
 * @param wbgtCentiC WBGT without what gear adds, 1/100 °C
 * @param wbgtLowCentiC its lower end
 * @param wbgtHighCentiC its upper end
 * @param method how the WBGT was had
 * @param dewPointCentiC dew point, 1/100 °C
 */
public record ReadingLevel(
        int level,
        int heldLevel,
        List<HeatReason> reasons,
        int indexDeciF,
        int indexHighDeciF,
        int wbgtCentiC,
        int wbgtLowCentiC,
        int wbgtHighCentiC,
        String method,
        int dewPointCentiC) {

    /**
     * Reckons a reading.
     *
     * @throws IllegalArgumentException if the reading is {@linkplain #wrong wrong}
     */
    public static ReadingLevel of(HeatReading reading, HeatRules rules, int workWatts) {
        ReadingLevel level = new Reckoned(reading.measured(rules, workWatts), rules).level();
        return reading.lacksForModel(rules) ? level.with(level.method + LACKING) : level;
    }

    private static final String LACKING = "; sunlight was measured, but not the wind and the place";

    private ReadingLevel with(String otherMethod) {
        return new ReadingLevel(
                level,
                heldLevel,
                reasons,
                indexDeciF,
                indexHighDeciF,
                wbgtCentiC,
                wbgtLowCentiC,
                wbgtHighCentiC,
                otherMethod,
                dewPointCentiC);
    }

    /** A sentence for each value that cannot be; such a reading is refused. */
    public static List<String> wrong(HeatReading reading, HeatRules rules, int workWatts) {
        return reading.measured(rules, workWatts).wrong();
    }
}
