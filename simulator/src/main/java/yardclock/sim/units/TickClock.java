package yardclock.sim.units;

/**
 * A unit's counter: microseconds since its boot, on a crystal that is off by some parts per
 * billion. Immutable and exact to the microsecond.
 *
 * @param bootedMicros the exam time of the boot; it may lie before the stage's beginning
 * @param ratePartsPerBillion how fast the crystal runs, positive is fast
 * @param drift how that changes over the day
 */
public record TickClock(long bootedMicros, long ratePartsPerBillion, Drift drift) {
    private static final long BILLION = 1_000_000_000;

    /** On a crystal whose rate never changes. */
    public TickClock(long bootedMicros, long ratePartsPerBillion) {
        this(bootedMicros, ratePartsPerBillion, Drift.NONE);
    }

    public long tickAt(long examMicros) {
        long elapsed = examMicros - bootedMicros;
        return elapsed
                + Math.floorDiv(elapsed * ratePartsPerBillion, BILLION)
                + drift.micros(examMicros)
                - drift.micros(bootedMicros);
    }
}
