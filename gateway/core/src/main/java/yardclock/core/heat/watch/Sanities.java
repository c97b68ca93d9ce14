package yardclock.core.heat.watch;

import yardclock.core.heat.HeatReading;
import yardclock.core.heat.ReadingLevel;

import java.util.Map;
import java.util.TreeMap;

/** One {@link Sanity} for each source. */
final class Sanities {
    private final Map<String, Sanity> bySource = new TreeMap<>();

    Taken judge(HeatReading reading, ReadingLevel level) {
        return bySource.computeIfAbsent(reading.from().source(), source -> new Sanity())
                .judge(reading, level);
    }

    @Override
    public String toString() {
        return bySource.toString();
    }
}
