package yardclock.core.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Every edge of one boot of one unit, by sequence number.
 *
 * <p>Knows the highest number up to which nothing is missing. Of edges far below it only the number
 * is known: a repeat of those counts as a duplicate without comparing.
 */
public final class BootLedger {
    /** Enough to compare a full buffer of a unit sent again: four hours at one edge a second. */
    static final int EDGES_COMPARED = 16_384;

    /** More ranges than this tell nobody anything new; the rest is asked for when these closed. */
    static final int GAPS_SHOWN = 16;

    private final TreeMap<Long, RawEdge> edges = new TreeMap<>();
    private long contiguous = -1;
    private long announcedNext;

    /** Takes an edge in. A backwards tick uses up its number, or the gap would never close. */
    public Judgement take(long seq, RawEdge edge) {
        RawEdge known = edges.get(seq);
        if (known != null) {
            return known.equals(edge) ? Judgement.DUPLICATE : Judgement.CONFLICTING;
        }
        if (seq <= contiguous) {
            return Judgement.DUPLICATE;
        }
        boolean backwards = runsBackwards(seq, edge.tick());
        edges.put(seq, edge);
        moveOn();
        return backwards ? Judgement.BACKWARDS : Judgement.FRESH;
    }

    private boolean runsBackwards(long seq, long tick) {
        Map.Entry<Long, RawEdge> before = edges.lowerEntry(seq);
        Map.Entry<Long, RawEdge> after = edges.higherEntry(seq);
        return before != null && before.getValue().tick() > tick
                || after != null && after.getValue().tick() < tick;
    }

    private void moveOn() {
        while (edges.containsKey(contiguous + 1)) {
            contiguous++;
        }
        while (edges.size() > EDGES_COMPARED && edges.firstKey() < contiguous) {
            edges.pollFirstEntry();
        }
    }

    /** The unit says what number its next edge will have. */
    public void announce(long nextSeq) {
        announcedNext = Math.max(announcedNext, nextSeq);
    }

    public long contiguous() {
        return contiguous;
    }

    public long announcedNext() {
        return announcedNext;
    }

    /** Ranges that are missing below the highest known number, oldest first. */
    public List<Range> gaps() {
        List<Range> gaps = new ArrayList<>();
        long expected = contiguous + 1;
        for (long seq : edges.tailMap(expected).keySet()) {
            if (seq > expected && gaps.size() < GAPS_SHOWN) {
                gaps.add(new Range(expected, seq - 1));
            }
            expected = seq + 1;
        }
        if (announcedNext > expected && gaps.size() < GAPS_SHOWN) {
            gaps.add(new Range(expected, announcedNext - 1));
        }
        return gaps;
    }

    /** Missing sequence numbers, both ends included. */
    public record Range(long from, long to) {
        @Override
        public String toString() {
            return from == to ? Long.toString(from) : from + "–" + to;
        }
    }
}
