package yardclock.app.pins;

import java.util.concurrent.TimeUnit;

/**
 * The dead-man's pulse: it rises only on a look at the state that has just come from the lane, at
 * most about once a second, and falls by itself. No look, no pulse.
 */
final class Pulse {
    static final long HIGH_NANOS = TimeUnit.MILLISECONDS.toNanos(100);

    /** A lane with nothing to do looks once a second, one with much to do ten times. */
    static final long APART_NANOS = TimeUnit.MILLISECONDS.toNanos(900);

    private boolean isHigh;
    private boolean hasRisen;
    private long roseNanos;

    /**
     * The line's level now.
     *
     * @param isLooked whether the lane has looked since the last call
     * @param mayRun whether it found that nobody is stopped and that a stop would be carried out
     */
    boolean at(boolean isLooked, boolean mayRun, long nowNanos) {
        if (isHigh && nowNanos - roseNanos >= HIGH_NANOS) {
            isHigh = false;
        }
        boolean isDue = !hasRisen || nowNanos - roseNanos >= APART_NANOS;
        if (isLooked && mayRun && isDue) {
            isHigh = true;
            hasRisen = true;
            roseNanos = nowNanos;
        }
        return isHigh;
    }
}
