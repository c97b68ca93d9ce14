package yardclock.core.trouble;

import java.util.Locale;

/** What can be wrong with a sensor, by what it says or does not say. */
public enum Trouble {
    /** Away from its rest for some time while nobody is meant to be there. */
    NOT_AT_REST,
    /** So for longer than the plan's longest plausible block. */
    STUCK,
    /** Not one edge since the day began, though candidates went through its station. */
    NEVER_SEEN;

    /** The word in JSON, as {@code not-at-rest}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    String words() {
        return switch (this) {
            case NOT_AT_REST -> "is not at rest though nobody is meant to be there";
            case STUCK -> "is stuck: so for longer than the plan thinks possible";
            case NEVER_SEEN -> "was never seen today, though candidates went through";
        };
    }
}
