package yardclock.core.passage;

import java.util.ArrayList;
import java.util.List;

/** Cuts one sensor's edges into blocks, and joins those that are too close to be two. Pure. */
final class Blocks {
    private Blocks() {}

    /** Every stretch in a state, in time order; an edge that repeats a state changes nothing. */
    static List<Block> in(int state, List<TimedEdge> edges) {
        List<Block> blocks = new ArrayList<>();
        TimedEdge from = null;
        boolean isHeard = false;
        for (TimedEdge edge : edges) {
            if (edge.state() == state) {
                from = from == null ? edge : from;
            } else if (from != null || !isHeard) {
                blocks.add(new Block(from, edge));
                from = null;
            }
            isHeard = true;
        }
        if (from != null) {
            blocks.add(new Block(from, null));
        }
        return blocks;
    }

    /** Blocks less than the gap apart belong together. */
    static List<List<Block>> merged(List<Block> blocks, long gapMicros) {
        List<List<Block>> groups = new ArrayList<>();
        Block before = null;
        for (Block block : blocks) {
            boolean isApart =
                    before == null
                            || block.from().stamp().micros() - before.until().stamp().micros()
                                    >= gapMicros;
            if (isApart) {
                groups.add(new ArrayList<>());
            }
            groups.get(groups.size() - 1).add(block);
            before = block;
        }
        return groups;
    }
}
