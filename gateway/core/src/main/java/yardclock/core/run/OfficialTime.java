package yardclock.core.run;

import yardclock.core.course.ExamPlan;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;

import java.util.Optional;

/**
 * Finish of the last station − start of the first − credited holds, in microseconds, with limits.
 * Never a sum of splits: one running clock, whose errors do not add up over the stations.
 *
 * @param creditMicros the credited holds; each end of one is a press, ± 0.20 s a pair
 */
public record OfficialTime(
        int number, long micros, long lowerMicros, long upperMicros, long creditMicros) {

    /**
     * Empty while either end is missing or was ruled void, while a hold is still open, and when
     * gateway time broke off in between.
     */
    public static Optional<OfficialTime> of(ExamPlan plan, Attempt attempt) {
        Mark start = end(attempt, plan.stations().get(0).id(), true);
        Mark finish = end(attempt, plan.last().id(), false);
        boolean isKnown = start != null && finish != null && !attempt.isInterrupted();
        if (!isKnown || attempt.isHeld()) {
            return Optional.empty();
        }
        long credit = 0;
        long creditError = 0;
        for (Hold hold : attempt.holds()) {
            credit += creditWithin(hold, start, finish);
            creditError += touches(hold, start, finish) ? HandMarks.PAIR_MICROS : 0;
        }
        long micros = finish.stamp().micros() - start.stamp().micros() - credit;
        long lower = finish.stamp().lowerMicros() - start.stamp().upperMicros() - credit;
        long upper = finish.stamp().upperMicros() - start.stamp().lowerMicros() - credit;
        return Optional.of(
                new OfficialTime(
                        attempt.number(),
                        micros,
                        lower - creditError,
                        upper + creditError,
                        credit));
    }

    private static Mark end(Attempt attempt, String station, boolean start) {
        return attempt.turnAt(station)
                .filter(turn -> turn.ruled() != SplitState.VOID)
                .map(turn -> start ? turn.start() : turn.finish())
                .orElse(null);
    }

    /** Only the part of a hold that lies between start and finish is credited. */
    private static long creditWithin(Hold hold, Mark start, Mark finish) {
        long in = Math.max(hold.inMicros(), start.stamp().micros());
        long out = Math.min(hold.outMicros(), finish.stamp().micros());
        return Math.max(0, out - in);
    }

    /** Whether the hold can have lain within the run, its presses being what they are. */
    private static boolean touches(Hold hold, Mark start, Mark finish) {
        return hold.outMicros() + HandMarks.PAIR_MICROS > start.stamp().lowerMicros()
                && hold.inMicros() - HandMarks.PAIR_MICROS < finish.stamp().upperMicros();
    }

    Fact fact() {
        return new Fact(FactKind.OFFICIAL_TIME, number, "", "", null, micros, "provisional");
    }
}
