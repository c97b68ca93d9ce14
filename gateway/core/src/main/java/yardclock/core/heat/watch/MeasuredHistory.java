package yardclock.core.heat.watch;

import yardclock.core.heat.HeatReading;
import yardclock.core.heat.ReadingLevel;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What was so, by the time of measuring: a function of the set of readings. When too many came, the
 * ones measured first give way, so that this stays so.
 */
public final class MeasuredHistory {
    /** A day and a night of one reading every 30 s. */
    static final int READINGS_KEPT = 2_880;

    private final TreeMap<HeatReading, ReadingLevel> readings =
            new TreeMap<>(HeatReading.BY_MEASURING);
    private Telling telling = new Telling();

    /**
     * From an instant on, so it was.
     *
     * @param level 0 to 4, or −1 for unknown: no reading was taken in time
     */
    public record Step(long fromMicros, int level) {}

    /**
     * @return false for a reading that is known already
     */
    boolean add(HeatReading reading, ReadingLevel level) {
        boolean isNewest = readings.isEmpty() || isAfter(reading, readings.lastKey());
        if (readings.putIfAbsent(reading, level) != null) {
            return false;
        }
        if (isNewest && readings.size() <= READINGS_KEPT) {
            telling.take(reading, level);
            return true;
        }
        if (readings.size() > READINGS_KEPT) {
            readings.pollFirstEntry();
        }
        telling = new Telling();
        readings.forEach(telling::take);
        return true;
    }

    private static boolean isAfter(HeatReading reading, HeatReading other) {
        return HeatReading.BY_MEASURING.compare(reading, other) > 0;
    }

    /** The level that the newest reading leaves; −1 before the first. */
    int level() {
        return telling.fold.level();
    }

    /** All its steps, oldest first; the last one holds from the newest reading or sooner. */
    public List<Step> steps() {
        return List.copyOf(telling.steps);
    }

    /** The readings by the time of measuring, with what each says. */
    public List<Map.Entry<HeatReading, ReadingLevel>> readings() {
        return readings.entrySet().stream().map(e -> Map.entry(e.getKey(), e.getValue())).toList();
    }

    /** One telling of the whole history. */
    private static final class Telling {
        private final LevelFold fold = new LevelFold();
        private final Sanities sanities = new Sanities();
        private final List<Step> steps = new ArrayList<>();
        private long believedMicros = Long.MAX_VALUE;

        void take(HeatReading reading, ReadingLevel level) {
            Taken taken = sanities.judge(reading, level);
            long unknownAt = believedMicros + Due.unknownAt(fold.level());
            if (believedMicros != Long.MAX_VALUE && unknownAt <= reading.measuredMicros()) {
                step(unknownAt, -1);
            }
            fold.take(taken);
            boolean isUnknown =
                    taken.isSuspect() && !steps.isEmpty() && steps.get(steps.size() - 1).level < 0;
            if (!isUnknown) {
                step(reading.measuredMicros(), fold.level());
            }
            if (!taken.isSuspect()) {
                believedMicros = reading.measuredMicros();
            }
        }

        private void step(long at, int level) {
            if (steps.isEmpty() || steps.get(steps.size() - 1).level != level) {
                steps.add(new Step(at, level));
            }
        }
    }

    @Override
    public String toString() {
        return readings.keySet() + " " + telling.steps;
    }
}
