package yardclock.core.time;

/**
 * A reading of one field unit's own counter: microseconds since that boot of that unit.
 *
 * <p>Two ticks can be compared only within one boot of one unit. They become gateway time through a
 * {@link UnitClock}, never by arithmetic elsewhere.
 */
public record StationTick(long micros) implements Comparable<StationTick> {
    @Override
    public int compareTo(StationTick other) {
        return Long.compare(micros, other.micros);
    }
}
