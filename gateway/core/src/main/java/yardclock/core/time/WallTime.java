package yardclock.core.time;

/**
 * A time of day, microseconds since 1970-01-01T00:00Z. For people to read; it never measures an
 * elapsed time, because someone may set the clock.
 */
public record WallTime(long epochMicros) {}
