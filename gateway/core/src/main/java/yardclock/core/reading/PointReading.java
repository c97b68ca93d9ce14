package yardclock.core.reading;

import yardclock.core.course.Text;
import yardclock.core.passage.TimedEdge;

/**
 * One way to understand a start or a finish: this edge made it, or no edge did and the tap stands.
 *
 * @param edge the edge that makes the mark; null when the sensor saw nothing of the candidate
 * @param chatter how far from the edge the instant can lie
 * @param why in plain words, in both languages
 * @param concludesAtMicros from when on no edge under way can change it
 */
public record PointReading(
        TimedEdge edge, Chatter chatter, Weight weight, Text why, long concludesAtMicros) {
    public boolean isByTap() {
        return edge == null;
    }

    /** The same, reaching back over short breaks of the stay it begins. */
    PointReading backTo(Rattle rattle) {
        long back = rattle.backMicros(edge);
        return back == 0
                ? this
                : new PointReading(edge, chatter.backTo(back), weight, why, concludesAtMicros);
    }

    @Override
    public String toString() {
        String by = edge == null ? "tap" : edge.sensor() + "#" + edge.boot() + "/" + edge.seq();
        return by + "@" + weight;
    }
}
