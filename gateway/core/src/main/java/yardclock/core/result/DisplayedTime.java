package yardclock.core.result;

import yardclock.core.course.TimingRules;

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

    /** As {@code 11:39.9}, by the plan's rule and step. */
    public static String text(long micros, TimingRules timing) {
        return text(micros, timing.rounding(), timing.resolutionMicros());
    }

    /**
     * As {@code 11:39.9}; {@code 9.9} below a minute and {@code 2:09:45} from an hour on, with as
     * many decimals as the step needs. The time is rounded first and taken apart after, so that
     * 59.91 s rounded up reads 1:00.0.
     */
    public static String text(long micros, TimingRules.Rounding rounding, long stepMicros) {
        long rounded = rounded(micros, rounding, stepMicros);
        return clock(rounded / SECOND) + fraction(rounded % SECOND, decimals(stepMicros));
    }

    private static String clock(long seconds) {
        long minutes = seconds / 60;
        if (minutes == 0) {
            return Long.toString(seconds);
        }
        String rest = ":" + padded(seconds % 60, 2);
        return minutes < 60 ? minutes + rest : minutes / 60 + ":" + padded(minutes % 60, 2) + rest;
    }

    /** Screens show many times many times a second: a format string would be parsed for each. */
    private static String padded(long number, int digits) {
        String text = Long.toString(number);
        return "0".repeat(digits - text.length()) + text;
    }

    private static String fraction(long micros, int decimals) {
        return decimals == 0 ? "" : "." + padded(micros, 6).substring(0, decimals);
    }

    private static int decimals(long stepMicros) {
        int decimals = 0;
        for (long step = SECOND; step > 1 && stepMicros % step != 0; step /= 10) {
            decimals++;
        }
        return decimals;
    }
}
