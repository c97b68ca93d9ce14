package yardclock.core.course;

import java.util.Locale;

/** The four kinds of criterion. */
public enum CriterionKind {
    /** Must be seen before the finish counts; may be put right while the clock runs. */
    REQUIRED,
    /** A warning, or a fault. */
    PROHIBITED,
    /** The proctor's yes or no on the result. */
    JUDGED,
    /** Read out beforehand; never held against anyone. */
    ADVISED;

    private final String word = name().toLowerCase(Locale.ROOT);

    /** The word in JSON and plans. */
    public String word() {
        return word;
    }
}
