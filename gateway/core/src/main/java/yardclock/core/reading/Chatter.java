package yardclock.core.reading;

import yardclock.core.course.Trigger;

/**
 * How far from its edge a mark can truly lie because a sensor chatters and may miss an edge of it.
 *
 * <p>Where the first edge counts, that one can have been missed and the next of the same chatter
 * stamped: the instant lies before. Where a state must stay, a break in it can have been missed:
 * the stay began after. Neither can be seen afterwards, so every interval has it. Where a tap comes
 * oddly for its edge the instant can lie further away.
 */
public record Chatter(long beforeMicros, long afterMicros) {
    /** For what does not chatter. */
    public static final Chatter NONE = new Chatter(0, 0);

    /** Contacts, mats and beams chatter for 1–20 ms; from memory, no source. */
    static final long LONGEST_MICROS = 20_000;

    static Chatter of(Trigger trigger) {
        boolean waits =
                trigger.guards().staysForMicros() > 0 || trigger.guards().clearForMicros() > 0;
        return waits ? new Chatter(0, LONGEST_MICROS) : new Chatter(LONGEST_MICROS, 0);
    }

    /** Reaching further back, at least so far. */
    Chatter backTo(long micros) {
        return new Chatter(Math.max(beforeMicros, micros), afterMicros);
    }

    /** Reaching further on, at least so far. */
    Chatter onTo(long micros) {
        return new Chatter(beforeMicros, Math.max(afterMicros, micros));
    }
}
