package yardclock.core.run;

import java.util.Locale;

/** What a split is called before a person looks at it. */
public enum SplitLabel {
    /** One reading alone is plausible, nothing speaks against it, and nothing is under way. */
    CLEAN,
    /** It would be clean, but a unit of the station may still hold edges of that time. */
    PROVISIONAL,
    /** More than one reading is plausible. */
    AMBIGUOUS,
    /** Something speaks against it; the words say what. */
    LOOK;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
