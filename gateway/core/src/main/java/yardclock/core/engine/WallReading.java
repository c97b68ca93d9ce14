package yardclock.core.engine;

import java.util.Locale;

/**
 * What the wall clock read at an instant of gateway time, and so what it reads later. For people;
 * it measures nothing.
 */
record WallReading(long wallMicros, long gatewayMicros) {
    private static final long SECOND = 1_000_000;

    long at(long micros, int speed) {
        return wallMicros + (micros - gatewayMicros) / speed;
    }

    /** What to say of a step, which is news for people alone. */
    static String words(long stepMicros) {
        long far = Math.abs(stepMicros);
        String size = far < SECOND ? far / 1_000 + " ms" : far / SECOND + " s";
        return String.format(
                Locale.ROOT,
                "The wall clock was set %s by %s. No measured time changes.",
                stepMicros < 0 ? "back" : "forward",
                size);
    }
}
