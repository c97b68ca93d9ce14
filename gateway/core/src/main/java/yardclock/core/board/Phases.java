package yardclock.core.board;

import yardclock.core.run.Attempt;

import java.util.Locale;

/** A candidate's phase as staff pages name it; a hold shows before anything else. */
final class Phases {
    private Phases() {}

    static String word(Attempt attempt) {
        return attempt.isHeld()
                ? "held"
                : attempt.phase().name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
