package yardclock.core.course;

/**
 * What must also hold before an edge counts. A guard decides which raw edge makes the mark; it
 * never moves a time stamp. Zero, or the empty string, means the guard is not used.
 *
 * @param lockoutMicros further edges within this time belong to the same passage
 * @param staysForMicros the state must hold this long; the beginning of the stay stamps
 * @param clearForMicros the sensor must stay clear this long; the last release stamps
 * @param stoodForMicros a mat must have been pressed at least this long before its release
 * @param minBlockMicros a block shorter than this does not count
 * @param mergeGapMicros blocks less than this apart are one passage
 * @param withinMicros the longest time between the first and the last contact of a direction
 * @param nth which occurrence counts, from 1
 * @param spacingMicros an occurrence sooner than this after the last one counted is not counted
 * @param stampContact which contact of a direction stamps, from 1; 0 for the last
 * @param armedBy the checkpoint of this station that must have been seen before; or empty
 */
public record Guards(
        long lockoutMicros,
        long staysForMicros,
        long clearForMicros,
        long stoodForMicros,
        long minBlockMicros,
        long mergeGapMicros,
        long withinMicros,
        int nth,
        long spacingMicros,
        int stampContact,
        String armedBy) {
    public static final Guards NONE = new Guards(0, 0, 0, 0, 0, 0, 0, 1, "");

    /** Without a spacing, stamped by the last contact. */
    public Guards(
            long lockoutMicros,
            long staysForMicros,
            long clearForMicros,
            long stoodForMicros,
            long minBlockMicros,
            long mergeGapMicros,
            long withinMicros,
            int nth,
            String armedBy) {
        this(
                lockoutMicros,
                staysForMicros,
                clearForMicros,
                stoodForMicros,
                minBlockMicros,
                mergeGapMicros,
                withinMicros,
                nth,
                0,
                0,
                armedBy);
    }

    /** Those that are lengths of time. */
    public GuardTimes times() {
        return new GuardTimes(
                lockoutMicros,
                staysForMicros,
                clearForMicros,
                stoodForMicros,
                minBlockMicros,
                mergeGapMicros,
                withinMicros,
                spacingMicros);
    }

    /** With other lengths of time, and all else as it is. */
    public Guards timed(GuardTimes times) {
        return new Guards(
                times.lockoutMicros(),
                times.staysForMicros(),
                times.clearForMicros(),
                times.stoodForMicros(),
                times.minBlockMicros(),
                times.mergeGapMicros(),
                times.withinMicros(),
                nth,
                times.spacingMicros(),
                stampContact,
                armedBy);
    }
}
