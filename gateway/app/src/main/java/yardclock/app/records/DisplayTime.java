package yardclock.app.records;

import yardclock.core.course.TimingRules;
import yardclock.core.course.TimingRules.Rounding;

import java.util.Locale;

/**
 * Durations as the plan shows them: {@code 12:15.0}, or {@code 2:09:45} from an hour on, or {@code
 * 10.2} below a minute. Integers only; immutable.
 *
 * <p>The duration is brought to a whole number of the plan's steps first and split into hours,
 * minutes and seconds after, so that 59.91 s rounded up reads 1:00.0. As many decimals are shown as
 * the step needs.
 */
public final class DisplayTime {
    private static final long SECOND = 1_000_000;
    private static final int SECOND_DIGITS = 6;

    private final Rounding rounding;
    private final long stepMicros;
    private final int decimals;

    public DisplayTime(Rounding rounding, long stepMicros) {
        if (stepMicros <= 0) {
            throw new IllegalArgumentException("a step of " + stepMicros + " µs");
        }
        this.rounding = rounding;
        this.stepMicros = stepMicros;
        this.decimals = decimalsFor(stepMicros);
    }

    public static DisplayTime by(TimingRules rules) {
        return new DisplayTime(rules.rounding(), rules.resolutionMicros());
    }

    private static int decimalsFor(long step) {
        int decimals = 0;
        for (long unit = SECOND; step % unit != 0; unit /= 10) {
            decimals++;
        }
        return decimals;
    }

    /** The duration in words of the plan, or the empty string when there is none (negative). */
    public String show(long micros) {
        return micros < 0 ? "" : clock(rounded(micros));
    }

    /** The displayed value in microseconds, for a duration that is not negative. */
    public long rounded(long micros) {
        long whole = micros / stepMicros;
        long rest = micros % stepMicros;
        boolean next =
                switch (rounding) {
                    case TRUNCATE -> false;
                    // rest and step are below 2^62, so doubling the rest cannot overflow
                    case HALF_UP -> rest * 2 >= stepMicros;
                    case UP -> rest > 0;
                };
        return (next ? whole + 1 : whole) * stepMicros;
    }

    private String clock(long micros) {
        long seconds = micros / SECOND;
        long hours = seconds / 3600;
        long minutes = seconds / 60 % 60;
        String fraction = fraction(micros % SECOND);
        if (hours > 0) {
            return String.format(
                    Locale.ROOT, "%d:%02d:%02d%s", hours, minutes, seconds % 60, fraction);
        }
        return minutes > 0
                ? String.format(Locale.ROOT, "%d:%02d%s", minutes, seconds % 60, fraction)
                : seconds + fraction;
    }

    private String fraction(long micros) {
        return decimals == 0
                ? ""
                : "."
                        + String.format(Locale.ROOT, "%0" + SECOND_DIGITS + "d", micros)
                                .substring(0, decimals);
    }
}
