package yardclock.sim.twin;

import com.fasterxml.jackson.core.JsonProcessingException;

import yardclock.app.json.Json;
import yardclock.core.result.OutcomeKind;
import yardclock.core.result.Result;
import yardclock.core.run.SplitState;
import yardclock.sim.people.TruthBook;
import yardclock.sim.referee.Referee;

import java.util.List;

/**
 * What a day in virtual time came to, beside its truth.
 *
 * @param splits how many splits have a time
 * @param confirmed how many of them a proctor confirmed as the sensors gave them
 * @param falseIntervals confirmed splits and official times whose interval does not hold the truth
 * @param wrongAssignments marks proposed for the wrong candidate, station or occasion
 * @param entries how many the journal has
 * @param examSeconds how long the day was
 */
public record TwinFigures(
        long seed,
        int candidates,
        int passed,
        int failed,
        int undecided,
        int voided,
        int splits,
        int confirmed,
        int falseIntervals,
        int wrongAssignments,
        long entries,
        long examSeconds) {
    static TwinFigures of(long seed, TwinDay day) {
        List<Result> results = day.results();
        List<Result.SplitLine> splits =
                results.stream()
                        .flatMap(r -> r.splits().stream())
                        .filter(s -> s.splitMicros() >= 0)
                        .toList();
        return new TwinFigures(
                seed,
                results.size(),
                count(results, OutcomeKind.PASSED),
                count(results, OutcomeKind.FAILED_TIME)
                        + count(results, OutcomeKind.FAILED_CRITERION),
                count(results, OutcomeKind.UNDECIDED),
                count(results, OutcomeKind.VOID_RE_RUN),
                splits.size(),
                (int) splits.stream().filter(TwinFigures::isConfirmed).count(),
                results.stream().mapToInt(r -> falseIntervals(r, day.book())).sum(),
                Referee.wrongAssignments(day.book(), day.facts()),
                day.journal().size(),
                day.examMicros() / 1_000_000);
    }

    private static int count(List<Result> results, OutcomeKind outcome) {
        return (int) results.stream().filter(r -> r.outcome().equals(outcome.word())).count();
    }

    private static boolean isConfirmed(Result.SplitLine split) {
        return split.state().equals(SplitState.CONFIRMED.word());
    }

    private static int falseIntervals(Result result, TruthBook book) {
        int wrong = 0;
        for (Result.SplitLine split : result.splits()) {
            TruthBook.Instants truth = book.at(result.number(), split.station());
            boolean isKnown = truth != null && truth.split().isPresent();
            if (isConfirmed(split) && isKnown) {
                long micros = truth.split().getAsLong();
                wrong += micros < split.lowerMicros() || micros > split.upperMicros() ? 1 : 0;
            }
        }
        return wrong;
    }

    /** Whether nothing the gateway concluded contradicts the truth. */
    public boolean agrees() {
        return falseIntervals == 0 && wrongAssignments == 0;
    }

    public String line() {
        try {
            return Json.mapper().writeValueAsString(this);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("figures that are no JSON", e);
        }
    }
}
