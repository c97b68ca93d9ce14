package yardclock.core.ruling;

import yardclock.core.run.Attempt;
import yardclock.core.run.SplitReadings;
import yardclock.core.run.SplitState;
import yardclock.core.run.Splits;
import yardclock.core.run.StationRun;
import yardclock.core.run.Turn;
import yardclock.core.run.TurnFile;

import java.util.List;

/**
 * Whether rulings that decide a split are admissible: confirm, choose a reading, void, a time by
 * hand. Who decides knows the ruling that stands, and says so.
 */
final class SplitAdmission {
    private static final long SHORTEST_HAND_MICROS = 1_000_000;
    private static final long LONGEST_HAND_MICROS = 3_600_000_000L;

    private final Admission admission;

    SplitAdmission(Admission admission) {
        this.admission = admission;
    }

    void check(Act act) {
        switch (act.kind()) {
            case CONFIRM -> confirm((Act.Confirm) act);
            case CHOOSE_READING -> chooseReading((Act.ChooseReading) act);
            case VOID_SPLIT -> voidSplit((Act.VoidSplit) act);
            case HAND_TIME -> handTime((Act.HandTime) act);
            default -> throw new IllegalStateException("not on a split: " + act.kind());
        }
    }

    /** The turn to rule on, or null after noting why there is none. */
    private Turn split(int number, String station) {
        Attempt attempt = admission.candidate(number);
        StationRun run = admission.station(station);
        if (attempt == null || run == null) {
            return null;
        }
        Turn turn = attempt.turnAt(station).orElse(null);
        admission.refuseIf(turn == null, Refusal.NO_SUCH_SPLIT);
        if (turn != null) {
            standsAsShown(turn);
        }
        admission.notEnded(attempt, turn != null && turn.isRuled());
        return turn;
    }

    /** If another stands by now than was on the screen, both sides are shown. */
    private void standsAsShown(Turn turn) {
        TurnFile file = new TurnFile(turn);
        admission.meets(file.standing().orElse(null));
        boolean isOther = file.standingEntry() != admission.supersedes();
        admission.refuseIf(isOther && turn.isRuled(), Refusal.ALREADY_RULED);
        admission.refuseIf(isOther && !turn.isRuled(), Refusal.OUT_OF_DATE);
    }

    /** The turn to rule on once it has a start and a finish. */
    private Turn complete(int number, String station) {
        Turn turn = split(number, station);
        admission.refuseIf(
                turn != null && Splits.of(turn).state() == SplitState.INCOMPLETE,
                Refusal.NO_SUCH_SPLIT);
        return turn;
    }

    private void confirm(Act.Confirm act) {
        complete(act.number(), act.station());
    }

    private void chooseReading(Act.ChooseReading act) {
        Turn turn = complete(act.number(), act.station());
        boolean isOther = turn != null && !isAsShown(turn, act.reading());
        admission.refuseIf(isOther, Refusal.OUT_OF_DATE);
    }

    /** The reading at that place still gives the split that was on the screen. */
    private boolean isAsShown(Turn turn, int reading) {
        List<SplitReadings.SplitReading> readings = SplitReadings.of(turn);
        List<Long> shown = admission.shownMicros();
        int at = shown.size() == 1 ? 0 : reading;
        return reading < readings.size()
                && at < shown.size()
                && shown.get(at) == readings.get(reading).micros();
    }

    private void voidSplit(Act.VoidSplit act) {
        admission.words(act.words());
        split(act.number(), act.station());
    }

    private void handTime(Act.HandTime act) {
        admission.words(act.words());
        Turn turn = split(act.number(), act.station());
        if (turn == null) {
            return;
        }
        if (act.splitMicros() == 0) {
            admission.refuseIf(!turn.times().hasHandMarks(), Refusal.NO_HAND_MARKS);
            return;
        }
        boolean hasNone = turn.start() == null && turn.finish() == null;
        admission.refuseIf(hasNone, Refusal.NO_HAND_MARKS);
        boolean isPossible =
                act.splitMicros() >= SHORTEST_HAND_MICROS
                        && act.splitMicros() <= LONGEST_HAND_MICROS;
        boolean isAhead = turn.times().isAhead(act.splitMicros(), admission.nowMicros());
        admission.refuseIf(!isPossible || isAhead, Refusal.TIME_NOT_PLAUSIBLE);
    }
}
