package yardclock.app.records.dossier;

import yardclock.core.course.FieldUnit;
import yardclock.core.engine.Input;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Counts one unit's signs of life over an attempt. One thread. */
final class UnitTally {
    private final Set<String> boots = new TreeSet<>();
    private long lastMicros = -1;
    private long reports;
    private long longestGapMicros;
    private int batteryLowest;
    private int rssiWeakest;
    private int bufferFullest;
    private long memoryLowest;
    private String firmware = "";

    void take(Input.Health health, long atMicros) {
        reports++;
        longestGapMicros = lastMicros < 0 ? 0 : Math.max(longestGapMicros, atMicros - lastMicros);
        lastMicros = atMicros;
        boots.add(health.boot());
        batteryLowest = lower(batteryLowest, health.batteryMillivolts());
        rssiWeakest = lower(rssiWeakest, health.rssiDbm());
        memoryLowest =
                memoryLowest == 0
                        ? health.lowestFreeMemory()
                        : Math.min(memoryLowest, health.lowestFreeMemory());
        bufferFullest = Math.max(bufferFullest, health.bufferFill());
        firmware = health.firmware();
    }

    private static int lower(int known, int said) {
        return known == 0 ? said : Math.min(known, said);
    }

    /** Begins anew; the last sign of life is kept, so that a silence over the release is seen. */
    void begin() {
        reports = 0;
        longestGapMicros = 0;
        boots.clear();
        batteryLowest = 0;
        rssiWeakest = 0;
        bufferFullest = 0;
        memoryLowest = 0;
    }

    /** The attempt is over: silence up to here counts. */
    void end(long atMicros) {
        if (lastMicros >= 0) {
            longestGapMicros = Math.max(longestGapMicros, atMicros - lastMicros);
        }
    }

    Further.UnitLine line(FieldUnit unit, List<String> stations) {
        return new Further.UnitLine(
                unit.id(),
                unit.place(),
                stations,
                reports,
                longestGapMicros,
                boots.size(),
                batteryLowest,
                rssiWeakest,
                bufferFullest,
                memoryLowest,
                firmware);
    }
}
