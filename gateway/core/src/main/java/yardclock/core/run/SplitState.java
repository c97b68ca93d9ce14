package yardclock.core.run;

import java.util.Locale;

/** Where a split stands. */
public enum SplitState {
    /** A start or a finish is missing. */
    INCOMPLETE,
    PROPOSED,
    /** More than one reading of the evidence is plausible; the best one is shown first. */
    AMBIGUOUS,
    CONFIRMED,
    VOID,
    BY_HAND;

    private final String word = name().toLowerCase(Locale.ROOT).replace('_', '-');

    public String word() {
        return word;
    }

    public boolean isRuled() {
        return this == CONFIRMED || this == VOID || this == BY_HAND;
    }
}
