package yardclock.core.time;

/**
 * A unit clock's own figures for the bench, of one boot.
 *
 * @param exchanges how many were accepted since the boot
 * @param impossible how many were refused because no clock could have said so: received before it
 *     was sent, on either side
 * @param backwards how many were refused because the unit's ticks ran backwards
 * @param faults how often an exchange contradicted those before it: jumps of the unit's counter
 * @param lastFaultMicros gateway time of the newest jump's first exchange; −1 while none
 * @param ratePartsPerBillion the fitted rate against the gateway's clock; 0 while unknown
 * @param rateLowPartsPerBillion the lowest rate that no exchange of the window contradicts
 * @param rateHighPartsPerBillion the highest one
 * @param floorRoundTripMicros the shortest round trip in use; −1 while none
 * @param boundWidthMicros the full width of a stamp made now; −1 while there is no bound
 * @param lastExchangeAgeMicros age of the newest accepted exchange; −1 while none
 */
public record ClockStatus(
        long exchanges,
        long impossible,
        long backwards,
        long faults,
        long lastFaultMicros,
        long ratePartsPerBillion,
        long rateLowPartsPerBillion,
        long rateHighPartsPerBillion,
        long floorRoundTripMicros,
        long boundWidthMicros,
        long lastExchangeAgeMicros) {

    private static final long USUAL_RATE_PARTS_PER_BILLION =
            (long) (ClockEstimator.RATE_PPM * 1000);

    /** A width of this much is beyond telling, and the sums below stay within their range. */
    private static final long WIDEST_MICROS = 1_000_000_000;

    /** Whether a stamp can be made at all. */
    public boolean hasBound() {
        return boundWidthMicros >= 0;
    }

    /**
     * How long it takes at least, without a further exchange, until the width has grown by so much:
     * each of the two limits moves no faster than the rate may be off.
     */
    public long soonestGrowthMicros(long byMicros) {
        long fastest =
                Math.max(Math.abs(rateLowPartsPerBillion), Math.abs(rateHighPartsPerBillion));
        long growth = 2 * Math.max(USUAL_RATE_PARTS_PER_BILLION, fastest);
        return Math.min(Math.max(0, byMicros), WIDEST_MICROS) * 1_000_000_000 / growth;
    }
}
