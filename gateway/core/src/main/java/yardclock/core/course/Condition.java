package yardclock.core.course;

import java.util.Locale;

/** What the ground or the weather is like somewhere in the yard, as a person saw it. */
public enum Condition {
    DRY,
    WET,
    ICE,

    /** Sun or its reflection in the eyes of whoever works there. */
    GLARE,

    /** Wind in gusts where somebody climbs or carries. */
    GUST;

    /** The word in JSON and in plans. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
