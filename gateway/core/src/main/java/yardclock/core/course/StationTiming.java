package yardclock.core.course;

/**
 * What is usual at a station, in microseconds of exam time. Splits outside the plausible window are
 * still shown, and never proposed as clean.
 */
public record StationTiming(
        long medianMicros,
        long shortestPlausibleMicros,
        long longestPlausibleMicros,
        long resetMicros,
        long walkToNextMicros) {}
