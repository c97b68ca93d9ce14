package yardclock.core.board;

import yardclock.core.course.Text;
import yardclock.core.heat.HeatReason;

import java.util.List;

/**
 * The safety officer's picture: what the heat watch says and why, the day so far, and who is
 * moving.
 *
 * @param startOfDay the checklist that holds releases while an item of it is open
 * @param surfaces the ground and the weather at each station, in the course's order, and the climb
 * @param day the newest readings by the time of measuring, oldest first
 */
public record WatchFrame(
        Head head,
        Heat heat,
        List<TeamView> teams,
        List<CheckView> startOfDay,
        List<SurfaceView> surfaces,
        List<Moving> moving,
        List<Point> day) {

    /**
     * The heat watch with all it goes by. Values that no reading gave yet are 0; the head's reading
     * age is −1 then.
     *
     * @param was the level that readings gave last, −1 before the first
     * @param freshness none, fresh, ageing, unknown or silent
     * @param confirmation none, to-be-confirmed or hand-reading-asked
     * @param suspicions against the newest reading: dew-point, stuck, in-the-sun
     * @param lightningOverMicros gateway time when half an hour is over, −1 without lightning
     * @param indexHighDeciF the upper end, by the instruments' tolerances
     * @param by who read it by hand and off what; empty for a sensor
     * @param dueMicros gateway time when the next reading is due, −1 before the first
     * @param likelyLevel a higher level the trend reaches within half an hour; −1 for none
     * @param likelyMicros gateway time about when; −1 for none
     * @param acknowledgedBy who has seen what stands now; empty while nobody has
     * @param signedBy who signed the bounds; empty while nobody has
     * @param plateSet whether the aerial's wind limit was entered
     * @param turnoutSet whether the medical director entered what turnout gear adds
     */
    public record Heat(
            int was,
            String freshness,
            String confirmation,
            List<String> suspicions,
            List<HeatReason> reasons,
            long lightningOverMicros,
            int indexDeciF,
            int indexHighDeciF,
            int wbgtCentiC,
            int wbgtLowCentiC,
            int wbgtHighCentiC,
            String method,
            String by,
            long dueMicros,
            int likelyLevel,
            long likelyMicros,
            String acknowledgedBy,
            String boundsVersion,
            String signedBy,
            List<Integer> indexBoundsDeciF,
            boolean plateSet,
            boolean turnoutSet) {}

    /**
     * One candidate between release and course done.
     *
     * @param station the one they are at, or walk to
     * @param exposureMicros how much of the last hour they have been out in this attempt
     */
    public record Moving(
            int number,
            String phase,
            int stationIndex,
            Text station,
            long startedMicros,
            long heldSinceMicros,
            long exposureMicros) {}

    /** One reading of the day. */
    public record Point(long atMicros, int indexDeciF, int indexHighDeciF, int level) {}
}
