package yardclock.core.run;

import yardclock.core.course.ExamPlan;
import yardclock.core.course.Station;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.time.Shift;

import java.util.Optional;
import java.util.function.Function;

/**
 * Finish of the last station − start of the first − credited holds, in microseconds, with limits.
 * Never a sum of splits: one running clock, whose errors do not add up over the stations.
 *
 * @param creditMicros the credited holds; each end of one is a press, see {@link Credit}
 * @param limit whether they are within what the plan credits; beyond it the attempt is void
 */
public record OfficialTime(int number, Elapsed elapsed, long creditMicros, CreditLimit limit) {

    /**
     * Empty while either end is missing or was ruled void, while a hold is still open or has no
     * time, and when gateway time broke off in between and nothing says for how long.
     */
    public static Optional<OfficialTime> of(ExamPlan plan, Attempt attempt) {
        Mark start = end(attempt, plan.stations().get(0), Turn::start);
        Mark finish = end(attempt, plan.last(), Turn::finish);
        return of(plan, attempt, new Ends(start, finish), attempt.keptShift());
    }

    /**
     * The same from final stamps, also where a provisional one was ruled on; empty until both ends
     * are settled. A time given by hand is as final as it will be.
     */
    public static Optional<OfficialTime> settled(ExamPlan plan, Attempt attempt) {
        Mark start = end(attempt, plan.stations().get(0), Turn::settledStart);
        Mark finish = end(attempt, plan.last(), Turn::settledFinish);
        return of(plan, attempt, new Ends(start, finish), Optional.empty());
    }

    /** How the time lines of the run lie to each other as far as is known now. */
    static Optional<Shift> shift(ExamPlan plan, Attempt attempt) {
        Mark start = end(attempt, plan.stations().get(0), Turn::start);
        Mark finish = end(attempt, plan.last(), Turn::finish);
        if (start == null || finish == null) {
            return Optional.empty();
        }
        return Credit.of(plan.day(), attempt.holds(), start, finish)
                .flatMap(c -> Stretches.of(attempt, start, finish).shift(attempt.lines));
    }

    /**
     * Screens ask for it of everybody who is done, with each frame.
     *
     * @param kept the shift to go by; empty for the one that is known now
     */
    private static Optional<OfficialTime> of(
            ExamPlan plan, Attempt attempt, Ends ends, Optional<Shift> kept) {
        Mark start = ends.start;
        Mark finish = ends.finish;
        if (start == null || finish == null || attempt.isHeld()) {
            return Optional.empty();
        }
        Optional<Credit> credit = Credit.of(plan.day(), attempt.holds(), start, finish);
        if (credit.isEmpty()) {
            return Optional.empty();
        }
        Stretches stretches = Stretches.of(attempt, start, finish);
        Optional<Shift> shift = kept.isPresent() ? kept : stretches.shift(attempt.lines);
        if (shift.isEmpty()) {
            return Optional.empty();
        }
        Shift apart = stretches.apart(attempt.lines, shift.get());
        Elapsed elapsed = Elapsed.across(start, finish, apart).less(credit.get());
        return Optional.of(
                new OfficialTime(
                        attempt.number(), elapsed, credit.get().micros(), credit.get().limit()));
    }

    private record Ends(Mark start, Mark finish) {}

    private static Mark end(Attempt attempt, Station station, Function<Turn, Mark> of) {
        Turn turn = attempt.at(station.id());
        return turn == null || turn.ruled() == SplitState.VOID ? null : of.apply(turn);
    }

    Fact fact() {
        long micros = elapsed.micros();
        return new Fact(FactKind.OFFICIAL_TIME, number, "", "", null, micros, "provisional");
    }
}
