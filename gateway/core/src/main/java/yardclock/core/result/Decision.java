package yardclock.core.result;

import yardclock.core.course.TimingRules;

import java.util.Locale;

/**
 * An official time against the cut-off, with its interval.
 *
 * <p>Within when even the interval's upper end is within, over when even its lower end is over,
 * else within the timing uncertainty: then the plan's published rule decides, and the result says
 * so.
 */
public enum Decision {
    WITHIN,
    OVER,
    UNDECIDED;

    private final String word = name().toLowerCase(Locale.ROOT);

    public String word() {
        return word;
    }

    /** Where an interval stands against the cut-off, ends as the plan compares them. */
    public static Decision of(long lowerMicros, long upperMicros, TimingRules timing) {
        if (passes(upperMicros, timing)) {
            return WITHIN;
        }
        return passes(lowerMicros, timing) ? UNDECIDED : OVER;
    }

    private static boolean passes(long micros, TimingRules timing) {
        long compared =
                timing.comparesDisplayed()
                        ? DisplayedTime.rounded(
                                Math.max(0, micros), timing.rounding(), timing.resolutionMicros())
                        : micros;
        return switch (timing.comparison()) {
            case AT_MOST -> compared <= timing.cutOffMicros();
            case BELOW -> compared < timing.cutOffMicros();
        };
    }
}
