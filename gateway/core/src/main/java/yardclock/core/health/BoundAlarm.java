package yardclock.core.health;

import yardclock.core.time.ClockStatus;

/**
 * Whether a stamp made now by one unit would be wider than the plan allows: raised once, cleared
 * once, with room between the two so that a width near the limit does not flicker.
 *
 * <p>The width is looked at with each exchange. Between exchanges it can only grow, and no faster
 * than the clock's rate may be off on both sides; so the next look is due when it could have grown
 * to the limit, and a unit that answers needs none.
 */
public final class BoundAlarm {
    /** The part of the limit below which the alarm is cleared. */
    private static final int CLEARED_BELOW_PERCENT = 80;

    /** Looks are not closer together than this, in real time: the limit is no razor's edge. */
    private static final long LOOK_AGAIN_REAL_MICROS = 2_000_000;

    private boolean raised;
    private long nextLookMicros = Long.MAX_VALUE;

    /** Exchanges in quick succession when a unit comes. */
    private static final int BURST = 4;

    /** What a look found. */
    public enum Change {
        NONE,
        RAISED,
        CLEARED
    }

    /** Looks at the clock; a clock without a bound neither raises nor clears. */
    public Change look(ClockStatus clock, long limitMicros, long nowMicros, int speed) {
        if (!clock.hasBound()) {
            nextLookMicros = Long.MAX_VALUE;
            return Change.NONE;
        }
        if (!raised && isSettling(clock, speed)) {
            nextLookMicros = nowMicros + LOOK_AGAIN_REAL_MICROS * speed;
            return Change.NONE;
        }
        long width = clock.boundWidthMicros();
        boolean was = raised;
        raised = width > (was ? limitMicros * CLEARED_BELOW_PERCENT / 100 : limitMicros);
        nextLookMicros =
                raised
                        ? Long.MAX_VALUE
                        : nowMicros
                                + Math.max(
                                        LOOK_AGAIN_REAL_MICROS * speed,
                                        clock.soonestGrowthMicros(limitMicros - width));
        return was == raised ? Change.NONE : raised ? Change.RAISED : Change.CLEARED;
    }

    /** A unit just compared for the first time: the rest of its burst is under way. */
    private static boolean isSettling(ClockStatus clock, int speed) {
        return clock.exchanges() < BURST
                && clock.lastExchangeAgeMicros() < LOOK_AGAIN_REAL_MICROS * speed;
    }

    /** The clock begins anew, and with it the alarm. */
    public void forget() {
        raised = false;
        nextLookMicros = Long.MAX_VALUE;
    }

    public boolean isRaised() {
        return raised;
    }

    /** When the width could exceed the limit without a further exchange; MAX for never. */
    public long nextLookMicros() {
        return nextLookMicros;
    }

    @Override
    public String toString() {
        return raised + "@" + nextLookMicros;
    }
}
