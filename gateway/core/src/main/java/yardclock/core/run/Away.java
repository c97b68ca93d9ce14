package yardclock.core.run;

import yardclock.core.course.Contact;
import yardclock.core.passage.TimedEdge;

import java.util.List;

/** Whether a contact was seen out of the state that a finish asks of it. Pure. */
final class Away {
    /** Longer than any chatter; our choice. */
    private static final long LEAST_MICROS = 100_000;

    private Away() {}

    /** Whether it was away when the start was or later, before an edge, for long enough. */
    static boolean isSeen(
            Contact contact, List<TimedEdge> edges, long startMicros, TimedEdge until) {
        long awaySince = Long.MIN_VALUE;
        boolean isHeard = false;
        boolean isAway = false;
        for (TimedEdge edge : edges) {
            if (!edge.sensor().equals(contact.sensor()) || edge.compareTo(until) > 0) {
                continue;
            }
            long at = edge.stamp().micros();
            boolean leaves = edge.state() != contact.state();
            // Before the first edge that was heard, the contact was in the other state.
            isAway = isHeard ? isAway : !leaves;
            isHeard = true;
            boolean isOver = isAway && !leaves && at >= startMicros;
            if (isOver && at - LEAST_MICROS >= awaySince) {
                return true;
            }
            awaySince = leaves && !isAway ? at : awaySince;
            isAway = leaves;
        }
        return false;
    }
}
