package yardclock.core.ordering;

import yardclock.core.course.SensorRef;
import yardclock.core.passage.EdgeKey;
import yardclock.core.passage.TimedEdge;
import yardclock.core.time.Carry;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;

/**
 * The edges of one turn in time order, however they arrived.
 *
 * <p>Bounded: a rattling sensor can't fill the memory. Edges beyond the limit are counted, and stay
 * in the journal. While a turn is nobody's, the oldest give way instead: a beam that flickers in
 * the wind all morning must not use up the room of the first candidate.
 *
 * <p>An edge that a person struck stays here, and counts for nothing until that ruling is
 * withdrawn.
 */
public final class Evidence {
    /** A turn lasts minutes; a contact that chatters at 100 Hz for half a minute still fits. */
    public static final int EDGES_MAX = 4_000;

    private final List<TimedEdge> edges = new ArrayList<>();
    private final SortedSet<EdgeKey> struck = new TreeSet<>();
    private long overflow;

    /** The newest edge that gave way while the turn was nobody's; null when none is missed. */
    private TimedEdge gaveWay;

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

    /** Takes edges in that a person put here, however full it is: people are slow. */
    public void give(Collection<TimedEdge> given) {
        edges.addAll(given);
        Collections.sort(edges);
    }

    /** Lets edges go that a person put elsewhere; those it holds of the named ones. */
    public List<TimedEdge> take(Collection<EdgeKey> keys) {
        return remove(edge -> keys.contains(edge.key()));
    }

    /** Takes an edge in, and lets the oldest one go when it is full: that one, or null. */
    public TimedEdge addForgetting(TimedEdge edge) {
        TimedEdge oldest = edges.size() >= EDGES_MAX ? edges.remove(0) : null;
        gaveWay = oldest == null ? gaveWay : oldest;
        add(edge);
        return oldest;
    }

    /**
     * Lets go what lies before an instant, but for each sensor's last edge: its state then.
     *
     * @return what went
     */
    public List<TimedEdge> forgetBefore(long micros) {
        boolean isMissed = gaveWay != null && gaveWay.stamp().micros() >= micros;
        gaveWay = isMissed ? gaveWay : null;
        Map<SensorRef, TimedEdge> last = new TreeMap<>();
        edges.stream()
                .takeWhile(e -> e.stamp().micros() < micros)
                .forEach(e -> last.put(e.sensor(), e));
        return remove(e -> e.stamp().micros() < micros && !e.equals(last.get(e.sensor())));
    }

    /** Lets go all that one sensor said, its present state included: what went. */
    public List<TimedEdge> forget(SensorRef sensor) {
        return remove(e -> e.sensor().equals(sensor));
    }

    private List<TimedEdge> remove(Predicate<TimedEdge> which) {
        List<TimedEdge> gone = edges.stream().filter(which).toList();
        edges.removeIf(which);
        return gone;
    }

    /** Moves edges to where their time lines are now; their order may be another then. */
    public void carry(Carry carry) {
        edges.replaceAll(edge -> edge.moved(carry.of(edge.line())));
        Collections.sort(edges);
    }

    /** The edges that count. */
    public List<TimedEdge> inOrder() {
        return struck.isEmpty()
                ? Collections.unmodifiableList(edges)
                : edges.stream().filter(edge -> !struck.contains(edge.key())).toList();
    }

    /** The edges that came, those that were struck included. */
    public List<TimedEdge> all() {
        return Collections.unmodifiableList(edges);
    }

    public boolean holds(EdgeKey key) {
        return edge(key).isPresent();
    }

    public Optional<TimedEdge> edge(EdgeKey key) {
        return edges.stream().filter(edge -> edge.key().equals(key)).findFirst();
    }

    /** The sensor of an edge it holds. */
    public SensorRef sensorOf(EdgeKey key) {
        return edge(key).orElseThrow().sensor();
    }

    public boolean isStruck(EdgeKey key) {
        return struck.contains(key);
    }

    public SortedSet<EdgeKey> struck() {
        return Collections.unmodifiableSortedSet(struck);
    }

    public void strike(Collection<EdgeKey> keys) {
        struck.addAll(keys);
    }

    public void unstrike(Collection<EdgeKey> keys) {
        struck.removeAll(keys);
    }

    /**
     * One block and the way out of it: the named edge with its counterpart of the same sensor.
     *
     * @param restState the sensor's state when nothing happens
     */
    public List<EdgeKey> block(EdgeKey key, int restState) {
        List<TimedEdge> same = ofSensor(key);
        int at = 0;
        while (at < same.size() && !same.get(at).key().equals(key)) {
            at++;
        }
        int other = at < same.size() && same.get(at).state() == restState ? at - 1 : at + 1;
        boolean isPair =
                at < same.size()
                        && other >= 0
                        && other < same.size()
                        && same.get(other).state() != same.get(at).state();
        return isPair ? List.of(key, same.get(other).key()) : List.of(key);
    }

    private List<TimedEdge> ofSensor(EdgeKey key) {
        return edge(key)
                .map(named -> edges.stream().filter(e -> e.sensor().equals(named.sensor())))
                .map(stream -> stream.toList())
                .orElse(List.of());
    }

    public long overflow() {
        return overflow;
    }

    /** Whether no edge was left out for want of room, since what it was told to forget. */
    public boolean isWhole() {
        return overflow == 0 && gaveWay == null;
    }

    @Override
    public String toString() {
        return edges.size() + "+" + overflow + (struck.isEmpty() ? "" : " struck " + struck);
    }
}
