package yardclock.core.reading;

import java.util.List;

/**
 * All plausible readings of one point, best first; empty while nothing was seen or tapped.
 *
 * @param isClear whether nothing but the first is plausible
 */
public record PointReadings(List<PointReading> ranked, boolean isClear) {
    public static final PointReadings NONE = new PointReadings(List.of(), false);

    /** A person's press decided: there is nothing to read otherwise. */
    public static final PointReadings JUDGED = new PointReadings(List.of(), true);

    public PointReadings {
        ranked = List.copyOf(ranked);
    }

    /**
     * Whether there is a choice between readings. Where only the tap speaks there is one too: the
     * sensor missed the candidate, or the tap was a slip.
     */
    public boolean isOpen() {
        boolean isByTap = !isClear && !ranked.isEmpty() && ranked.get(0).isByTap();
        return isByTap || ranked.size() > 1;
    }

    /** The same, while something is still awaited or speaks against it. */
    public PointReadings unclear() {
        return new PointReadings(ranked, false);
    }

    /** Null while there is none. */
    public PointReading best() {
        return ranked.isEmpty() ? null : ranked.get(0);
    }

    @Override
    public String toString() {
        return ranked + (isClear ? "!" : "?");
    }
}
