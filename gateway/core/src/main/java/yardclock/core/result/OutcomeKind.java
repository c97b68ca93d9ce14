package yardclock.core.result;

import java.util.Locale;

/** The closed list of outcomes. Chosen by the rules or a ruling, never typed. */
public enum OutcomeKind {
    PASSED,
    FAILED_TIME,
    FAILED_CRITERION,
    UNDECIDED,
    WITHDRAWN,
    MEDICAL_STOP,
    SAFETY_STOP,
    DISQUALIFIED,
    VOID_RE_RUN,
    NO_SHOW,
    NOT_ADMITTED,
    DEFERRED;

    private final String word = name().toLowerCase(Locale.ROOT).replace('_', '-');

    public String word() {
        return word;
    }
}
