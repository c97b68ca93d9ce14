package yardclock.core.heat.watch;

import yardclock.core.heat.HeatReading;
import yardclock.core.heat.ReadingLevel;

import java.util.List;

/** A reading with what it says and why it is not believed. */
record Taken(HeatReading reading, ReadingLevel level, List<Suspicion> suspicions) {
    boolean isSuspect() {
        return !suspicions.isEmpty();
    }
}
