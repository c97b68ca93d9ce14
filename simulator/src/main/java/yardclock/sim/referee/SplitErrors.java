package yardclock.sim.referee;

import yardclock.core.result.Result;
import yardclock.sim.people.TruthBook;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** The errors of automatic splits against the truth, in microseconds of exam time. Immutable. */
final class SplitErrors {
    private final List<Long> sorted;

    private SplitErrors(List<Long> errors) {
        sorted = new ArrayList<>(errors);
        Collections.sort(sorted);
    }

    static SplitErrors of(List<Result> results, TruthBook book) {
        List<Long> errors = new ArrayList<>();
        for (Result result : results) {
            for (Result.SplitLine line : result.splits()) {
                TruthBook.Instants truth = book.at(result.number(), line.station());
                if (line.automaticMicros() >= 0 && truth != null && truth.split().isPresent()) {
                    errors.add(Math.abs(line.automaticMicros() - truth.split().getAsLong()));
                }
            }
        }
        return new SplitErrors(errors);
    }

    int count() {
        return sorted.size();
    }

    /** The 99th percentile by nearest rank, in milliseconds to the microsecond; null when empty. */
    Double p99Millis(int dividedBy) {
        if (sorted.isEmpty()) {
            return null;
        }
        int rank = (sorted.size() * 99 + 99) / 100;
        return sorted.get(rank - 1) / dividedBy / 1_000.0;
    }
}
