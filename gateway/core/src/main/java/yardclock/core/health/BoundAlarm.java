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
    private String told = "";
    private long nextLookMicros = Long.MAX_VALUE;

    /** The burst when a unit comes, and as many at the usual pace. */
    private static final int SETTLING = 8;

    /** The next exchange should be in by then: 5 s, dithered, and something for a lost one. */
    private static final long NEXT_EXCHANGE_REAL_MICROS = 10_000_000;

    /** Several exchanges come within it, so that no look is due while a unit answers. */
    private static final long ASSURED_REAL_MICROS = 30_000_000;

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
            nextLookMicros = nowMicros + NEXT_EXCHANGE_REAL_MICROS * speed;
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

    /**
     * Whether the last look still answers for this moment and for some while after it. An exchange
     * makes a clock known better, unless it says that the counter jumped.
     */
    public boolean isAssured(long nowMicros, int speed) {
        boolean hasLooked = !raised && nextLookMicros != Long.MAX_VALUE;
        return hasLooked && nextLookMicros - nowMicros > ASSURED_REAL_MICROS * speed;
    }

    /** A unit just compared for the first time: better exchanges are under way. */
    private static boolean isSettling(ClockStatus clock, int speed) {
        return clock.exchanges() < SETTLING
                && clock.lastExchangeAgeMicros() < NEXT_EXCHANGE_REAL_MICROS * speed;
    }

    /** The clock begins anew; what was told stands until the new one is known well. */
    public void forget() {
        nextLookMicros = Long.MAX_VALUE;
    }

    /** Keeps the words a raised alarm is told with. */
    public void tell(String words) {
        told = words;
    }

    public String told() {
        return told;
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
        return raised + "@" + nextLookMicros + " " + told;
    }
}
