package yardclock.core.passage;

import java.util.Comparator;

/** What names one edge for good: its unit, that unit's boot, and its number within the boot. */
public record EdgeKey(String unit, String boot, long seq) implements Comparable<EdgeKey> {
    private static final Comparator<EdgeKey> ORDER =
            Comparator.comparing(EdgeKey::unit)
                    .thenComparing(EdgeKey::boot)
                    .thenComparingLong(EdgeKey::seq);

    @Override
    public int compareTo(EdgeKey other) {
        return ORDER.compare(this, other);
    }
}
