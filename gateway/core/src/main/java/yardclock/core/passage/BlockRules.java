package yardclock.core.passage;

import yardclock.core.course.EdgeRule;
import yardclock.core.course.Guards;
import yardclock.core.course.Trigger;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The edge rules that need to see whole blocks of one sensor: the beginning of the longest, and the
 * last release. Stateless.
 */
final class BlockRules {
    private final Trigger trigger;
    private final Guards guards;
    private final long settleMicros;

    BlockRules(Trigger trigger, long settleMicros) {
        this.trigger = trigger;
        this.guards = trigger.guards();
        this.settleMicros = settleMicros;
    }

    /** Whether a trigger is one of these. */
    static boolean concern(Trigger trigger) {
        return trigger.contacts().size() == 1
                && (trigger.edge() != EdgeRule.FIRST || trigger.guards().clearForMicros() > 0);
    }

    List<Found> find(List<TimedEdge> edges, long fromMicros) {
        int state = trigger.contacts().get(0).state();
        boolean ends = trigger.endsBlock();
        List<Block> counted =
                Blocks.in(ends ? 1 - state : state, edges).stream()
                        .filter(block -> block.micros() >= guards.minBlockMicros())
                        .filter(block -> ends || beginsFrom(block, fromMicros))
                        .toList();
        List<Found> found = new ArrayList<>();
        for (List<Block> group : Blocks.merged(counted, gapMicros())) {
            Found one = ends ? released(group, edges, fromMicros) : longest(group, edges);
            if (one != null) {
                found.add(one);
            }
        }
        return found;
    }

    private static boolean beginsFrom(Block block, long fromMicros) {
        return block.from() != null && block.from().stamp().micros() >= fromMicros;
    }

    /** How long the sensor must be out of the state for the passage to be over. */
    private long gapMicros() {
        long stay = Math.max(guards.clearForMicros(), guards.staysForMicros());
        return Math.max(stay, guards.mergeGapMicros());
    }

    private long waitMicros() {
        return gapMicros() == 0 ? 0 : gapMicros() + settleMicros;
    }

    private Found longest(List<Block> group, List<TimedEdge> edges) {
        Block longest = group.get(0);
        for (Block block : group) {
            longest = block.micros() > longest.micros() ? block : longest;
        }
        Block last = group.get(group.size() - 1);
        long over = last.isOver() ? last.until().stamp().micros() + waitMicros() : Long.MAX_VALUE;
        TimedEdge end = last.isOver() ? last.until() : last.from();
        return found(longest.from(), group, end, edges, over);
    }

    /** Null while nothing was released, or who left had not stood there long enough. */
    private Found released(List<Block> group, List<TimedEdge> edges, long fromMicros) {
        TimedEdge release = group.get(group.size() - 1).until();
        if (release == null || release.stamp().micros() < fromMicros) {
            return null;
        }
        TimedEdge from = group.get(0).from();
        long at = release.stamp().micros();
        boolean stood = from == null || at - from.stamp().micros() >= guards.stoodForMicros();
        return stood ? found(release, group, release, edges, at + waitMicros()) : null;
    }

    private static Found found(
            TimedEdge stamp, List<Block> group, TimedEdge end, List<TimedEdge> edges, long over) {
        TimedEdge from = group.get(0).from() == null ? group.get(0).until() : group.get(0).from();
        int first = Collections.binarySearch(edges, from);
        return new Found(stamp, first, Collections.binarySearch(edges, end), group, over);
    }
}
