package yardclock.core.passage;

import yardclock.core.course.RuleVersion;
import yardclock.core.time.Stamp;

import java.util.List;

/**
 * One physical occurrence a trigger recognised, with all that was seen of it.
 *
 * @param edge the raw edge that stamps it
 * @param edges every edge that belongs to it, in time order, the stamping one among them
 * @param blocks the parts it was merged from, with their durations; the last may still last
 * @param concludesAtMicros when no edge under way can change it any more; until then provisional;
 *     MAX while that depends on an edge to come
 * @param rule the wording of the trigger that recognised it
 */
public record Passage(
        TimedEdge edge,
        List<TimedEdge> edges,
        List<Block> blocks,
        long concludesAtMicros,
        RuleVersion rule) {
    public Passage {
        edges = List.copyOf(edges);
        blocks = List.copyOf(blocks);
    }

    public Stamp stamp() {
        return edge.stamp();
    }

    public boolean isConcluded(long nowMicros) {
        return nowMicros >= concludesAtMicros;
    }
}
