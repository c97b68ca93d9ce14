package yardclock.core.heat;

import yardclock.core.course.HeatRules;

import java.math.BigDecimal;
import java.util.List;

/**
 * What follows from one reading, rounded once. Null is "cannot be said from what was measured".
 *
 * @param heatIndexF heat index, °F
 * @param heatIndexBranch which part of its definition gave it
 * @param wetBulbC psychrometric wet bulb, °C
 * @param dewPointC dew point, °C
 * @param wbgtC WBGT, °C
 * @param wbgtLowC its lower end by the instruments' tolerances, °C
 * @param wbgtHighC its upper end, which is what the level goes by
 * @param method how the WBGT was had
 * @param limitUnacclimatizedC WBGT limit for people not used to the heat, °C
 * @param limitAcclimatizedC the same for people used to it
 * @param workMinutesUnacclimatized minutes of each hour for this work, at {@code wbgtC}
 * @param windChillF wind chill, °F; null where it is warmer than 50 °F or no wind was given
 * @param level 0 to 4
 * @param reasons why this level, a sentence each
 * @param cautions what to keep in mind
 */
public record HeatFigures(
        BigDecimal heatIndexF,
        String heatIndexBranch,
        BigDecimal wetBulbC,
        BigDecimal dewPointC,
        BigDecimal wbgtC,
        BigDecimal wbgtLowC,
        BigDecimal wbgtHighC,
        String method,
        BigDecimal limitUnacclimatizedC,
        BigDecimal limitAcclimatizedC,
        BigDecimal workMinutesUnacclimatized,
        BigDecimal windChillF,
        int level,
        List<String> reasons,
        List<String> cautions) {

    /**
     * Reckons a reading through.
     *
     * @throws IllegalArgumentException if the reading is {@linkplain Measured#wrong() wrong}
     */
    public static HeatFigures of(Measured measured) {
        List<String> wrong = measured.wrong();
        if (!wrong.isEmpty()) {
            throw new IllegalArgumentException(String.join(" ", wrong));
        }
        return new Reckoned(measured, HeatRules.DEFAULTS).figures();
    }
}
