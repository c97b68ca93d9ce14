package yardclock.core.passage;

import java.util.Locale;

/** Why an edge made no mark: the guard that struck it, or the rule it did not fulfil. */
public enum Guard {
    MIN_BLOCK,
    MERGE_GAP,
    STAYS_FOR,
    STOOD_FOR,
    /** Blocked or pressed for longer than the plan thinks plausible: it was stuck. */
    LONGEST_BLOCK,
    /** It is no part of what the contacts together ask for. */
    RULE;

    /** The word in JSON, as {@code min-block}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
