package yardclock.core.intake;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Every edge of one boot of one unit, by sequence number.
 *
 * <p>All numbers that came are known as ranges, so that a unit whose first edges never come costs
 * no more than another. The content is kept of the newest ones only: a repeat of an older one
 * counts as a duplicate without comparing.
 */
public final class BootLedger {
    /** Enough to compare a full buffer of a unit sent again: four hours at one edge a second. */
    static final int EDGES_COMPARED = 16_384;

    /** More ranges than this tell nobody anything new; the rest is asked for when these closed. */
    static final int GAPS_SHOWN = 16;

    private final TreeMap<Long, RawEdge> edges = new TreeMap<>();

    /** Numbers that came: the first of each unbroken range, and its last. */
    private final TreeMap<Long, Long> known = new TreeMap<>();

    private long announcedNext;

    /** Takes an edge in. A backwards tick uses up its number, or the gap would never close. */
    public Judgement take(long seq, RawEdge edge) {
        RawEdge same = edges.get(seq);
        if (same != null) {
            return same.equals(edge) ? Judgement.DUPLICATE : Judgement.CONFLICTING;
        }
        if (isKnown(seq)) {
            return Judgement.DUPLICATE;
        }
        boolean backwards = runsBackwards(seq, edge.tick());
        know(seq);
        edges.put(seq, edge);
        if (edges.size() > EDGES_COMPARED) {
            edges.pollFirstEntry();
        }
        return backwards ? Judgement.BACKWARDS : Judgement.FRESH;
    }

    private boolean isKnown(long seq) {
        Map.Entry<Long, Long> range = known.floorEntry(seq);
        return range != null && seq <= range.getValue();
    }

    private void know(long seq) {
        Map.Entry<Long, Long> before = known.floorEntry(seq);
        boolean follows = before != null && before.getValue() == seq - 1;
        long from = follows ? before.getKey() : seq;
        Long lastOfNext = known.remove(seq + 1);
        known.put(from, lastOfNext == null ? seq : lastOfNext);
    }

    private boolean runsBackwards(long seq, long tick) {
        Map.Entry<Long, RawEdge> before = edges.lowerEntry(seq);
        Map.Entry<Long, RawEdge> after = edges.higherEntry(seq);
        return before != null && before.getValue().tick() > tick
                || after != null && after.getValue().tick() < tick;
    }

    /** The unit says what number its next edge will have. */
    public void announce(long nextSeq) {
        announcedNext = Math.max(announcedNext, nextSeq);
    }

    /** The highest number up to which nothing is missing; −1 for none. */
    public long contiguous() {
        return known.getOrDefault(0L, -1L);
    }

    /**
     * From which tick on no edge below a number is missing: 0 when none ever was, −1 when the
     * newest of them did not come yet.
     */
    public long wholeFromTick(long nextSeq) {
        if (nextSeq == 0) {
            return 0;
        }
        Map.Entry<Long, Long> range = known.floorEntry(nextSeq - 1);
        if (range == null || range.getValue() < nextSeq - 1) {
            return -1;
        }
        if (range.getKey() == 0) {
            return 0;
        }
        Map.Entry<Long, RawEdge> first = edges.ceilingEntry(range.getKey());
        return first == null ? -1 : first.getValue().tick();
    }

    public long announcedNext() {
        return announcedNext;
    }

    /** Ranges that are missing below the highest known number, oldest first. */
    public List<Range> gaps() {
        List<Range> gaps = new ArrayList<>();
        long expected = 0;
        for (Map.Entry<Long, Long> range : known.entrySet()) {
            if (gaps.size() == GAPS_SHOWN) {
                return gaps;
            }
            if (range.getKey() > expected) {
                gaps.add(new Range(expected, range.getKey() - 1));
            }
            expected = range.getValue() + 1;
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

    @Override
    public String toString() {
        return known + " " + announcedNext;
    }
}
