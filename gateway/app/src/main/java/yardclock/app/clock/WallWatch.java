package yardclock.app.clock;

import java.util.Optional;

/**
 * Notices that the wall clock was set: it then moves against the monotonic clock.
 *
 * <p>To be asked about once a real second. A step is told again until it was {@link #noted}. Safe
 * from any thread.
 */
public final class WallWatch {
    /** A person reading the time of day notices nothing smaller. */
    static final long STEP_MICROS = 50_000;

    /** Readings further apart than this belong to a machine that was busy, and say nothing. */
    static final long APART_MICROS = 5_000;

    private final Machine machine;
    private final GatewayClock clock;
    private long leadMicros;

    public WallWatch(Machine machine, GatewayClock clock, Anchor anchor) {
        this.machine = machine;
        this.clock = clock;
        this.leadMicros = anchor.wallMicros() - anchor.monotonicMicros();
    }

    /**
     * The wall clock was set.
     *
     * @param gatewayMicros when it was read
     * @param wallMicros what it read
     * @param stepMicros how far it was set forward since the last step that was noted
     */
    public record Step(long gatewayMicros, long wallMicros, long stepMicros) {}

    public synchronized Optional<Step> look() {
        long before = machine.monotonicMicros();
        long wall = machine.wallMicros();
        long gateway = clock.now().micros();
        long apart = machine.monotonicMicros() - before;
        long step = wall - before - leadMicros;
        boolean isStep = apart <= APART_MICROS && Math.abs(step) > STEP_MICROS;
        return isStep ? Optional.of(new Step(gateway, wall, step)) : Optional.empty();
    }

    /** The step is on record: from now on the next one counts. */
    public synchronized void noted(Step step) {
        leadMicros += step.stepMicros();
    }
}
