package yardclock.core.course;

import java.util.List;

/**
 * How a trigger's sensors stand in the yard, and what is to be expected of them. It makes no mark;
 * it says when a mark is doubtful and what stands in for it.
 *
 * @param heightMillimetres above the ground; 0 where that says nothing
 * @param beforeLineMillimetres how far before the line it looks; negative for after it
 * @param alsoTrippedBy what else may trip it; empty for what its kind suggests
 * @param longestBlockMicros blocked or pressed for longer, it is stuck; 0 for no limit
 * @param fallback the wired button whose press stands if the sensor fails; null for the tap
 * @param earliestMicros the soonest plausible time after the start, or after the walk began
 * @param latestMicros the latest plausible time likewise; 0 where the plan does not say
 */
public record Site(
        int heightMillimetres,
        int beforeLineMillimetres,
        List<Tripper> alsoTrippedBy,
        long longestBlockMicros,
        SensorRef fallback,
        long earliestMicros,
        long latestMicros) {
    public static final Site UNSAID = new Site(0, 0, List.of(), 0, null, 0, 0);

    /** Journals before this record was made leave it out. */
    public Site {
        alsoTrippedBy = alsoTrippedBy == null ? List.of() : List.copyOf(alsoTrippedBy);
    }
}
