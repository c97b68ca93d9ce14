package yardclock.core.run;

import yardclock.core.course.Checkpoint;
import yardclock.core.course.Guards;
import yardclock.core.course.TimingRules;
import yardclock.core.course.Trigger;
import yardclock.core.passage.Passage;
import yardclock.core.passage.TriggerJudge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

    private final TimingRules timing;
    private final Turn turn;
    private final long nowMicros;
    private final Map<String, List<Mark>> checkpoints = new LinkedHashMap<>();
    private long wakeMicros = Long.MAX_VALUE;
    private boolean disagrees;

    Derivation(TimingRules timing, Turn turn, long nowMicros) {
        this.timing = timing;
        this.turn = turn;
        this.nowMicros = nowMicros;
    }

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

    /**
     * The trigger's own start, or else the proctor's tap. A passage long after the tap does not
     * replace it: with a dead sensor that would be the next one to step on the mat.
     */
    Mark start() {
        Trigger trigger = turn.station.start();
        Passage passage = concluded(judgeOf(trigger), turn.startFromMicros);
        Mark tap = turn.startTap();
        if (passage == null) {
            return tap;
        }
        Mark automatic = Mark.automatic(passage.edge());
        if (tap != null && isFarFrom(tap, automatic)) {
            disagrees = true;
            boolean isLater = automatic.stamp().micros() > tap.stamp().micros();
            return isLater ? tap : automatic;
        }
        return automatic;
    }

    private Passage concluded(TriggerJudge judge, long fromMicros) {
        Passage passage = judge.mark(turn.evidence.inOrder(), fromMicros).orElse(null);
        if (passage == null || passage.isConcluded(nowMicros)) {
            return passage;
        }
        wakeAt(passage.concludesAtMicros());
        return null;
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
        List<Mark> marks = new ArrayList<>();
        long from = armedFrom(fromMicros, checkpoint.trigger());
        TriggerJudge judge = judgeOf(checkpoint.trigger());
        for (Passage passage : judge.counted(turn.evidence.inOrder(), from, checkpoint.count())) {
            if (passage.isConcluded(nowMicros)) {
                marks.add(Mark.automatic(passage.edge()));
            } else {
                wakeAt(passage.concludesAtMicros());
            }
        }
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
        Trigger trigger = turn.station.finish();
        long from = armedFrom(startMicros, trigger);
        Tap pressed = turn.taps.finish(allSeenMicros());
        Mark tap = Tap.markOf(pressed);
        Finish seen = null;
        if (from < Long.MAX_VALUE) {
            seen = trigger.isJudged() ? judged(trigger, from, pressed) : automatic(trigger, from);
        }
        if (seen == null) {
            boolean isNone = pressed == null || tap != null && tap.stamp().micros() <= startMicros;
            return isNone ? null : fallback(pressed);
        }
        boolean wasTooEarly = tap != null && tap.stamp().micros() < allSeenMicros();
        boolean counts = tap != null && (!wasTooEarly || !isAllSeen());
        disagrees |= counts && isFarFrom(tap, seen.mark());
        return seen;
    }

    private boolean isAllSeen() {
        return allSeenMicros() < Long.MAX_VALUE;
    }

    private Finish automatic(Trigger trigger, long fromMicros) {
        Passage passage = concluded(judgeOf(trigger), fromMicros);
        return passage == null ? null : new Finish(Mark.automatic(passage.edge()), false);
    }

    /**
     * The first press after everything required was seen, on the wired button before the tablet.
     * While something is still missing, the first press: a required act may be put right, and then
     * the finish is judged again. A tap without a time counts where no press with one does.
     */
    private Finish judged(Trigger trigger, long fromMicros, Tap pressed) {
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

    private Finish fallback(Tap pressed) {
        Guards guards = turn.station.finish().guards();
        long stay = Math.max(guards.staysForMicros(), guards.clearForMicros());
        long due = pressed.press().shownMicros() + FALLBACK_MICROS + stay;
        if (nowMicros >= due) {
            return new Finish(pressed.mark(), true);
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
