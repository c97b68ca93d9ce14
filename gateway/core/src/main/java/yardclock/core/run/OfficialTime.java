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
 */
public record OfficialTime(int number, Elapsed elapsed, long creditMicros) {

    /**
     * Empty while either end is missing or was ruled void, while a hold is still open or has no
     * time, and when gateway time broke off in between and nothing says for how long.
     */
    public static Optional<OfficialTime> of(ExamPlan plan, Attempt attempt) {
        return of(plan, attempt, Turn::start, Turn::finish);
    }

    /**
     * The same from final stamps, also where a provisional one was ruled on; empty until both ends
     * are settled. A time given by hand is as final as it will be.
     */
    public static Optional<OfficialTime> settled(ExamPlan plan, Attempt attempt) {
        return of(plan, attempt, Turn::settledStart, Turn::settledFinish);
    }

    private static Optional<OfficialTime> of(
            ExamPlan plan,
            Attempt attempt,
            Function<Turn, Mark> startOf,
            Function<Turn, Mark> finishOf) {
        Mark start = end(attempt, plan.stations().get(0), startOf);
        Mark finish = end(attempt, plan.last(), finishOf);
        if (start == null || finish == null || attempt.isHeld()) {
            return Optional.empty();
        }
        Optional<Credit> credit = Credit.of(attempt.holds(), start, finish);
        Optional<Shift> apart = credit.flatMap(c -> apart(attempt, start, finish));
        return apart.map(
                a ->
                        new OfficialTime(
                                attempt.number(),
                                Elapsed.across(start, finish, a).less(credit.get()),
                                credit.get().micros()));
    }

    /**
     * What the time lines leave open over all stretches that were run. A restart during a credited
     * hold costs nothing, tied or not: both stretches beside it lie on a line each.
     */
    private static Optional<Shift> apart(Attempt attempt, Mark start, Mark finish) {
        Optional<Shift> sum = Optional.of(Shift.NONE);
        int from = start.line();
        for (Hold hold : attempt.holds()) {
            if (Credit.within(hold, start, finish) > 0) {
                boolean isBegunBefore = hold.in().stamp().micros() <= start.best().micros();
                int in = isBegunBefore ? start.line() : hold.in().line();
                sum = plus(sum, attempt.lines.apart(from, in));
                boolean isOverAfter = hold.out().stamp().micros() >= finish.best().micros();
                from = isOverAfter ? finish.line() : hold.out().line();
            }
        }
        return plus(sum, attempt.lines.apart(from, finish.line()));
    }

    private static Optional<Shift> plus(Optional<Shift> sum, Optional<Shift> next) {
        return sum.flatMap(s -> next.map(s::plus));
    }

    private static Mark end(Attempt attempt, Station station, Function<Turn, Mark> of) {
        return attempt.turnAt(station.id())
                .filter(turn -> turn.ruled() != SplitState.VOID)
                .map(of)
                .orElse(null);
    }

    Fact fact() {
        long micros = elapsed.micros();
        return new Fact(FactKind.OFFICIAL_TIME, number, "", "", null, micros, "provisional");
    }
}
