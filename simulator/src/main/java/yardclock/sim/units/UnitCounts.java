package yardclock.sim.units;

/**
 * What a unit has done since its boot.
 *
 * @param edges distinct edges stamped
 * @param copiesSent edges handed to the broker, each repetition counted
 * @param kept the highest sequence number the gateway holds without a gap, −1 for none
 * @param overflowed edges lost because the ring was full
 */
public record UnitCounts(
        String unit, String boot, long edges, long copiesSent, long kept, long overflowed) {
    /** Edges the gateway has not acknowledged. */
    public long open() {
        return edges - 1 - kept;
    }
}
