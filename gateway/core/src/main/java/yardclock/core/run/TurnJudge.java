package yardclock.core.run;

import yardclock.core.course.Checkpoint;
import yardclock.core.course.Combination;
import yardclock.core.course.Station;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.passage.TriggerJudge;
import yardclock.core.reading.PointReadings;
import yardclock.core.time.Stamp;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Judges a turn from all its edges and taps: whose it is, its start, checkpoints and finish.
 *
 * <p>Called again for each edge, tap and deadline of the turn. It says only what changed. A turn
 * that was ruled on is not changed any more; what speaks against it then is late evidence.
 */
final class TurnJudge {
    static final String START = "start";
    static final String FINISH = "finish";

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
        turn.touch();
        if (!turn.isClosed) {
            conclude(run, turn, nowMicros, out);
        }
        course.waking().note(turn);
    }

    private void conclude(StationRun run, Turn turn, long nowMicros, Gathering out) {
        Derivation says = derivationOf(turn, nowMicros);
        if (turn.isRuled()) {
            lookForLateEvidence(turn, says, out);
            return;
        }
        Mark start =
                turn.number == 0
                        ? seekOwner(run, turn, says, nowMicros, out)
                        : restart(turn, says, out);
        if (start != null || turn.isStarted()) {
            derive(run, turn, says, nowMicros, out);
        }
        turn.wakeMicros = Math.min(turn.wakeMicros, says.wakeMicros());
        course.passing().look(run, turn, out);
    }

    /** What a turn's evidence says at this moment; changes nothing. */
    Derivation derivationOf(Turn turn, long nowMicros) {
        Derivation.Beside beside =
                new Derivation.Beside(isTapping(turn), () -> Crowd.isAtStart(turn, course));
        return new Derivation(course.plan.timing(), course.crossed, turn, beside, nowMicros);
    }

    /**
     * Whether somebody taps this candidate's starts and finishes, here or at an earlier station.
     */
    private boolean isTapping(Turn turn) {
        Attempt attempt = turn.owner;
        return turn.taps.isUsed()
                || attempt != null && attempt.turns.stream().anyMatch(t -> t.taps.isUsed());
    }

    /** The start if there is one now, and then the turn has its owner. */
    private Mark seekOwner(
            StationRun run, Turn turn, Derivation says, long nowMicros, Gathering out) {
        if (turn != run.current() || run.state != StationRun.State.READY) {
            return null;
        }
        int index = course.plan.indexOf(run.station.id());
        Optional<Attempt> expected = course.whereabouts().expectedAt(index);
        if (expected.isEmpty()) {
            countUnassigned(turn, out);
            return null;
        }
        Attempt attempt = expected.get();
        turn.startFromMicros = Math.max(turn.openMicros, earliestStart(attempt, index));
        Mark start = says.start();
        turn.startReadings = says.startReadings();
        if (start != null || turn.taps.start() != null) {
            turn.untimedFromMicros = Math.max(turn.openMicros, sentMicros(attempt, index));
            begin(run, attempt, start, nowMicros, out);
        }
        return start;
    }

    private static long sentMicros(Attempt attempt, int index) {
        return index > 0 ? attempt.walkingFromMicros : attempt.releasedMicros;
    }

    private void countUnassigned(Turn turn, Gathering out) {
        TriggerJudge judge =
                new TriggerJudge(turn.station.start(), course.plan.timing().settleMicros());
        int seen = judge.passages(turn.evidence.inOrder(), turn.countsFromMicros()).size();
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

    /**
     * Gives the station's turn to a candidate whose start was seen, or tapped.
     *
     * @param start null for a tap that has no time
     */
    private void begin(StationRun run, Attempt attempt, Mark start, long nowMicros, Gathering out) {
        Turn turn = run.current();
        long earliest = start == null ? turn.untimedFromMicros : start.stamp().lowerMicros();
        TurnCauses.forgetBefore(course, turn, Math.min(turn.startFromMicros, earliest));
        turn.belongTo(attempt);
        turn.start = start;
        attempt.turns.add(turn);
        attempt.phase = Attempt.Phase.AT_STATION;
        attempt.signalAskedMicros = -1;
        attempt.revision++;
        run.moveTo(StationRun.State.IN_USE, nowMicros);
        new StationAgain(course, nowMicros, out).begun(turn);
        out.conclude(fact(FactKind.MARK_PROPOSED, turn, START, start, sourceOf(start)));
        out.conclude(Fact.of(FactKind.STATION_IN_USE, turn.number, turn.station.id(), ""));
    }

    /** The start as it stands now; what was concluded stays, even if its evidence is gone. */
    private Mark restart(Turn turn, Derivation says, Gathering out) {
        Mark start = says.start();
        read(turn, says.startReadings(), turn.finishReadings);
        if (start == null && turn.start != null) {
            doubt(turn, START, turn.start, out);
        } else if (start != null && !start.isSame(turn.start)) {
            turn.start = start;
            StationAgain.follow(turn, course.lines);
            turn.times.compareOnOneClock(course.clocks);
            tellChanged(turn, START, start, out);
        }
        return turn.start;
    }

    /** Takes over how the evidence is read; whether a person who rules would see it otherwise. */
    private static boolean read(Turn turn, PointReadings start, PointReadings finish) {
        boolean wasClear = turn.isClear();
        turn.startReadings = start;
        turn.finishReadings = finish;
        return wasClear != turn.isClear();
    }

    private void derive(StationRun run, Turn turn, Derivation says, long nowMicros, Gathering out) {
        says.seekCheckpoints(turn.fromMicros());
        Derivation.Finish finish = says.finish(turn.fromMicros());
        Mark until = finish == null ? turn.derivedFinish() : finish.mark();
        boolean wasDoubtful = turn.disagrees;
        turn.disagrees = says.disagrees();
        boolean isReadOtherwise = read(turn, turn.startReadings, says.finishReadings());
        tellCheckpoints(turn, says.checkpointsUntil(until), out);
        if (finish == null) {
            if (turn.finishConcluded) {
                doubt(turn, FINISH, turn.finish, out);
            }
            return;
        }
        turn.finishByFallback = finish.byFallback();
        boolean isDoubtOver = turn.late && says.hasStart();
        turn.late &= !isDoubtOver;
        if (!turn.finishConcluded) {
            conclude(run, turn, finish.mark(), nowMicros, out);
        } else if (!isSame(finish.mark(), turn.finish)) {
            turn.finish = finish.mark();
            turn.times.compareOnOneClock(course.clocks);
            tellChanged(turn, FINISH, turn.finish, out);
            leftOtherwise(turn, nowMicros, out);
        } else if (wasDoubtful != turn.disagrees || isReadOtherwise || isDoubtOver) {
            turn.owner.revision++;
        }
    }

    private void tellCheckpoints(Turn turn, Map<String, List<Mark>> seen, Gathering out) {
        for (Checkpoint checkpoint : turn.station.checkpoints()) {
            List<Mark> marks = seen.getOrDefault(checkpoint.id(), List.of());
            List<Mark> before = turn.checkpoints.getOrDefault(checkpoint.id(), List.of());
            turn.checkpoints.put(checkpoint.id(), keepingSettled(marks, before));
            for (Mark mark : marks.subList(Math.min(before.size(), marks.size()), marks.size())) {
                turn.owner.revision++;
                String source = mark.source().name();
                out.conclude(fact(FactKind.MARK_PROPOSED, turn, checkpoint.id(), mark, source));
            }
        }
    }

    /** Judging anew gives provisional stamps; what was settled before stays so. */
    private static List<Mark> keepingSettled(List<Mark> marks, List<Mark> before) {
        return marks.stream()
                .map(m -> before.stream().filter(m::isSame).findFirst().orElse(m))
                .toList();
    }

    /** What concluded a mark is gone: say so, keep what was shown, and call the split doubtful. */
    private static void doubt(Turn turn, String point, Mark mark, Gathering out) {
        if (!turn.late) {
            turn.late = true;
            out.conclude(fact(FactKind.LATE_EVIDENCE, turn, point, mark, point + " contradicted"));
        }
    }

    /** After a ruling only what would have given other marks is worth a person's time. */
    private static void lookForLateEvidence(Turn turn, Derivation says, Gathering out) {
        if (turn.late || turn.number == 0) {
            return;
        }
        Mark start = says.start();
        Derivation.Finish finish = null;
        if (start != null) {
            says.seekCheckpoints(start.stamp().micros());
            finish = says.finish(start.stamp().micros());
        }
        boolean isOther =
                start != null && !start.isSame(turn.start)
                        || finish != null
                                && !finish.byFallback()
                                && finish.mark() != null
                                && !finish.mark().isSame(turn.derivedFinish());
        if (isOther) {
            turn.late = true;
            Mark last = finish == null ? turn.finish() : finish.mark();
            Elapsed elapsed = turn.times.between(start == null ? turn.start() : start, last);
            turn.lateMicros = elapsed == null ? -1 : elapsed.micros();
            String words = "a reading came after the ruling";
            out.conclude(fact(FactKind.LATE_EVIDENCE, turn, "", null, words));
        }
    }

    /**
     * @param finish null for a tap that has no time: the station is over all the same
     */
    private void conclude(StationRun run, Turn turn, Mark finish, long nowMicros, Gathering out) {
        turn.finish = finish;
        turn.finishConcluded = true;
        turn.usual = run.usual.window();
        turn.times.compareOnOneClock(course.clocks);
        turn.owner.revision++;
        out.conclude(fact(FactKind.MARK_PROPOSED, turn, FINISH, finish, sourceOf(finish)));
        course.passing().passes(run, turn);
        proposeSplit(turn, out);
        if (run.current() == turn && run.state == StationRun.State.IN_USE) {
            run.moveTo(StationRun.State.TO_BE_RESET, nowMicros);
            out.conclude(Fact.of(FactKind.STATION_TO_BE_RESET, 0, turn.station.id(), ""));
        }
        Attempt attempt = turn.owner;
        boolean isHere = attempt.stationIndex == course.plan.indexOf(turn.station.id());
        if (isHere && attempt.phase == Attempt.Phase.AT_STATION) {
            advance(attempt, leftMicros(turn), nowMicros, out);
        }
    }

    /** The candidate is through with a station and goes on to the next, or is at the end. */
    void advance(Attempt attempt, long leftMicros, long nowMicros, Gathering out) {
        attempt.walkingFromMicros = leftMicros;
        attempt.stationIndex++;
        if (attempt.stationIndex == course.plan.stations().size()) {
            attempt.phase = Attempt.Phase.FINISHED;
            if (attempt.isHeld()) {
                course.endHold(attempt, end(attempt, nowMicros), out);
            }
            course.tellOfficialTime(attempt, out);
            return;
        }
        attempt.phase = Attempt.Phase.WALKING;
        seekNextStart(attempt, nowMicros, out);
    }

    private void seekNextStart(Attempt attempt, long nowMicros, Gathering out) {
        StationRun next = course.stationAt(attempt.stationIndex);
        if (next.current().number == 0) {
            judge(next, next.current(), nowMicros, out);
        }
    }

    /** Who left a station sooner than was thought may have begun the next one before that. */
    private void leftOtherwise(Turn turn, long nowMicros, Gathering out) {
        Attempt attempt = turn.owner;
        boolean walksFromHere =
                attempt.phase == Attempt.Phase.WALKING
                        && attempt.stationIndex == course.plan.indexOf(turn.station.id()) + 1;
        if (walksFromHere) {
            attempt.walkingFromMicros = leftMicros(turn);
            seekNextStart(attempt, nowMicros, out);
        }
    }

    /** When the candidate left, at the earliest. */
    private static long leftMicros(Turn turn) {
        return turn.finish == null ? turn.fromMicros() : turn.finish.stamp().lowerMicros();
    }

    /** A hold that nobody ended ends with the run: there is nothing left to hold. */
    private TabletPress end(Attempt attempt, long nowMicros) {
        Mark finish = attempt.turns.get(attempt.turns.size() - 1).finish();
        return finish == null
                ? TabletPress.of(Stamp.exactly(nowMicros), course.lines)
                : TabletPress.of(finish.best(), finish.line(), course.lines);
    }

    void proposeSplit(Turn turn, Gathering out) {
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

    private void tellChanged(Turn turn, String point, Mark mark, Gathering out) {
        turn.owner.revision++;
        out.conclude(fact(FactKind.MARK_CHANGED, turn, point, mark, sourceOf(mark)));
        if (turn.finishConcluded) {
            proposeSplit(turn, out);
            course.tellOfficialTime(turn.owner, out);
        }
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

    private static boolean isSame(Mark mark, Mark before) {
        return mark == null ? before == null : mark.isSame(before);
    }

    private static String sourceOf(Mark mark) {
        return (mark == null ? Mark.Source.TAP : mark.source()).name();
    }

    private static Fact fact(FactKind kind, Turn turn, String point, Mark mark, String words) {
        return new Fact(
                kind,
                turn.number,
                turn.station.id(),
                point,
                mark == null ? null : mark.stamp(),
                0,
                words);
    }
}
