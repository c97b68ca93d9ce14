package yardclock.core.passage;

import yardclock.core.time.Stamp;

/**
 * One physical occurrence a trigger recognised.
 *
 * @param edge the raw edge that stamps it
 * @param concludesAtMicros when no edge under way can change it any more; until then provisional
 */
public record Passage(TimedEdge edge, long concludesAtMicros) {
    public Stamp stamp() {
        return edge.stamp();
    }

    public boolean isConcluded(long nowMicros) {
        return nowMicros >= concludesAtMicros;
    }
}
