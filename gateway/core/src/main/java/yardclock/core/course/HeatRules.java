package yardclock.core.course;

import java.util.List;

/**
 * The bounds the heat watch goes by, with who signed them. A proposal until the authority having
 * jurisdiction and its medical director sign; null is "not set", is said to be, and never a value.
 *
 * @param version names these bounds in every change of level
 * @param signedBy who signed them, and when; empty while nobody has
 * @param scheme which of the printed heat index schemes {@code indexDeciF} is
 * @param indexDeciF heat index from which levels 1 to 4 hold, tenths of °F
 * @param wbgtCentiC effective WBGT from which levels 2 to 4 hold, whatever the work, 1/100 °C
 * @param chillDeciF wind chill down from which levels 1 and 3 hold, tenths of °F
 * @param climbGustMmPerS gust from which level 2 holds where people climb
 * @param plateGustMmPerS gust above which the aerial's plate forbids climbing, level 4; or null
 * @param turnoutCentiC what turnout gear adds to the WBGT, 1/100 °C, never less than 0; or null
 * @param place where the yard is, for the sun; or null
 */
public record HeatRules(
        String version,
        String signedBy,
        String scheme,
        List<Integer> indexDeciF,
        List<Integer> wbgtCentiC,
        List<Integer> chillDeciF,
        int climbGustMmPerS,
        Integer plateGustMmPerS,
        Integer turnoutCentiC,
        Place place) {

    /** What holds for a plan that says nothing of heat: nobody signed it. */
    public static final HeatRules DEFAULTS =
            new HeatRules(
                    "default-1",
                    "",
                    "80/90/103/125",
                    List.of(800, 900, 1_030, 1_250),
                    List.of(2_780, 3_010, 3_220),
                    List.of(320, -180),
                    8_941,
                    null,
                    null,
                    null);

    public HeatRules {
        indexDeciF = List.copyOf(indexDeciF);
        wbgtCentiC = List.copyOf(wbgtCentiC);
        chillDeciF = List.copyOf(chillDeciF);
    }

    /** Millionths of a degree north and east. */
    public record Place(int northMicroDegrees, int eastMicroDegrees) {}

    /** What the gear adds to the WBGT; nothing while it is not set. */
    public int turnoutOrNone() {
        return turnoutCentiC == null ? 0 : turnoutCentiC;
    }
}
