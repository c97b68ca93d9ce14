package yardclock.core.passage;

import yardclock.core.course.SensorRef;
import yardclock.core.time.Stamp;

import java.util.Comparator;

/** A raw edge with its place in gateway time. Ordered by time; ties by unit, boot and number. */
public record TimedEdge(SensorRef sensor, int state, Stamp stamp, String boot, long seq)
        implements Comparable<TimedEdge> {
    private static final Comparator<TimedEdge> ORDER =
            Comparator.comparingLong((TimedEdge e) -> e.stamp.micros())
                    .thenComparing(e -> e.sensor.unit())
                    .thenComparing(TimedEdge::boot)
                    .thenComparingLong(TimedEdge::seq);

    @Override
    public int compareTo(TimedEdge other) {
        return ORDER.compare(this, other);
    }
}
