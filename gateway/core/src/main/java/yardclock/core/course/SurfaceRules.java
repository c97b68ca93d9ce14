package yardclock.core.course;

import java.util.List;

/**
 * What a noted condition does.
 *
 * @param holdStation the conditions with which a station takes nobody until it is noted to be
 *     otherwise; all others are advice. Never dry
 */
public record SurfaceRules(List<Condition> holdStation) {
    /** What holds for a plan that says nothing of it: everything is advice. */
    public static final SurfaceRules ADVISORY = new SurfaceRules(List.of());

    public SurfaceRules {
        holdStation = List.copyOf(holdStation);
    }
}
