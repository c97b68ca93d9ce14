package yardclock.core.run;

import yardclock.core.course.Checkpoint;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What was tapped for one turn, in the order it came. A tap may have no time. */
final class Taps {
    /** Presses of one point beyond this say nothing new; they stay in the journal. */
    private static final int MAX = 64;

    /** Stands for "seen, but nobody can say when". */
    static final long SEEN_SOMETIME = Long.MIN_VALUE;

    private Tap start;
    private final List<Tap> finishes = new ArrayList<>();
    private final Map<String, List<Tap>> checkpoints = new LinkedHashMap<>();

    /** The first one counts. */
    void addStart(Tap tap) {
        start = start == null ? tap : start;
    }

    void addFinish(Tap tap) {
        if (finishes.size() < MAX) {
            finishes.add(tap);
        }
    }

    void addCheckpoint(String checkpoint, Tap tap) {
        List<Tap> taps = checkpoints.computeIfAbsent(checkpoint, c -> new ArrayList<>());
        if (taps.size() < MAX) {
            taps.add(tap);
        }
    }

    /** Null while there is none. */
    Tap start() {
        return start;
    }

    /**
     * The press on finish that counts: the first, unless it came before everything was seen and
     * another came after. One without a time can't be called too early. Null while there is none.
     */
    Tap finish(long allSeenMicros) {
        for (Tap tap : finishes) {
            if (!tap.isTimed() || tap.mark().stamp().micros() >= allSeenMicros) {
                return tap;
            }
        }
        return finishes.isEmpty() ? null : finishes.get(0);
    }

    int count(Checkpoint checkpoint) {
        return of(checkpoint).size();
    }

    private List<Tap> of(Checkpoint checkpoint) {
        return checkpoints.getOrDefault(checkpoint.id(), List.of());
    }

    /**
     * When a checkpoint was complete, by its sensor or by taps; MAX while it is not, {@link
     * #SEEN_SOMETIME} when only taps without a time say so.
     *
     * @param seen by its sensor; or null
     */
    long completeMicros(Checkpoint checkpoint, List<Mark> seen) {
        long bySensor = nth(seen, checkpoint.count());
        long byTaps = nth(checkpoint);
        boolean isTimed = byTaps != SEEN_SOMETIME;
        return !isTimed && bySensor < Long.MAX_VALUE ? bySensor : Math.min(bySensor, byTaps);
    }

    private static long nth(List<Mark> marks, int count) {
        return marks == null || marks.size() < count
                ? Long.MAX_VALUE
                : marks.get(count - 1).stamp().micros();
    }

    private long nth(Checkpoint checkpoint) {
        List<Tap> taps = of(checkpoint);
        int count = checkpoint.count();
        if (taps.size() < count) {
            return Long.MAX_VALUE;
        }
        boolean isTimed = taps.subList(0, count).stream().allMatch(Tap::isTimed);
        return isTimed ? taps.get(count - 1).mark().stamp().micros() : SEEN_SOMETIME;
    }

    boolean has(TabletPress press) {
        return start != null && start.press() == press
                || finishes.stream().anyMatch(tap -> tap.press() == press)
                || checkpoints.values().stream()
                        .anyMatch(taps -> taps.stream().anyMatch(tap -> tap.press() == press));
    }

    @Override
    public String toString() {
        return start + " " + finishes + " " + checkpoints;
    }
}
