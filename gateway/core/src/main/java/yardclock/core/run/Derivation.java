package yardclock.core.run;

import yardclock.core.course.Checkpoint;
import yardclock.core.course.Combination;
import yardclock.core.course.SensorRef;
import yardclock.core.course.TimingRules;
import yardclock.core.course.Trigger;
import yardclock.core.passage.Passage;
import yardclock.core.passage.TimedEdge;
import yardclock.core.passage.TriggerJudge;
import yardclock.core.reading.Crossed;
import yardclock.core.reading.PointReading;
import yardclock.core.reading.PointReadings;
import yardclock.core.reading.PointSearch;
import yardclock.core.time.Stamp;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BooleanSupplier;

/**
 * What the evidence and the taps of one turn say at one moment: its start, its checkpoints, its
 * finish. It changes nothing, and the order in which edges and taps came does not matter.
 *
 * <p>Used once, in that order. What only waits for time to pass is in {@link #wakeMicros()}.
 */
final class Derivation {
    /**
     * A proctor's finish tap stands in for a sensor that said nothing for this long; and a sensor
     * that is further from the tap than this speaks of something else.
     */
    static final long FALLBACK_MICROS = 10_000_000;

    /**
     * Where this proctor taps, a finish waits so long for its tap before it is called clear: it may
     * be a stray or a knock in the middle of the work. Our choice.
     */
    static final long TAP_WAIT_MICROS = 6_000_000;

    private final TimingRules timing;
    private final Crossed crossed;
    private final Turn turn;
    private final long nowMicros;
    private final Beside beside;
    private final Map<String, List<Mark>> checkpoints = new LinkedHashMap<>();
    private long wakeMicros = Long.MAX_VALUE;
    private boolean disagrees;
    private boolean hasStart;
    private PointReadings startReadings = PointReadings.NONE;
    private PointReadings finishReadings = PointReadings.NONE;

    /**
     * @param beside who is with the candidate
     */
    Derivation(TimingRules timing, Crossed crossed, Turn turn, Beside beside, long nowMicros) {
        this.beside = beside;
        this.timing = timing;
        this.crossed = crossed;
        this.turn = turn;
        this.nowMicros = nowMicros;
    }

    /**
     * Who is with the candidate.
     *
     * @param isTapping whether this candidate's proctor taps starts and finishes
     * @param isCrowded asked whether somebody else stood by, where a start is looked for
     */
    record Beside(boolean isTapping, BooleanSupplier isCrowded) {}

    /**
     * A finish, and whether a tap stands in for a silent sensor.
     *
     * @param mark null for a tap that has no time: it ends the station, and times nothing
     */
    record Finish(Mark mark, boolean byFallback) {}

    /** When this must be derived again though nothing happens; MAX for never. */
    long wakeMicros() {
        return wakeMicros;
    }

    /** Whether a sensor and the proctor's tap can't both mean the same occurrence. */
    boolean disagrees() {
        return disagrees;
    }

    /** All readings of the start, once it was asked for. */
    PointReadings startReadings() {
        return startReadings;
    }

    PointReadings finishReadings() {
        return finishReadings;
    }

    /** Whether there is a start; asked after {@link #start()}. */
    boolean hasStart() {
        return hasStart;
    }

    /** The best reading of the start: the trigger's own, or else the proctor's tap. */
    Mark start() {
        Mark start = bestStart();
        hasStart = start != null;
        return start;
    }

    private Mark bestStart() {
        Mark given = turn.assigned.mark(TurnJudge.START);
        if (given != null) {
            return given;
        }
        Mark tap = turn.startTap();
        if (tap == null) {
            tap = button(turn.station.start(), turn.startFromMicros, Long.MIN_VALUE);
        }
        startReadings =
                searchOf(turn.station.start(), beside.isCrowded().getAsBoolean())
                        .search(turn.evidence.inOrder(), turn.startFromMicros, pressOf(tap));
        disagrees |= isContradicted(tap, startReadings);
        PointReading best = startReadings.best();
        if (best == null || best.isByTap() || !isConcluded(best)) {
            return tap;
        }
        return Mark.automatic(best.edge(), best.chatter());
    }

    /** Nobody but the candidate trips this sensor, and it speaks of another time than the tap. */
    private static boolean isContradicted(Mark tap, PointReadings readings) {
        return tap != null
                && readings.ranked().stream()
                        .filter(reading -> !reading.isByTap())
                        .anyMatch(reading -> isFarFrom(tap, Mark.automatic(reading.edge())));
    }

    private static Stamp pressOf(Mark tap) {
        return tap == null ? null : HandMarks.pressOf(tap);
    }

    private boolean isConcluded(PointReading reading) {
        if (nowMicros >= reading.concludesAtMicros()) {
            return true;
        }
        wakeAt(reading.concludesAtMicros());
        return false;
    }

    private static boolean isFarFrom(Mark tap, Mark seen) {
        long micros = seen.stamp().micros();
        return micros > tap.stamp().upperMicros() + FALLBACK_MICROS
                || micros < tap.stamp().lowerMicros() - FALLBACK_MICROS;
    }

    /** Finds what each checkpoint's sensor saw from the start on, whenever the finish was. */
    void seekCheckpoints(long fromMicros) {
        for (Checkpoint checkpoint : turn.station.checkpoints()) {
            if (!checkpoint.trigger().isJudged()) {
                checkpoints.put(checkpoint.id(), seen(checkpoint, fromMicros));
            }
        }
    }

    private List<Mark> seen(Checkpoint checkpoint, long fromMicros) {
        List<Mark> marks = turn.assigned.marks(checkpoint.id());
        long from = armedFrom(fromMicros, checkpoint.trigger());
        TriggerJudge judge = judgeOf(checkpoint.trigger());
        for (Passage passage : judge.counted(turn.evidence.inOrder(), from, checkpoint.count())) {
            if (passage.isConcluded(nowMicros)) {
                marks.add(Mark.automatic(passage.edge()));
            } else {
                wakeAt(passage.concludesAtMicros());
            }
        }
        marks.sort(Comparator.comparingLong(mark -> mark.stamp().micros()));
        return marks;
    }

    /** What was seen up to the finish; what is seen after it puts nothing right. */
    Map<String, List<Mark>> checkpointsUntil(Mark finish) {
        Map<String, List<Mark>> until = new LinkedHashMap<>();
        checkpoints.forEach(
                (id, marks) ->
                        until.put(id, marks.stream().filter(m -> isUntil(m, finish)).toList()));
        return until;
    }

    private static boolean isUntil(Mark mark, Mark finish) {
        return finish == null || mark.stamp().micros() <= finish.stamp().upperMicros();
    }

    /** MAX while what arms the trigger was not seen. */
    private long armedFrom(long from, Trigger trigger) {
        return turn.station
                .checkpoint(trigger.guards().armedBy())
                .map(checkpoint -> Math.max(from, completeMicros(checkpoint)))
                .orElse(from);
    }

    private long completeMicros(Checkpoint checkpoint) {
        return turn.taps.completeMicros(checkpoint, checkpoints.get(checkpoint.id()));
    }

    private long allSeenMicros() {
        return turn.station.checkpoints().stream()
                .mapToLong(this::completeMicros)
                .max()
                .orElse(Long.MIN_VALUE);
    }

    /** Null while there is none. */
    Finish finish(long startMicros) {
        Mark given = turn.assigned.mark(TurnJudge.FINISH);
        return given == null ? finishSeen(startMicros) : new Finish(given, false);
    }

    private Finish finishSeen(long startMicros) {
        Trigger trigger = turn.station.finish();
        long from = armedFrom(startMicros, trigger);
        Tap pressed = turn.taps.finish(allSeenMicros());
        Mark tap =
                pressed == null
                        ? button(trigger, startMicros, allSeenMicros())
                        : Tap.markOf(pressed);
        boolean wasTooEarly = tap != null && tap.stamp().micros() < allSeenMicros();
        boolean counts = tap != null && (!wasTooEarly || !isAllSeen());
        Finish seen = null;
        if (from < Long.MAX_VALUE) {
            seen =
                    trigger.isJudged()
                            ? judged(trigger, from, pressed)
                            : automatic(from, startMicros, counts ? tap : null);
        }
        if (seen == null && pressed == null && tap != null) {
            return fallback(tap.edge().stamp().micros(), tap);
        }
        if (seen == null) {
            boolean isNone = pressed == null || tap != null && tap.stamp().micros() <= startMicros;
            return isNone ? null : fallback(pressed.press().shownMicros(), pressed.mark());
        }
        disagrees |= counts && isFarFrom(tap, seen.mark());
        return seen;
    }

    private boolean isAllSeen() {
        return allSeenMicros() < Long.MAX_VALUE;
    }

    private Finish automatic(long fromMicros, long startMicros, Mark tap) {
        finishReadings =
                searchOf(turn.station.finish(), false)
                        .search(turn.evidence.inOrder(), fromMicros, pressOf(tap));
        disagrees |= isContradicted(tap, finishReadings);
        PointReading best = finishReadings.best();
        if (best == null || best.isByTap() || !isConcluded(best)) {
            return null;
        }
        boolean isUntapped = tap == null && !trigger().isJudged();
        if (isUntapped && isTooSoon(best, startMicros)) {
            return null;
        }
        boolean awaitsTap = isUntapped && awaitsTap(best);
        if (awaitsTap && crossed.isCrossed(best.edge().sensor())) {
            return null;
        }
        if (awaitsTap || !isWhole(best, startMicros)) {
            finishReadings = finishReadings.unclear();
        }
        return new Finish(Mark.automatic(best.edge(), best.chatter()), false);
    }

    private Trigger trigger() {
        return turn.station.finish();
    }

    /** Others cross it, and it is too soon after the start for anybody. */
    private boolean isTooSoon(PointReading best, long startMicros) {
        long at = best.edge().stamp().micros();
        return crossed.isCrossed(best.edge().sensor())
                && at - startMicros < turn.station.timing().shortestPlausibleMicros();
    }

    /** Whether this proctor's tap is still to come. */
    private boolean awaitsTap(PointReading best) {
        long until = best.edge().stamp().micros() + TAP_WAIT_MICROS;
        if (!beside.isTapping() || nowMicros >= until) {
            return false;
        }
        wakeAt(until);
        return true;
    }

    /**
     * Where all contacts must be reached, each was seen away from its state since the start, for
     * longer than chatter. Of one that was not, an edge was missed: the opening that should have
     * been the start, or the closing that should have been the finish.
     */
    private boolean isWhole(PointReading best, long startMicros) {
        Trigger trigger = trigger();
        if (trigger.combination() != Combination.ALL_OF) {
            return true;
        }
        List<TimedEdge> edges = turn.evidence.inOrder();
        return trigger.contacts().stream()
                .allMatch(c -> Away.isSeen(c, edges, startMicros, best.edge()));
    }

    private PointSearch searchOf(Trigger trigger, boolean isCrowded) {
        return new PointSearch(
                trigger, crossed, timing.settleMicros(), beside.isTapping(), isCrowded);
    }

    /**
     * The first press after everything required was seen, on the wired button before the tablet.
     * While something is still missing, the first press: a required act may be put right, and then
     * the finish is judged again. A tap without a time counts where no press with one does.
     */
    private Finish judged(Trigger trigger, long fromMicros, Tap pressed) {
        finishReadings = PointReadings.JUDGED;
        List<Mark> presses =
                judgeOf(trigger).passages(turn.evidence.inOrder(), fromMicros).stream()
                        .map(p -> HandMarks.button(p.edge(), timing.judgedAllowanceMicros()))
                        .toList();
        List<Mark> inOrderOfTrust = new ArrayList<>(presses);
        Mark tap = Tap.markOf(pressed);
        if (tap != null && tap.stamp().micros() >= fromMicros) {
            inOrderOfTrust.add(tap);
        }
        long allSeen = allSeenMicros();
        Mark counts =
                inOrderOfTrust.stream()
                        .filter(mark -> mark.stamp().micros() >= allSeen)
                        .findFirst()
                        .orElse(null);
        boolean isUntimed = counts == null && pressed != null && tap == null;
        if (isUntimed) {
            return new Finish(null, false);
        }
        Mark mark = counts == null ? first(inOrderOfTrust) : counts;
        return mark == null ? null : new Finish(mark, false);
    }

    private static Mark first(List<Mark> marks) {
        return marks.isEmpty() ? null : marks.get(0);
    }

    /** The wired button the plan names for a trigger whose sensor failed; null while unpressed. */
    private Mark button(Trigger trigger, long fromMicros, long allSeenMicros) {
        SensorRef named = trigger.site().fallback();
        if (named == null || trigger.isJudged()) {
            return null;
        }
        Mark first = null;
        for (TimedEdge edge : turn.evidence.inOrder()) {
            boolean isPress = edge.state() == 1 && edge.sensor().equals(named);
            if (isPress && edge.stamp().micros() >= fromMicros) {
                Mark press = HandMarks.button(edge, 0);
                if (edge.stamp().micros() >= allSeenMicros) {
                    return press;
                }
                first = first == null ? press : first;
            }
        }
        return first;
    }

    private Finish fallback(long pressedMicros, Mark press) {
        long stay = PointSearch.stayMicros(turn.station.finish());
        long due = pressedMicros + FALLBACK_MICROS + stay;
        if (nowMicros >= due) {
            return new Finish(press, true);
        }
        wakeAt(due);
        return null;
    }

    private void wakeAt(long micros) {
        wakeMicros = Math.min(wakeMicros, micros);
    }

    private TriggerJudge judgeOf(Trigger trigger) {
        return new TriggerJudge(trigger, timing.settleMicros());
    }
}
