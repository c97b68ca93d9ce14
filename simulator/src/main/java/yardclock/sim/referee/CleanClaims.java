package yardclock.sim.referee;

import yardclock.core.board.PostFrame;
import yardclock.core.time.Stamp;
import yardclock.sim.people.TruthBook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Holds what the gateway said of each split against the truth. A split that was ever called clean
 * must have been right then: its number, the interval of each of its stamps, the interval of the
 * split.
 */
final class CleanClaims {
    /** What became of a split in the proctor's eyes. */
    enum Verdict {
        CLEAN,
        AMBIGUOUS_TRUTH_FIRST,
        AMBIGUOUS_TRUTH_NOT_FIRST,
        NOT_PROPOSED
    }

    private final TruthBook book;
    private final Witness witness;
    private final Map<TruthBook.Visit, String> wrong = new LinkedHashMap<>();

    CleanClaims(TruthBook book, Witness witness) {
        this.book = book;
        this.witness = witness;
        for (Witness.Claim claim : witness.claims()) {
            String why = speaksAgainst(claim);
            if (!why.isEmpty()) {
                wrong.putIfAbsent(claim.visit(), why);
            }
        }
    }

    /** What is wrong with a claim; empty when it is right. */
    private String speaksAgainst(Witness.Claim claim) {
        TruthBook.Instants truth = book.at(claim.visit().number(), claim.visit().station());
        if (truth == null || truth.split().isEmpty()) {
            return "called clean, and never was";
        }
        List<String> words = new ArrayList<>();
        if (claim.lowerMicros() >= 0) {
            long split = truth.split().getAsLong();
            boolean holds = claim.lowerMicros() <= split && split <= claim.upperMicros();
            if (!holds) {
                words.add("its interval does not hold the true split");
            }
        } else {
            compare("start", claim.start(), truth.startMicros(), words);
            compare("finish", claim.finish(), truth.finishMicros(), words);
        }
        return String.join("; ", words);
    }

    private static void compare(String point, Stamp stamp, long truth, List<String> words) {
        if (stamp == null || stamp.lowerMicros() > truth || truth > stamp.upperMicros()) {
            String by = stamp == null ? "" : " by " + (stamp.micros() - truth) + " µs";
            words.add(point + " is wrong" + by);
        }
    }

    /** Splits that were called clean and were not right, with what is wrong. */
    Map<TruthBook.Visit, String> wrong() {
        return wrong;
    }

    /** Every split that was truly run. */
    List<TruthBook.Visit> run() {
        List<TruthBook.Visit> run = new ArrayList<>();
        book.all()
                .forEach(
                        (visit, instants) -> {
                            if (instants.split().isPresent()) {
                                run.add(visit);
                            }
                        });
        return run;
    }

    Verdict verdict(TruthBook.Visit visit) {
        PostFrame.Split look = witness.look(visit);
        if (look == null) {
            return Verdict.NOT_PROPOSED;
        }
        if (look.clean()) {
            return Verdict.CLEAN;
        }
        if (!look.state().equals("ambiguous")) {
            return Verdict.NOT_PROPOSED;
        }
        long split = book.at(visit.number(), visit.station()).split().orElseThrow();
        boolean holds = look.lowerMicros() <= split && split <= look.upperMicros();
        return holds ? Verdict.AMBIGUOUS_TRUTH_FIRST : Verdict.AMBIGUOUS_TRUTH_NOT_FIRST;
    }
}
