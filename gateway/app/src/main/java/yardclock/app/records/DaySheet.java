package yardclock.app.records;

import yardclock.core.board.HeatView;
import yardclock.core.board.ProofView;
import yardclock.core.engine.Input;
import yardclock.core.result.DisplayedTime;
import yardclock.core.result.Result;

import java.util.List;
import java.util.Optional;

/**
 * What a document is drawn from: the frozen plan, the results as they stand at one moment, and the
 * moment's conditions. Immutable, taken from the state in one go.
 *
 * @param proofs the proof runs that were signed so far, the newest first
 * @param wallMicros the wall clock at that moment, microseconds since 1970, for reading only
 */
public record DaySheet(
        Input.PlanFrozen frozen,
        List<Result> results,
        HeatView heat,
        List<ProofView.SignedView> proofs,
        long wallMicros) {
    public DaySheet {
        results = List.copyOf(results);
        proofs = List.copyOf(proofs);
    }

    Optional<Result> of(int number) {
        return results.stream().filter(result -> result.number() == number).findFirst();
    }

    /** A duration as the plan shows it; the empty string for none (negative). */
    String display(long micros) {
        return micros < 0 ? "" : DisplayedTime.text(micros, frozen.plan().timing());
    }
}
