package yardclock.core.heat;

import java.util.ArrayDeque;
import java.util.Deque;

/**
 * The level 0–4, or unknown, from the heat index alone.
 *
 * <p>A rise shows at once. A fall is one level at a time, and only after at least two readings over
 * at least 20 minutes stayed 3 °F below the bound; a gap between readings begins them anew. Without
 * a fresh reading the level is unknown. The bounds 80, 90, 103 and 125 °F are a proposal for the
 * authority having jurisdiction and its medical director to sign; the sensor's own tolerance is not
 * added yet.
 */
public final class HeatWatch {
    /** Heat index from which levels 1 to 4 hold, tenths of °F. */
    static final int[] BOUNDS_DECI = {800, 900, 1030, 1250};

    private static final String[] WORDS = {
        "normal", "caution", "more rest", "hold new releases", "stop"
    };
    private static final long MINUTE = 60_000_000;
    private static final long[] DUE_MICROS = {
        30 * MINUTE, 15 * MINUTE, 15 * MINUTE, 10 * MINUTE, 10 * MINUTE
    };
    private static final int HYSTERESIS_DECI = 30;
    private static final long LOWER_AFTER_MICROS = 20 * MINUTE;
    private static final int READINGS_KEPT = 512;

    private final Deque<Reading> readings = new ArrayDeque<>();
    private int level = -1;

    /** One reading, as it came in. */
    public record Reading(long atMicros, int centiCelsius, int centiPercent, int heatIndexDeci) {}

    /** Takes a reading; an impossible one is refused and changes nothing. */
    public boolean accept(long atMicros, int centiCelsius, int centiPercent) {
        boolean possible =
                centiCelsius >= -4000
                        && centiCelsius <= 6000
                        && centiPercent >= 100
                        && centiPercent <= 10_000;
        if (!possible) {
            return false;
        }
        double fahrenheit = HeatIndex.toFahrenheit(centiCelsius / 100.0);
        int deci = (int) Math.rint(HeatIndex.fahrenheit(fahrenheit, centiPercent / 100.0) * 10);
        readings.addLast(new Reading(atMicros, centiCelsius, centiPercent, deci));
        if (readings.size() > READINGS_KEPT) {
            readings.removeFirst();
        }
        int measured = levelOf(deci);
        level = measured >= level ? measured : lowered(atMicros);
        return true;
    }

    private static int levelOf(int deci) {
        int level = 0;
        for (int bound : BOUNDS_DECI) {
            level += deci >= bound ? 1 : 0;
        }
        return level;
    }

    private int lowered(long nowMicros) {
        if (level <= 0) {
            return level;
        }
        int below = BOUNDS_DECI[level - 1] - HYSTERESIS_DECI;
        int count = 0;
        long since = nowMicros;
        for (var newestFirst = readings.descendingIterator(); newestFirst.hasNext(); ) {
            Reading reading = newestFirst.next();
            boolean isGap = since - reading.atMicros() > 2 * DUE_MICROS[level];
            if (reading.heatIndexDeci() > below || isGap) {
                break;
            }
            count++;
            since = reading.atMicros();
        }
        return count >= 2 && nowMicros - since >= LOWER_AFTER_MICROS ? level - 1 : level;
    }

    /** True without a reading, or when the newest is older than twice the time it was due in. */
    public boolean isUnknown(long nowMicros) {
        return readings.isEmpty()
                || nowMicros - readings.getLast().atMicros() > 2 * DUE_MICROS[Math.max(0, level)];
    }

    /** 0–4, or −1 for unknown. */
    public int level(long nowMicros) {
        return isUnknown(nowMicros) ? -1 : level;
    }

    public String word(long nowMicros) {
        if (!isUnknown(nowMicros)) {
            return WORDS[level];
        }
        return readings.isEmpty()
                ? "unknown: no reading yet"
                : "unknown (was " + WORDS[level] + ")";
    }

    /** The newest reading, or null. */
    public Reading newest() {
        return readings.peekLast();
    }

    @Override
    public String toString() {
        return level + " " + readings;
    }
}
