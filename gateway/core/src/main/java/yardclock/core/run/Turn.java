package yardclock.core.run;

import yardclock.core.course.Checkpoint;
import yardclock.core.course.Station;
import yardclock.core.ordering.Evidence;
import yardclock.core.passage.EdgeClocks;
import yardclock.core.time.Stamp;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One stretch of time at one station: from when it was ready until it is ready again. It belongs to
 * one candidate, or to nobody while no start was seen.
 *
 * <p>Automatic marks are derived from the evidence and may change until a ruling; hand marks and
 * rulings are kept beside them.
 */
public final class Turn {
    final Station station;
    final long openMicros;
    final Evidence evidence = new Evidence();

    /**
     * Edges before this do not count towards the start: the candidate was elsewhere, or not sent.
     */
    long startFromMicros = Long.MAX_VALUE;

    int number;
    Mark start;
    Mark finish;
    boolean finishConcluded;
    boolean finishByFallback;
    boolean late;

    /** The time between start and finish by the one clock both were stamped by; or null. */
    private Stamp sameClock;

    /** A sensor and the proctor's tap can't both be right. */
    boolean disagrees;

    /** Gateway time broke off between this turn's start and its finish. */
    boolean interrupted;

    /** The attempt ended here before its time: what comes after changes nothing. */
    boolean isClosed;

    /** When this turn must be judged again though nothing happens; MAX for never. */
    long wakeMicros = Long.MAX_VALUE;

    /** Start passages seen while nobody was expected. */
    int unassigned;

    final Map<String, List<Mark>> checkpoints = new LinkedHashMap<>();
    Mark startTap;
    Mark finishTap;
    final Map<String, List<Mark>> checkpointTaps = new LinkedHashMap<>();
    SplitState ruled;
    Mark ruledStart;
    Mark ruledFinish;
    String ruledWords = "";

    Turn(Station station, long openMicros) {
        this.station = station;
        this.openMicros = openMicros;
    }

    public Station station() {
        return station;
    }

    public int number() {
        return number;
    }

    public boolean isStarted() {
        return start != null;
    }

    public boolean isFinished() {
        return finish != null && finishConcluded;
    }

    public boolean isRuled() {
        return ruled != null;
    }

    /** The start that stands: the ruled one, or else the derived one. */
    public Mark start() {
        return ruledStart != null ? ruledStart : start;
    }

    public Mark finish() {
        return ruledFinish != null ? ruledFinish : finish;
    }

    /** The start as derived, whatever was ruled. */
    public Mark derivedStart() {
        return start;
    }

    public Mark derivedFinish() {
        return finishConcluded ? finish : null;
    }

    public Mark startTap() {
        return startTap;
    }

    public Mark finishTap() {
        return finishTap;
    }

    public boolean finishByFallback() {
        return finishByFallback;
    }

    public boolean hasLateEvidence() {
        return late;
    }

    public boolean isInterrupted() {
        return interrupted;
    }

    public boolean disagrees() {
        return disagrees;
    }

    public String ruledWords() {
        return ruledWords;
    }

    public SplitState ruled() {
        return ruled;
    }

    /** Asks the one clock that stamped start and finish, if it was one; not once it was ruled. */
    void compareOnOneClock(EdgeClocks clocks) {
        if (isRuled()) {
            return;
        }
        boolean both = start != null && finish != null;
        both = both && start.edge() != null && finish.edge() != null;
        sameClock =
                both && start.edge().sharesClockWith(finish.edge())
                        ? clocks.elapsed(start.edge(), finish.edge()).orElse(null)
                        : null;
    }

    /** The time between the marks that stand; both must be there. */
    Elapsed elapsed() {
        return Elapsed.within(start(), finish(), isAsDerived() ? sameClock : null);
    }

    private boolean isAsDerived() {
        return start != null
                && finish != null
                && start.edge() != null
                && finish.edge() != null
                && start.edge().equals(start().edge())
                && finish.edge().equals(finish().edge());
    }

    /** The start that stands, as its clock says in the end; null while that is open. */
    Mark settledStart() {
        return settled(start(), start);
    }

    Mark settledFinish() {
        return settled(finish(), finish);
    }

    private static Mark settled(Mark stands, Mark derived) {
        if (stands == null || stands.edge() == null) {
            return stands;
        }
        boolean isFinal =
                derived != null
                        && stands.edge().equals(derived.edge())
                        && derived.settled() != null;
        return isFinal ? derived : null;
    }

    /** The time between the derived marks, or null while one is missing. */
    Elapsed derivedElapsed() {
        return start == null || derivedFinish() == null
                ? null
                : Elapsed.within(start, finish, sameClock);
    }

    /** How often a checkpoint was seen, by its trigger or by the proctor, whichever saw more. */
    public int seen(Checkpoint checkpoint) {
        int automatic = checkpoints.getOrDefault(checkpoint.id(), List.of()).size();
        int tapped = checkpointTaps.getOrDefault(checkpoint.id(), List.of()).size();
        return Math.min(checkpoint.count(), Math.max(automatic, tapped));
    }

    public boolean isSeen(Checkpoint checkpoint) {
        return seen(checkpoint) >= checkpoint.count();
    }

    public boolean allSeen() {
        return station.checkpoints().stream().allMatch(this::isSeen);
    }

    /** When all checkpoints were complete; MAX while one is not. */
    long allSeenMicros() {
        return station.checkpoints().stream()
                .mapToLong(
                        c -> completeMicros(c, checkpoints.get(c.id()), checkpointTaps.get(c.id())))
                .max()
                .orElse(Long.MIN_VALUE);
    }

    /** When a checkpoint was complete, by its sensor or by taps; MAX while it is not. */
    static long completeMicros(Checkpoint checkpoint, List<Mark> seen, List<Mark> taps) {
        return Math.min(
                completeMicros(seen, checkpoint.count()), completeMicros(taps, checkpoint.count()));
    }

    private static long completeMicros(List<Mark> marks, int count) {
        return marks == null || marks.size() < count
                ? Long.MAX_VALUE
                : marks.get(count - 1).stamp().micros();
    }

    /** Another press takes the first one's place only if that came before everything was seen. */
    void addFinishTap(Mark tap) {
        long allSeen = allSeenMicros();
        boolean wasTooEarly =
                finishTap != null
                        && allSeen < Long.MAX_VALUE
                        && finishTap.stamp().micros() < allSeen;
        if (finishTap == null || wasTooEarly) {
            finishTap = tap;
        }
    }

    void addCheckpointTap(String checkpoint, Mark tap) {
        checkpointTaps.computeIfAbsent(checkpoint, c -> new ArrayList<>()).add(tap);
    }

    @Override
    public String toString() {
        return String.join(
                " ",
                station.id(),
                Long.toString(openMicros),
                Integer.toString(number),
                String.valueOf(start),
                String.valueOf(finish),
                String.valueOf(finishConcluded),
                String.valueOf(finishByFallback),
                String.valueOf(sameClock),
                String.valueOf(late),
                String.valueOf(disagrees),
                String.valueOf(isClosed),
                String.valueOf(interrupted),
                Long.toString(startFromMicros),
                Long.toString(wakeMicros),
                Integer.toString(unassigned),
                checkpoints.toString(),
                String.valueOf(startTap),
                String.valueOf(finishTap),
                checkpointTaps.toString(),
                String.valueOf(ruled),
                String.valueOf(ruledStart),
                String.valueOf(ruledFinish),
                ruledWords,
                evidence.toString());
    }
}
