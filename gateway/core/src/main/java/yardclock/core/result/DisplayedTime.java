package yardclock.core.result;

import yardclock.core.course.TimingRules;

import java.util.Locale;

/**
 * A time as the plan displays it. Integers only: the plan names the step and which way a part of a
 * step goes.
 */
public final class DisplayedTime {
    private static final long SECOND = 1_000_000;

    private DisplayedTime() {}

    /** The time moved to the plan's step, in microseconds; the time must not be negative. */
    public static long rounded(long micros, TimingRules.Rounding rounding, long stepMicros) {
        if (micros < 0) {
            throw new IllegalArgumentException("a displayed time is never negative: " + micros);
        }
        long down = micros / stepMicros * stepMicros;
        long rest = micros - down;
        boolean goesUp =
                switch (rounding) {
                    case TRUNCATE -> false;
                    case UP -> rest > 0;
                    case HALF_UP -> rest * 2 >= stepMicros;
                };
        return goesUp ? down + stepMicros : down;
    }

    /** As {@code 11:39.9}, with as many decimals as the step needs. */
    public static String text(long micros, TimingRules timing) {
        long rounded = rounded(micros, timing.rounding(), timing.resolutionMicros());
        long minutes = rounded / (60 * SECOND);
        long seconds = rounded / SECOND % 60;
        String text = String.format(Locale.ROOT, "%d:%02d", minutes, seconds);
        int decimals = decimals(timing.resolutionMicros());
        if (decimals == 0) {
            return text;
        }
        String fraction = String.format(Locale.ROOT, "%06d", rounded % SECOND);
        return text + '.' + fraction.substring(0, decimals);
    }

    private static int decimals(long stepMicros) {
        int decimals = 0;
        for (long step = SECOND; step > 1 && stepMicros % step != 0; step /= 10) {
            decimals++;
        }
        return decimals;
    }
}
