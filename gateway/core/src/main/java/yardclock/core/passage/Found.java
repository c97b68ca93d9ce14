package yardclock.core.passage;

import java.util.List;

/**
 * What will be a passage unless the lock-out of the one before takes it in.
 *
 * @param edge the edge that stamps
 * @param first the place of its first edge in the list it was found in
 * @param last the place of its last edge but those that only trail behind
 */
record Found(TimedEdge edge, int first, int last, List<Block> blocks, long concludesAtMicros) {
    long micros() {
        return edge.stamp().micros();
    }
}
