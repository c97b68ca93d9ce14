package yardclock.core.run;

import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.passage.EdgeKey;
import yardclock.core.time.Stamp;

import java.util.List;

/**
 * Carries out what was ruled on a split: each ruling goes into the turn's file and supersedes the
 * one that stood. Whether it is admissible was decided before.
 */
public final class SplitMovements {
    private final CourseRun course;
    private final long nowMicros;
    private final Gathering out;

    public SplitMovements(CourseRun course, long nowMicros, Gathering out) {
        this.course = course;
        this.nowMicros = nowMicros;
        this.out = out;
    }

    public void confirm(Attempt attempt, Turn turn, Ruling ruling) {
        Ruling.Decided decided = turn.times.decided(SplitState.CONFIRMED, turn.start, turn.finish);
        rule(attempt, turn, ruling.deciding(decided), FactKind.SPLIT_CONFIRMED);
    }

    /** The marks of that reading count, which need not be the ones that were derived. */
    public void chooseReading(
            Attempt attempt, Turn turn, SplitReadings.SplitReading reading, Ruling ruling) {
        Ruling.Decided decided =
                turn.times.decided(SplitState.CONFIRMED, reading.start(), reading.finish());
        rule(attempt, turn, ruling.deciding(decided), FactKind.SPLIT_CONFIRMED);
    }

    public void voidSplit(Attempt attempt, Turn turn, Ruling ruling) {
        Ruling.Decided decided = turn.times.decided(SplitState.VOID, turn.start, turn.finish);
        rule(attempt, turn, ruling.deciding(decided), FactKind.SPLIT_VOID);
    }

    /** The proctor's taps stand, or the time read from a stop-watch counts from the start. */
    public void handTime(Attempt attempt, Turn turn, long splitMicros, Ruling ruling) {
        Mark start = turn.start;
        Mark finish = turn.finish;
        if (splitMicros == 0) {
            start = turn.startTap() == null ? turn.start : turn.startTap();
            finish = turn.finishTap();
        } else if (turn.start != null) {
            finish = pairedWith(turn.start, splitMicros);
        } else {
            start = pairedWith(turn.finish, -splitMicros);
        }
        Ruling.Decided decided = turn.times.decided(SplitState.BY_HAND, start, finish);
        rule(attempt, turn, ruling.deciding(decided), FactKind.SPLIT_BY_HAND);
    }

    private static Mark pairedWith(Mark other, long micros) {
        Stamp stamp = other.best();
        Stamp moved =
                new Stamp(
                        stamp.micros() + micros,
                        stamp.lowerMicros() + micros - HandMarks.PAIR_MICROS,
                        stamp.upperMicros() + micros + HandMarks.PAIR_MICROS);
        return new Mark(moved, Mark.Source.RULED, null, null, null, other.line());
    }

    private void rule(Attempt attempt, Turn turn, Ruling ruling, FactKind kind) {
        turn.rulings.add(ruling);
        tellUsual(turn);
        turn.touch();
        turn.wakeMicros = Long.MAX_VALUE;
        long micros = Splits.of(turn).micros();
        String words = ruling.sentence();
        out.conclude(new Fact(kind, attempt.number, turn.station.id(), "", null, micros, words));
        leaveUnfinished(attempt, turn);
        endIfAllRuled(attempt);
    }

    private void tellUsual(Turn turn) {
        course.stations.get(turn.station.id()).usual.ruled(turn);
    }

    /** Through, and everything ruled on: what decides is kept as it is known now. */
    private void endIfAllRuled(Attempt attempt) {
        boolean isThrough =
                attempt.phase == Attempt.Phase.FINISHED
                        || attempt.isDone() && attempt.ended.isEmpty();
        if (isThrough && attempt.turns.stream().allMatch(Turn::isRuled)) {
            attempt.end(course.plan);
        }
    }

    /** A split without a finish that is ruled on lets the candidate go on to the next station. */
    private void leaveUnfinished(Attempt attempt, Turn turn) {
        boolean isHere =
                attempt.phase == Attempt.Phase.AT_STATION
                        && course.plan.indexOf(turn.station.id()) == attempt.stationIndex;
        if (isHere) {
            course.leaveStation(attempt, course.stations.get(turn.station.id()), nowMicros, out);
            Mark left = turn.finish() == null ? turn.finishTap() : turn.finish();
            long leftMicros = left == null ? nowMicros : left.stamp().lowerMicros();
            course.judge().advance(attempt, leftMicros, nowMicros, out);
        }
    }

    /**
     * The ruling does not stand any more. What it superseded stands again; without one the split is
     * proposed as the evidence says now, and the attempt is open again.
     */
    public void withdraw(Attempt attempt, Turn turn, long entry, Ruling ruling) {
        turn.rulings.withdraw(entry, ruling.entry());
        turn.rulings.add(ruling);
        tellUsual(turn);
        turn.evidence.unstrike(turn.strikes.withdraw(entry));
        boolean wasAdded = turn.taps.isAdded(entry);
        turn.taps.withdraw(entry);
        if (wasAdded) {
            turn.letGo(Mark::isByHand);
        }
        turn.assigned.withdraw(entry).ifPresent(p -> giveBack(turn, p, entry, ruling));
        attempt.revision++;
        String words = "entry " + entry;
        out.conclude(Fact.of(FactKind.RULING_WITHDRAWN, attempt.number, turn.station.id(), words));
        if (turn.isRuled()) {
            endIfAllRuled(attempt);
            return;
        }
        attempt.reopen();
        judgeAnew(turn);
    }

    private void giveBack(Turn turn, Assigned.Passage passage, long entry, Ruling ruling) {
        Turn from = passage.from();
        new Assigning(course).moveBack(turn, passage);
        if (from != null && from != turn) {
            from.rulings.withdraw(entry, ruling.entry());
            from.rulings.add(ruling);
            tellAndJudge(from);
        }
    }

    /**
     * The named edge and the other one of its passage count for nothing; the turn is judged anew.
     */
    public void strike(EdgeKey key, Ruling ruling) {
        Turn turn = TurnFile.holding(course, key).orElseThrow().turn();
        List<EdgeKey> keys =
                turn
                        .evidence
                        .block(key, turn.station.restState(turn.evidence.sensorOf(key)))
                        .stream()
                        .filter(each -> !turn.evidence.isStruck(each))
                        .toList();
        turn.rulings.add(ruling);
        turn.strikes.add(ruling.entry(), keys);
        turn.evidence.strike(keys);
        turn.letGo(mark -> mark.edge() != null && keys.contains(mark.edge().key()));
        tellAndJudge(turn);
    }

    /** The passage is evidence of this turn from now on, and makes the mark of that point. */
    public void assign(EdgeKey key, Turn turn, String point, Ruling ruling) {
        turn.rulings.add(ruling);
        Turn from = new Assigning(course).move(key, turn, point, ruling.entry());
        if (from != null) {
            from.rulings.add(ruling);
            tellAndJudge(from);
        }
        tellAndJudge(turn);
    }

    /** A mark that counts as a tap does, before all taps of its point. */
    public void addMark(Turn turn, String point, long atMicros, Ruling ruling) {
        boolean judged = point.equals(TurnJudge.FINISH) && turn.station.finish().isJudged();
        long allowance = judged ? course.plan.timing().judgedAllowanceMicros() : 0;
        TabletPress press = TabletPress.of(Stamp.exactly(atMicros), course.lines);
        turn.rulings.add(ruling);
        turn.taps.addByRuling(ruling.entry(), point, new Tap(press, allowance));
        tellAndJudge(turn);
    }

    private void tellAndJudge(Turn turn) {
        if (turn.number != 0) {
            turn.owner.revision++;
        }
        judgeAnew(turn);
    }

    /** Evidence that was let be while a ruling stood counts again. */
    void judgeAnew(Turn turn) {
        turn.late = false;
        turn.lateMicros = -1;
        course.judge().judge(course.stations.get(turn.station.id()), turn, nowMicros, out);
    }
}
