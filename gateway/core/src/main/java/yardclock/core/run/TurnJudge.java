package yardclock.core.run;

import yardclock.core.course.Checkpoint;
import yardclock.core.course.Combination;
import yardclock.core.course.Guards;
import yardclock.core.course.Station;
import yardclock.core.course.Trigger;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.passage.Passage;
import yardclock.core.passage.TriggerJudge;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * Judges a turn from all its edges and taps: whose it is, its start, checkpoints and finish.
 *
 * <p>Called again for each edge, tap and deadline of the turn. It says only what changed. A turn
 * that was ruled on is not changed any more; what comes then is late evidence.
 */
final class TurnJudge {
    static final String START = "start";
    static final String FINISH = "finish";

    /** A proctor's finish tap stands in for a sensor that said nothing for this long. */
    static final long FALLBACK_MICROS = 10_000_000;

    /** The unit answers a start signal at once; after this long something is wrong with it. */
    static final long SIGNAL_ANSWER_REAL_MICROS = 3_000_000;

    /** The horn's edge may seem to lie before it was asked for, by the clock's uncertainty. */
    private static final long SIGNAL_SLACK_MICROS = 1_000_000;

    private final CourseRun course;

    TurnJudge(CourseRun course) {
        this.course = course;
    }

    void judge(StationRun run, Turn turn, long nowMicros, Gathering out) {
        turn.wakeMicros = Long.MAX_VALUE;
        if (turn.isRuled()) {
            turn.late = true;
            out.conclude(
                    fact(
                            FactKind.LATE_EVIDENCE,
                            turn,
                            "",
                            null,
                            "a reading came after the ruling"));
            return;
        }
        if (turn.number == 0 && turn == run.current() && run.state == StationRun.State.READY) {
            seekOwner(run, turn, nowMicros, out);
        } else if (turn.number != 0) {
            deriveStart(turn, nowMicros, out);
        }
        if (turn.start != null) {
            deriveCheckpoints(turn, nowMicros, out);
            deriveFinish(run, turn, nowMicros, out);
        }
    }

    private void seekOwner(StationRun run, Turn turn, long nowMicros, Gathering out) {
        int index = course.plan.indexOf(run.station.id());
        Optional<Attempt> expected = course.expectedAt(index);
        if (expected.isEmpty()) {
            countUnassigned(turn, out);
            return;
        }
        Attempt attempt = expected.get();
        turn.startFromMicros = Math.max(turn.openMicros, earliestStart(attempt, index));
        Mark start = findStart(turn, nowMicros);
        if (start != null) {
            turn.start = start;
            begin(run, turn, attempt, nowMicros, out);
        }
    }

    private void countUnassigned(Turn turn, Gathering out) {
        int seen = judgeOf(turn.station.start()).passages(turn.evidence.inOrder(), 0).size();
        if (seen > turn.unassigned) {
            turn.unassigned = seen;
            out.conclude(
                    fact(
                            FactKind.PASSAGE_UNASSIGNED,
                            turn,
                            START,
                            null,
                            "nobody is expected here"));
        }
    }

    private long earliestStart(Attempt attempt, int index) {
        if (index > 0) {
            return attempt.walkingFromMicros;
        }
        if (course.plan.stations().get(0).start().combination() != Combination.SIGNAL) {
            return attempt.releasedMicros;
        }
        return attempt.signalAskedMicros < 0
                ? Long.MAX_VALUE
                : attempt.signalAskedMicros - SIGNAL_SLACK_MICROS;
    }

    /** The trigger's own start, or else the proctor's tap. */
    private Mark findStart(Turn turn, long nowMicros) {
        Optional<Passage> passage =
                judgeOf(turn.station.start()).mark(turn.evidence.inOrder(), turn.startFromMicros);
        if (passage.isPresent() && passage.get().isConcluded(nowMicros)) {
            return new Mark(passage.get().stamp(), Mark.Source.AUTOMATIC);
        }
        passage.ifPresent(p -> wakeAt(turn, p.concludesAtMicros()));
        return turn.startTap;
    }

    /** Gives the turn to the candidate whose start was seen, or tapped. */
    private void begin(StationRun run, Turn turn, Attempt attempt, long nowMicros, Gathering out) {
        Mark start = turn.start;
        turn.number = attempt.number;
        attempt.turns.add(turn);
        attempt.phase = Attempt.Phase.AT_STATION;
        attempt.signalAskedMicros = -1;
        attempt.revision++;
        run.moveTo(StationRun.State.IN_USE, nowMicros);
        out.conclude(fact(FactKind.MARK_PROPOSED, turn, START, start, start.source().name()));
        out.conclude(Fact.of(FactKind.STATION_IN_USE, turn.number, turn.station.id(), ""));
    }

    private void deriveStart(Turn turn, long nowMicros, Gathering out) {
        Mark start = findStart(turn, nowMicros);
        if (start != null && !start.equals(turn.start)) {
            turn.start = start;
            changed(turn, START, start, out);
        }
    }

    private void deriveCheckpoints(Turn turn, long nowMicros, Gathering out) {
        for (Checkpoint checkpoint : turn.station.checkpoints()) {
            if (checkpoint.trigger().isJudged()) {
                continue;
            }
            List<Mark> marks = new ArrayList<>();
            long from = armedFrom(turn, checkpoint.trigger());
            TriggerJudge judge = judgeOf(checkpoint.trigger());
            for (Passage passage :
                    judge.counted(turn.evidence.inOrder(), from, checkpoint.count())) {
                if (passage.isConcluded(nowMicros)) {
                    marks.add(new Mark(passage.stamp(), Mark.Source.AUTOMATIC));
                } else {
                    wakeAt(turn, passage.concludesAtMicros());
                }
            }
            List<Mark> before = turn.checkpoints.put(checkpoint.id(), marks);
            tellNew(turn, checkpoint, before == null ? 0 : before.size(), out);
        }
    }

    private void tellNew(Turn turn, Checkpoint checkpoint, int told, Gathering out) {
        List<Mark> marks = turn.checkpoints.get(checkpoint.id());
        for (Mark mark : marks.subList(Math.min(told, marks.size()), marks.size())) {
            bump(turn);
            out.conclude(
                    fact(
                            FactKind.MARK_PROPOSED,
                            turn,
                            checkpoint.id(),
                            mark,
                            mark.source().name()));
        }
    }

    /** MAX while what arms the trigger was not seen. */
    private static long armedFrom(Turn turn, Trigger trigger) {
        long from = turn.start.stamp().micros();
        String armedBy = trigger.guards().armedBy();
        return turn.station
                .checkpoint(armedBy)
                .map(checkpoint -> Math.max(from, turn.completeMicros(checkpoint)))
                .orElse(from);
    }

    private void deriveFinish(StationRun run, Turn turn, long nowMicros, Gathering out) {
        long from = armedFrom(turn, turn.station.finish());
        Mark finish = from == Long.MAX_VALUE ? null : findFinish(turn, from, nowMicros);
        boolean byFallback = false;
        if (finish == null && turn.finishTap != null) {
            finish = fallback(turn, nowMicros);
            byFallback = finish != null;
        }
        if (finish == null) {
            doubtConcluded(turn, out);
        } else if (!turn.finishConcluded) {
            turn.finishByFallback = byFallback;
            conclude(run, turn, finish, nowMicros, out);
        } else if (!finish.equals(turn.finish)) {
            turn.finish = finish;
            turn.finishByFallback = byFallback;
            changed(turn, FINISH, finish, out);
        }
    }

    private Mark findFinish(Turn turn, long from, long nowMicros) {
        Trigger trigger = turn.station.finish();
        long allowance = course.plan.timing().judgedAllowanceMicros();
        Optional<Passage> passage = judgeOf(trigger).mark(turn.evidence.inOrder(), from);
        if (passage.isPresent() && passage.get().isConcluded(nowMicros)) {
            return trigger.isJudged()
                    ? HandMarks.button(passage.get().stamp(), allowance)
                    : new Mark(passage.get().stamp(), Mark.Source.AUTOMATIC);
        }
        passage.ifPresent(p -> wakeAt(turn, p.concludesAtMicros()));
        boolean tapCounts =
                turn.finishTap != null
                        && trigger.isJudged()
                        && turn.finishTap.stamp().micros() >= from;
        return tapCounts ? turn.finishTap : null;
    }

    private static Mark fallback(Turn turn, long nowMicros) {
        Guards guards = turn.station.finish().guards();
        long stay = Math.max(guards.staysForMicros(), guards.clearForMicros());
        long due = turn.finishTap.stamp().micros() + FALLBACK_MICROS + stay;
        if (nowMicros >= due) {
            return turn.finishTap;
        }
        wakeAt(turn, due);
        return null;
    }

    /**
     * What concluded a finish is gone: say so, keep what was shown, and call the split doubtful.
     */
    private static void doubtConcluded(Turn turn, Gathering out) {
        if (turn.finishConcluded && !turn.late) {
            turn.late = true;
            out.conclude(
                    fact(FactKind.LATE_EVIDENCE, turn, FINISH, turn.finish, "finish contradicted"));
        }
    }

    private void conclude(StationRun run, Turn turn, Mark finish, long nowMicros, Gathering out) {
        turn.finish = finish;
        turn.finishConcluded = true;
        bump(turn);
        out.conclude(fact(FactKind.MARK_PROPOSED, turn, FINISH, finish, finish.source().name()));
        proposeSplit(turn, out);
        if (run.current() == turn && run.state == StationRun.State.IN_USE) {
            run.moveTo(StationRun.State.TO_BE_RESET, nowMicros);
            out.conclude(Fact.of(FactKind.STATION_TO_BE_RESET, 0, turn.station.id(), ""));
        }
        Attempt attempt = course.attempts.get(turn.number);
        if (attempt.phase == Attempt.Phase.AT_STATION) {
            advance(attempt, finish.stamp().lowerMicros(), nowMicros, out);
        }
    }

    /** The candidate is through with a station and goes on to the next, or is at the end. */
    void advance(Attempt attempt, long leftMicros, long nowMicros, Gathering out) {
        attempt.walkingFromMicros = leftMicros;
        attempt.stationIndex++;
        if (attempt.stationIndex == course.plan.stations().size()) {
            attempt.phase = Attempt.Phase.FINISHED;
            OfficialTime.of(course.plan, attempt).ifPresent(time -> out.conclude(time.fact()));
            return;
        }
        attempt.phase = Attempt.Phase.WALKING;
        StationRun next = course.stationAt(attempt.stationIndex);
        judge(next, next.current(), nowMicros, out);
    }

    private void proposeSplit(Turn turn, Gathering out) {
        Split split = Splits.of(turn);
        String words = split.clean() ? "clean" : split.why().en();
        out.conclude(
                new Fact(
                        FactKind.SPLIT_PROPOSED,
                        turn.number,
                        turn.station.id(),
                        "",
                        null,
                        split.micros(),
                        words));
    }

    private void changed(Turn turn, String point, Mark mark, Gathering out) {
        bump(turn);
        out.conclude(fact(FactKind.MARK_CHANGED, turn, point, mark, mark.source().name()));
        if (turn.finishConcluded) {
            proposeSplit(turn, out);
        }
    }

    private void bump(Turn turn) {
        course.attempts.get(turn.number).revision++;
    }

    long signalDeadlineMicros(Attempt attempt) {
        return attempt.signalAskedMicros < 0 || attempt.signalMissed
                ? Long.MAX_VALUE
                : attempt.signalAskedMicros + SIGNAL_ANSWER_REAL_MICROS * course.speed;
    }

    void missSignal(Attempt attempt, long nowMicros, Gathering out) {
        if (signalDeadlineMicros(attempt) <= nowMicros) {
            attempt.signalMissed = true;
            attempt.revision++;
            Station first = course.plan.stations().get(0);
            out.conclude(
                    Fact.of(
                            FactKind.ALARM,
                            attempt.number,
                            first.id(),
                            "The start signal was not answered. Look at the horn, or start by word"
                                    + " and tap."));
        }
    }

    private static void wakeAt(Turn turn, long micros) {
        turn.wakeMicros = Math.min(turn.wakeMicros, micros);
    }

    private TriggerJudge judgeOf(Trigger trigger) {
        return new TriggerJudge(trigger, course.plan.timing().settleMicros());
    }

    private static Fact fact(FactKind kind, Turn turn, String point, Mark mark, String words) {
        return new Fact(
                kind,
                turn.number,
                turn.station.id(),
                point,
                mark == null ? null : mark.stamp(),
                0,
                Objects.requireNonNullElse(words, ""));
    }
}
