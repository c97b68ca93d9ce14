package yardclock.app.records;

import yardclock.app.lane.Answer;
import yardclock.core.result.Result;
import yardclock.core.ruling.Refusal;

import java.time.ZoneId;
import java.util.Optional;
import java.util.concurrent.CompletionStage;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Hands out the documents of the day. Safe from any thread.
 *
 * <p>A document is drawn from one {@link DaySheet}, taken anew for each request, on the thread that
 * waits for the answer and not on the lane's.
 */
public final class RecordsOffice {
    private final Supplier<CompletionStage<Optional<DaySheet>>> days;
    private final ZoneId zone;

    /**
     * @param days takes the day's state in one go; empty while no plan is frozen
     * @param zone the yard's time zone, for times of day on paper
     */
    public RecordsOffice(Supplier<CompletionStage<Optional<DaySheet>>> days, ZoneId zone) {
        this.days = days;
        this.zone = zone;
    }

    public CompletionStage<Answer<Supplier<byte[]>>> resultsJson() {
        return draw(day -> Answer.of(() -> ResultsJson.of(day)));
    }

    public CompletionStage<Answer<Supplier<byte[]>>> resultsCsv() {
        return draw(day -> Answer.of(() -> ResultsCsv.of(day)));
    }

    /** The telling sheet, once there is something to tell. */
    public CompletionStage<Answer<Supplier<String>>> telling(int number) {
        return draw(day -> telling(day, number));
    }

    private Answer<Supplier<String>> telling(DaySheet day, int number) {
        Optional<Result> result = day.of(number);
        if (result.isEmpty()) {
            return Answer.refused(Refusal.UNKNOWN_NUMBER);
        }
        if (result.get().outcome().isEmpty()) {
            return Answer.refused(Refusal.NOT_DONE);
        }
        return Answer.of(() -> TellingSheet.of(day, result.get(), zone));
    }

    private <T> CompletionStage<Answer<T>> draw(Function<DaySheet, Answer<T>> drawing) {
        return days.get()
                .thenApply(
                        day -> day.map(drawing).orElseGet(() -> Answer.refused(Refusal.NO_PLAN)));
    }
}
