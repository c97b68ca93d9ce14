package yardclock.core.reading;

import yardclock.core.course.Combination;
import yardclock.core.course.Contact;
import yardclock.core.course.Trigger;
import yardclock.core.passage.TimedEdge;

import java.util.List;

/**
 * A stay that was broken for no longer than chatter lasts: a knock at the bracket, a rattle. By the
 * plan's words it begins after the break; what was done, was done before it. Pure.
 */
final class Rattle {
    private final Trigger trigger;
    private final List<TimedEdge> edges;

    /**
     * @param edges in time order
     */
    Rattle(Trigger trigger, List<TimedEdge> edges) {
        this.trigger = trigger;
        this.edges = edges;
    }

    /**
     * How long before this edge the same stay began, its short breaks left aside; 0 without one.
     */
    long backMicros(TimedEdge edge) {
        boolean isStay =
                trigger.guards().staysForMicros() > 0
                        && (trigger.combination() == Combination.SINGLE
                                || trigger.combination() == Combination.ALL_OF);
        if (!isStay) {
            return 0;
        }
        long began = Long.MIN_VALUE;
        for (Contact contact : trigger.contacts()) {
            began = Math.max(began, inSince(contact, edge));
        }
        return began == Long.MIN_VALUE ? 0 : Math.max(0, edge.stamp().micros() - began);
    }

    /** MAX for a contact that is not in its state at that edge. */
    private long inSince(Contact contact, TimedEdge until) {
        long since = Long.MAX_VALUE;
        long before = Long.MAX_VALUE;
        long left = Long.MIN_VALUE;
        for (TimedEdge edge : edges) {
            if (!edge.sensor().equals(contact.sensor()) || edge.compareTo(until) > 0) {
                continue;
            }
            long micros = edge.stamp().micros();
            boolean isIn = edge.state() == contact.state();
            if (isIn && since == Long.MAX_VALUE) {
                boolean isBreak =
                        before < Long.MAX_VALUE && micros - left <= Chatter.LONGEST_MICROS;
                since = isBreak ? before : micros;
            } else if (!isIn && since < Long.MAX_VALUE) {
                before = since;
                left = micros;
                since = Long.MAX_VALUE;
            }
        }
        return since;
    }
}
