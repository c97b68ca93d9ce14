package yardclock.core.ordering;

import yardclock.core.passage.TimedEdge;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The edges of one turn in time order, however they arrived.
 *
 * <p>Bounded: a rattling sensor can't fill the memory. Edges beyond the limit are counted, and stay
 * in the journal.
 */
public final class Evidence {
    /** A turn lasts minutes; a contact that chatters at 100 Hz for half a minute still fits. */
    public static final int EDGES_MAX = 4_000;

    private final List<TimedEdge> edges = new ArrayList<>();
    private long overflow;

    /** Whether it was taken in; false when the turn is full. */
    public boolean add(TimedEdge edge) {
        if (edges.size() >= EDGES_MAX) {
            overflow++;
            return false;
        }
        int at = Collections.binarySearch(edges, edge);
        edges.add(at < 0 ? -at - 1 : at, edge);
        return true;
    }

    public List<TimedEdge> inOrder() {
        return Collections.unmodifiableList(edges);
    }

    public long overflow() {
        return overflow;
    }

    @Override
    public String toString() {
        return edges.size() + "+" + overflow;
    }
}
