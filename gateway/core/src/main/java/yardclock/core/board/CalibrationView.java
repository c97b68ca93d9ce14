package yardclock.core.board;

import java.util.List;

/**
 * How units' clocks are compared by occurrences that both saw: the sitting under way, the
 * calibrations that stand, and those that ended. Sensors are written {@code unit/number}.
 *
 * @param revision give it back as {@code basis} when accepting
 * @param needed how many pairs must count
 * @param sitting null while none is under way
 */
public record CalibrationView(
        long revision,
        int needed,
        SittingView sitting,
        List<Standing> standing,
        List<Ended> ended) {

    /**
     * @param referenceTrips how often the reference was tripped, with or without a partner
     * @param pairs the trips seen by both, oldest first
     * @param uncertaintyMicros the standard error of the median
     * @param objection too-few, too-scattered, unsettled, contradicted or, for a unit that changed,
     *     boot, access-point or contract; empty when it could be accepted
     * @param changedUnit the unit that changed, else empty
     */
    public record SittingView(
            String reference,
            String other,
            long beganMicros,
            int referenceTrips,
            int otherTrips,
            int kept,
            List<Pair> pairs,
            long medianMicros,
            long spreadMicros,
            long uncertaintyMicros,
            String objection,
            String changedUnit) {}

    /**
     * One occurrence that both saw.
     *
     * @param differenceMicros the other's stamp − the reference's
     * @param standing kept, outlier or impossible
     */
    public record Pair(long atMicros, long differenceMicros, String standing) {}

    /**
     * @param correctionMicros added to the unit's estimates, over all calibrations on the way to
     *     {@code root}
     * @param declaredMicros half the declared width of one of its stamps
     */
    public record Standing(
            String reference,
            String other,
            String root,
            long medianMicros,
            long spreadMicros,
            long correctionMicros,
            long declaredMicros,
            int kept,
            int rejected,
            long sinceMicros) {}

    /**
     * @param unit whose change ended it
     * @param why boot, access-point, contract, time-line or replaced
     */
    public record Ended(
            String reference,
            String other,
            String unit,
            String why,
            long medianMicros,
            long sinceMicros,
            long atMicros) {}
}
