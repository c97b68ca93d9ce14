package yardclock.core.ordering;

import yardclock.core.course.SensorRef;
import yardclock.core.passage.TimedEdge;
import yardclock.core.time.Carry;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The edges of one turn in time order, however they arrived.
 *
 * <p>Bounded: a rattling sensor can't fill the memory. Edges beyond the limit are counted, and stay
 * in the journal. While a turn is nobody's, the oldest give way instead: a beam that flickers in
 * the wind all morning must not use up the room of the first candidate.
 */
public final class Evidence {
    /** A turn lasts minutes; a contact that chatters at 100 Hz for half a minute still fits. */
    public static final int EDGES_MAX = 4_000;

    private final List<TimedEdge> edges = new ArrayList<>();
    private long overflow;

    /** Whether it was taken in; false when it is full. */
    public boolean add(TimedEdge edge) {
        if (edges.size() >= EDGES_MAX) {
            overflow++;
            return false;
        }
        int at = Collections.binarySearch(edges, edge);
        edges.add(at < 0 ? -at - 1 : at, edge);
        return true;
    }

    /** Takes an edge in, and lets the oldest one go when it is full. */
    public void addForgetting(TimedEdge edge) {
        if (edges.size() >= EDGES_MAX) {
            edges.remove(0);
        }
        add(edge);
    }

    /** Lets go what lies before an instant, but for each sensor's last edge: its state then. */
    public void forgetBefore(long micros) {
        Map<SensorRef, TimedEdge> last = new TreeMap<>();
        edges.stream()
                .takeWhile(e -> e.stamp().micros() < micros)
                .forEach(e -> last.put(e.sensor(), e));
        edges.removeIf(e -> e.stamp().micros() < micros && !e.equals(last.get(e.sensor())));
    }

    /** Lets go all that one sensor said, its present state included. */
    public void forget(SensorRef sensor) {
        edges.removeIf(e -> e.sensor().equals(sensor));
    }

    /** Moves edges to where their time lines are now; their order may be another then. */
    public void carry(Carry carry) {
        edges.replaceAll(edge -> edge.moved(carry.of(edge.line())));
        Collections.sort(edges);
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
