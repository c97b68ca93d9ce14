package yardclock.core.time;

/**
 * An instant on the gateway's monotonic clock, in microseconds of exam time within one epoch.
 *
 * <p>It says nothing about the time of day: see {@link WallTime}.
 */
public record GatewayTime(long micros) implements Comparable<GatewayTime> {
    public GatewayTime plusMicros(long more) {
        return new GatewayTime(Math.addExact(micros, more));
    }

    public long microsSince(GatewayTime earlier) {
        return Math.subtractExact(micros, earlier.micros);
    }

    @Override
    public int compareTo(GatewayTime other) {
        return Long.compare(micros, other.micros);
    }
}
