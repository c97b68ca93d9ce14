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
 * @param creditMicros the credited holds; each end of one is a press, ± 0.20 s a pair
 */
public record OfficialTime(int number, Elapsed elapsed, long creditMicros) {

    /**
     * Empty while either end is missing or was ruled void, while a hold is still open, and when
     * gateway time broke off in between and nothing says for how long.
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
        Optional<Shift> apart = apart(attempt, start, finish);
        if (apart.isEmpty()) {
            return Optional.empty();
        }
        long credit = 0;
        long creditError = 0;
        for (Hold hold : attempt.holds()) {
            credit += creditWithin(hold, start, finish);
            creditError += touches(hold, start, finish) ? HandMarks.PAIR_MICROS : 0;
        }
        Elapsed elapsed = Elapsed.across(start, finish, apart.get()).less(credit, creditError);
        return Optional.of(new OfficialTime(attempt.number(), elapsed, credit));
    }

    /**
     * What the time lines leave open over all stretches that were run. A restart during a credited
     * hold costs nothing, tied or not: both stretches beside it lie on a line each.
     */
    private static Optional<Shift> apart(Attempt attempt, Mark start, Mark finish) {
        Optional<Shift> sum = Optional.of(Shift.NONE);
        int from = start.line();
        for (Hold hold : attempt.holds()) {
            if (creditWithin(hold, start, finish) > 0) {
                boolean isBegunBefore = hold.inMicros() <= start.best().micros();
                int in = isBegunBefore ? start.line() : hold.inLine();
                sum = plus(sum, attempt.lines.apart(from, in));
                boolean isOverAfter = hold.outMicros() >= finish.best().micros();
                from = isOverAfter ? finish.line() : hold.outLine();
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

    /** Only the part of a hold that lies between start and finish is credited. */
    private static long creditWithin(Hold hold, Mark start, Mark finish) {
        long in = Math.max(hold.inMicros(), start.best().micros());
        long out = Math.min(hold.outMicros(), finish.best().micros());
        return Math.max(0, out - in);
    }

    /** Whether the hold can have lain within the run, its presses being what they are. */
    private static boolean touches(Hold hold, Mark start, Mark finish) {
        return hold.outMicros() + HandMarks.PAIR_MICROS > start.best().lowerMicros()
                && hold.inMicros() - HandMarks.PAIR_MICROS < finish.best().upperMicros();
    }

    Fact fact() {
        long micros = elapsed.micros();
        return new Fact(FactKind.OFFICIAL_TIME, number, "", "", null, micros, "provisional");
    }
}
