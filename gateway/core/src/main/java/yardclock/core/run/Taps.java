package yardclock.core.run;

import yardclock.core.course.Checkpoint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What was tapped for one turn, in the order it came, and what was added by a ruling. A tap may
 * have no time. An added mark counts as a tap does, with a hand's interval, and before all taps of
 * its point.
 */
final class Taps {
    /** Presses of one point beyond this say nothing new; they stay in the journal. */
    private static final int MAX = 64;

    /** Stands for "seen, but nobody can say when". */
    static final long SEEN_SOMETIME = Long.MIN_VALUE;

    private Tap start;
    private final List<Tap> finishes = new ArrayList<>();
    private final Map<String, List<Tap>> checkpoints = new LinkedHashMap<>();

    private final List<Added> added = new ArrayList<>();

    /** A mark by a ruling, named by its entry. */
    private record Added(long entry, String point, Tap tap) {}

    void addByRuling(long entry, String point, Tap tap) {
        added.add(new Added(entry, point, tap));
    }

    boolean isAdded(long entry) {
        return added.stream().anyMatch(mark -> mark.entry() == entry);
    }

    void withdraw(long entry) {
        added.removeIf(mark -> mark.entry() == entry);
    }

    /** What was added for a point, the latest first. */
    private List<Tap> addedTo(String point) {
        List<Tap> taps = new ArrayList<>();
        added.stream().filter(a -> a.point().equals(point)).forEach(a -> taps.add(0, a.tap()));
        return taps;
    }

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
        return addedTo(TurnJudge.START).stream().findFirst().orElse(start);
    }

    /**
     * The press on finish that counts: the first, unless it came before everything was seen and
     * another came after. One without a time can't be called too early. Null while there is none.
     */
    Tap finish(long allSeenMicros) {
        Optional<Tap> ruled = addedTo(TurnJudge.FINISH).stream().findFirst();
        if (ruled.isPresent()) {
            return ruled.get();
        }
        for (Tap tap : finishes) {
            if (!tap.isTimed() || tap.mark().stamp().micros() >= allSeenMicros) {
                return tap;
            }
        }
        return finishes.isEmpty() ? null : finishes.get(0);
    }

    /** Whether a start or a finish was tapped. */
    boolean isUsed() {
        return start != null || !finishes.isEmpty();
    }

    /** How many marks a ruling added to what its sensor saw. */
    int addedCount(Checkpoint checkpoint) {
        return addedTo(checkpoint.id()).size();
    }

    int count(Checkpoint checkpoint) {
        return of(checkpoint).size();
    }

    private List<Tap> of(Checkpoint checkpoint) {
        List<Tap> taps = addedTo(checkpoint.id());
        taps.addAll(checkpoints.getOrDefault(checkpoint.id(), List.of()));
        return taps;
    }

    /**
     * When a checkpoint was complete, by its sensor or by taps; MAX while it is not, {@link
     * #SEEN_SOMETIME} when only taps without a time say so.
     *
     * @param seen by its sensor; or null
     */
    long completeMicros(Checkpoint checkpoint, List<Mark> seen) {
        long bySensor = nth(withAdded(checkpoint, seen), checkpoint.count());
        long byTaps = nth(checkpoint);
        boolean isTimed = byTaps != SEEN_SOMETIME;
        return !isTimed && bySensor < Long.MAX_VALUE ? bySensor : Math.min(bySensor, byTaps);
    }

    private List<Mark> withAdded(Checkpoint checkpoint, List<Mark> seen) {
        List<Tap> taps = addedTo(checkpoint.id());
        if (taps.isEmpty()) {
            return seen;
        }
        List<Mark> marks = new ArrayList<>(seen == null ? List.of() : seen);
        taps.stream().filter(Tap::isTimed).forEach(tap -> marks.add(tap.mark()));
        marks.sort(Comparator.comparingLong(mark -> mark.stamp().micros()));
        return marks;
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
                        .anyMatch(taps -> taps.stream().anyMatch(tap -> tap.press() == press))
                || added.stream().anyMatch(mark -> mark.tap().press() == press);
    }

    @Override
    public String toString() {
        return start + " " + finishes + " " + checkpoints + " " + added;
    }
}
