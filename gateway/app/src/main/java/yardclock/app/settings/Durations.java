package yardclock.app.settings;

import java.util.OptionalLong;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Durations as people write them: {@code 1.5 s}, {@code 300 ms}, {@code 4 min 15 s}, {@code 11:40},
 * {@code 1:02:03.5}. In microseconds, in whole numbers all the way: a fraction finer than a
 * microsecond is not read at all.
 */
final class Durations {
    static final String FORMS = "a time such as 300 ms, 1.5 s, 4 min 15 s or 11:40";

    private static final Pattern CLOCK =
            Pattern.compile("(?:(\\d{1,2}):)?(\\d{1,3}):(\\d{2})(?:\\.(\\d{1,6}))?");
    private static final Pattern PART =
            Pattern.compile("(\\d{1,9})(?:\\.(\\d{1,6}))? ?(h|min|s|ms|us|µs)(?: |$)");
    private static final long SECOND = 1_000_000;

    private Durations() {}

    /** The duration in microseconds, or nothing when the text is no duration. */
    static OptionalLong parse(String text) {
        String bare = text.strip();
        if (bare.equals("0")) {
            return OptionalLong.of(0);
        }
        Matcher clock = CLOCK.matcher(bare);
        return clock.matches() ? clock(clock) : parts(bare);
    }

    private static OptionalLong clock(Matcher at) {
        long hours = at.group(1) == null ? 0 : Long.parseLong(at.group(1));
        long minutes = Long.parseLong(at.group(2));
        long seconds = Long.parseLong(at.group(3));
        if (seconds > 59 || (at.group(1) != null && minutes > 59)) {
            return OptionalLong.empty();
        }
        long whole = ((hours * 60 + minutes) * 60 + seconds) * SECOND;
        return OptionalLong.of(whole + fraction(at.group(4), SECOND));
    }

    /**
     * Parts from the largest unit to the smallest, each once; only the last may have a fraction.
     */
    private static OptionalLong parts(String text) {
        Matcher part = PART.matcher(text);
        long sum = 0;
        long unitBefore = Long.MAX_VALUE;
        int at = 0;
        while (at < text.length()) {
            if (!part.find(at) || part.start() != at) {
                return OptionalLong.empty();
            }
            long unit = unitMicros(part.group(3));
            long fraction = fraction(part.group(2), unit);
            boolean isLast = part.end() == text.length();
            if (unit >= unitBefore || fraction < 0 || (part.group(2) != null && !isLast)) {
                return OptionalLong.empty();
            }
            sum += Long.parseLong(part.group(1)) * unit + fraction;
            unitBefore = unit;
            at = part.end();
        }
        return at == 0 ? OptionalLong.empty() : OptionalLong.of(sum);
    }

    private static long unitMicros(String unit) {
        return switch (unit) {
            case "h" -> 3600 * SECOND;
            case "min" -> 60 * SECOND;
            case "s" -> SECOND;
            case "ms" -> 1000;
            default -> 1;
        };
    }

    /** The digits after the point as microseconds, or −1 when they are finer than that. */
    private static long fraction(String digits, long unitMicros) {
        if (digits == null) {
            return 0;
        }
        long scale = 1;
        for (int i = 0; i < digits.length(); i++) {
            scale *= 10;
        }
        long scaled = Long.parseLong(digits) * unitMicros;
        return scaled % scale == 0 ? scaled / scale : -1;
    }

    /** The duration in the form a person would write into a plan. */
    static String text(long micros) {
        if (micros == 0) {
            return "0 s";
        }
        StringBuilder text = new StringBuilder();
        long rest = append(text, micros, 3600 * SECOND, "h");
        rest = append(text, rest, 60 * SECOND, "min");
        rest = append(text, rest, SECOND, "s");
        rest = append(text, rest, 1000, "ms");
        append(text, rest, 1, "us");
        return text.toString();
    }

    private static long append(StringBuilder text, long micros, long unit, String name) {
        if (micros >= unit) {
            text.append(text.length() == 0 ? "" : " ").append(micros / unit).append(' ');
            text.append(name);
        }
        return micros % unit;
    }
}
