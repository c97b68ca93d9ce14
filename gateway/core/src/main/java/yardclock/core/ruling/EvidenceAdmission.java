package yardclock.core.ruling;

import yardclock.core.passage.EdgeKey;
import yardclock.core.run.Attempt;
import yardclock.core.run.CourseRun;
import yardclock.core.run.PassageAt;
import yardclock.core.run.Ruling;
import yardclock.core.run.StationRun;
import yardclock.core.run.Turn;
import yardclock.core.run.TurnFile;

/**
 * Whether rulings on evidence and on rulings are admissible: strike, add a mark, take back, confirm
 * all that is clean. What a ruling decided already is let be until that one is taken back.
 */
final class EvidenceAdmission {
    private final Admission admission;

    EvidenceAdmission(Admission admission) {
        this.admission = admission;
    }

    void check(Act act) {
        switch (act.kind()) {
            case CONFIRM_CLEAN -> confirmClean(((Act.ConfirmClean) act).number());
            case STRIKE -> strike((Act.Strike) act);
            case ASSIGN -> assign((Act.Assign) act);
            case ADD_MARK -> addMark((Act.AddMark) act);
            case WITHDRAW_RULING -> withdraw((Act.WithdrawRuling) act);
            case RUN_STATION_AGAIN -> runStationAgain((Act.RunStationAgain) act);
            default -> throw new IllegalStateException("not on evidence: " + act.kind());
        }
    }

    private void confirmClean(int number) {
        Attempt attempt = admission.candidate(number);
        if (attempt != null) {
            boolean isNone = attempt.turns().stream().noneMatch(TurnFile::isCleanAndOpen);
            admission.refuseIf(isNone, Refusal.NO_SUCH_SPLIT);
            admission.notEnded(attempt, false);
        }
    }

    private void strike(Act.Strike act) {
        admission.words(act.words());
        EdgeKey key = new EdgeKey(act.unit(), act.boot(), act.seq());
        TurnFile file = TurnFile.holding(admission.course(), key).orElse(null);
        admission.refuseIf(file == null, Refusal.NO_SUCH_EDGE);
        if (file != null) {
            file.strikeOf(key).ifPresent(this::meets);
            open(file.turn());
            if (file.turn().isStarted()) {
                Attempt attempt = admission.candidate(file.turn().number());
                admission.notEnded(attempt, false);
            }
        }
    }

    private void assign(Act.Assign act) {
        admission.words(act.words());
        Turn turn = turn(act.number(), act.station(), act.point());
        EdgeKey key = new EdgeKey(act.unit(), act.boot(), act.seq());
        PassageAt found = PassageAt.find(admission.course(), key).orElse(null);
        admission.refuseIf(found == null, Refusal.NO_SUCH_EDGE);
        if (found != null) {
            found.holder().ifPresent(this::isFree);
            found.strike().ifPresent(this::meets);
        }
        if (turn != null) {
            open(turn);
            admission.refuseIf(
                    found != null && !found.canMark(turn.station(), act.point()),
                    Refusal.PASSAGE_ELSEWHERE);
            admission.refuseIf(
                    found != null && !found.isPlausible(turn, act.point()),
                    Refusal.TIME_NOT_PLAUSIBLE);
        }
    }

    /** What it is taken out of is nobody's, or as open as what it is put into. */
    private void isFree(Turn holder) {
        open(holder);
        if (holder.isStarted()) {
            Attempt attempt = admission.candidate(holder.number());
            admission.refuseIf(attempt.isDone(), Refusal.ALREADY_DONE);
        }
    }

    /** The turn a mark is made in, or null after noting why there is none. */
    private Turn turn(int number, String station, String point) {
        Attempt attempt = admission.candidate(number);
        StationRun run = admission.station(station);
        if (attempt == null || run == null) {
            return null;
        }
        boolean isPoint = run.station().hasPoint(point);
        Turn turn = attempt.turnAt(station).orElse(null);
        admission.refuseIf(!isPoint, Refusal.UNKNOWN_POINT);
        admission.refuseIf(turn == null, Refusal.NO_SUCH_SPLIT);
        admission.notEnded(attempt, false);
        return isPoint ? turn : null;
    }

    private void addMark(Act.AddMark act) {
        admission.words(act.words());
        Turn turn = turn(act.number(), act.station(), act.point());
        boolean isAhead = act.atMicros() > admission.nowMicros();
        admission.refuseIf(isAhead, Refusal.TIME_NOT_PLAUSIBLE);
        if (turn != null) {
            open(turn);
        }
    }

    /** Only the station they are at, or have just left, and only while they are held. */
    private void runStationAgain(Act.RunStationAgain act) {
        admission.words(act.words());
        Attempt attempt = admission.candidate(act.number());
        StationRun run = admission.station(act.station());
        CourseRun course = admission.course();
        admission.refuseIf(course.status() == CourseRun.Course.STOPPED, Refusal.STOPPED);
        if (attempt == null || run == null) {
            return;
        }
        admission.notEnded(attempt, false);
        admission.refuseIf(!attempt.isOnCourse(), Refusal.NOT_ON_COURSE);
        admission.refuseIf(!attempt.isHeld(), Refusal.NOT_HELD);
        admission.refuseIf(attempt.startsAgain(), Refusal.HOLD_ENDS_AT_START);
        boolean isFirst = course.plan().indexOf(act.station()) == 0;
        admission.refuseIf(isFirst, Refusal.CLOCK_STARTS_HERE);
        Turn last =
                attempt.lastTurn()
                        .filter(turn -> turn.station().id().equals(act.station()))
                        .orElse(null);
        admission.refuseIf(last == null && !attempt.startsAgain(), Refusal.NO_SUCH_SPLIT);
        if (last != null) {
            open(last);
        }
    }

    private void open(Turn turn) {
        new TurnFile(turn).standing().ifPresent(this::meets);
    }

    private void meets(Ruling standing) {
        admission.meets(standing);
        admission.refuseIf(true, Refusal.ALREADY_RULED);
    }

    private void withdraw(Act.WithdrawRuling act) {
        admission.words(act.words());
        Attempt attempt = admission.candidate(act.number());
        StationRun run = admission.station(act.station());
        if (attempt == null || run == null) {
            return;
        }
        Turn turn = attempt.turnAt(act.station()).orElse(null);
        admission.refuseIf(turn == null, Refusal.NO_SUCH_SPLIT);
        if (turn == null) {
            return;
        }
        TurnFile file = new TurnFile(turn);
        Ruling ruling = file.ruling(act.entry()).orElse(null);
        boolean isNone = ruling == null || !file.canBeWithdrawn(ruling);
        admission.refuseIf(isNone, Refusal.NO_SUCH_RULING);
        if (!isNone && !ruling.isStanding()) {
            admission.meets(file.standing().orElse(ruling));
            admission.refuseIf(true, Refusal.OUT_OF_DATE);
        }
        if (!isNone && ruling.isStanding() && ruling.state() == null) {
            open(turn);
        }
        admission.notEnded(attempt, true);
    }
}
