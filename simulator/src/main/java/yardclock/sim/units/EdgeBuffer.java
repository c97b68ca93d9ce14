package yardclock.sim.units;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

/**
 * The ring of edges a unit has not been told to drop. Holds four hours at one edge a second, as the
 * contract asks. When it is full the newest edge is given up, and counted: its number stays a
 * visible gap.
 */
final class EdgeBuffer {
    /** 4 h at one edge a second. */
    static final int CAPACITY = 14_400;

    private final int capacity;
    private final ArrayDeque<StoredEdge> edges = new ArrayDeque<>();
    private long overflowed;

    EdgeBuffer(int capacity) {
        this.capacity = capacity;
    }

    void add(StoredEdge edge) {
        if (edges.size() == capacity) {
            overflowed++;
        } else {
            edges.addLast(edge);
        }
    }

    /** Drops everything up to and including a sequence number. */
    void dropUpTo(long seq) {
        while (!edges.isEmpty() && edges.peekFirst().seq() <= seq) {
            edges.removeFirst();
        }
    }

    /** The oldest edges from a sequence number on, at most so many. */
    List<StoredEdge> from(long seq, int most) {
        List<StoredEdge> found = new ArrayList<>();
        for (StoredEdge edge : edges) {
            if (found.size() == most) {
                break;
            }
            if (edge.seq() >= seq) {
                found.add(edge);
            }
        }
        return found;
    }

    int size() {
        return edges.size();
    }

    /** The oldest sequence number that is still here, or {@code otherwise} when empty. */
    long oldest(long otherwise) {
        return edges.isEmpty() ? otherwise : edges.peekFirst().seq();
    }

    long overflowed() {
        return overflowed;
    }
}
