package yardclock.core.passage;

import yardclock.core.course.SensorRef;
import yardclock.core.time.Stamp;

import java.util.Comparator;

/**
 * A raw edge with its place in gateway time. Ordered by time; ties by unit, boot and number.
 *
 * <p>The stamp is the one made when the edge became known, and never changes: what was judged by it
 * can be judged again. A later, better one is asked for by {@code boot} and {@code tick}.
 *
 * @param line the time line of the gateway the stamp is on; moved with its instants
 * @param tick the unit's own counter at the edge
 * @param arrivedMicros gateway time at which it was known, an upper limit of when it was; MAX when
 *     that was on another time line
 * @param responseMicros how late the sensor may have answered; the stamp's lower limit has it
 */
public record TimedEdge(
        SensorRef sensor,
        int state,
        Stamp stamp,
        int line,
        String boot,
        long seq,
        long tick,
        long arrivedMicros,
        long responseMicros)
        implements Comparable<TimedEdge> {
    private static final Comparator<TimedEdge> ORDER =
            Comparator.comparingLong((TimedEdge e) -> e.stamp.micros())
                    .thenComparing(e -> e.sensor.unit())
                    .thenComparing(TimedEdge::boot)
                    .thenComparingLong(TimedEdge::seq);

    /** The same edge where its time line was moved to. */
    public TimedEdge moved(long byMicros) {
        long arrived = arrivedMicros == Long.MAX_VALUE ? arrivedMicros : arrivedMicros + byMicros;
        return new TimedEdge(
                sensor,
                state,
                stamp.moved(byMicros),
                line,
                boot,
                seq,
                tick,
                arrived,
                responseMicros);
    }

    public EdgeKey key() {
        return new EdgeKey(sensor.unit(), boot, seq);
    }

    /** Whether both were stamped by the very same clock. */
    public boolean sharesClockWith(TimedEdge other) {
        return sensor.unit().equals(other.sensor.unit()) && boot.equals(other.boot);
    }

    @Override
    public int compareTo(TimedEdge other) {
        return ORDER.compare(this, other);
    }
}
