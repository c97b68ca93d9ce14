package yardclock.core.health;

import yardclock.core.time.Stamp;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;

/**
 * Keeps a unit's stamps in the order in which the unit counted its edges.
 *
 * <p>The clock's estimate moves a little with each exchange. Two edges a few milliseconds apart,
 * one of them stamped before an exchange and one after it, or one sent again later, could change
 * places by that, and a press would seem to follow its release. The estimate of the later-stamped
 * edge gives way; its limits hold, and are widened if they must.
 */
final class StampOrder {
    /** Neighbours that may change places arrive within seconds; this is a buffer sent at once. */
    static final int STAMPS_KEPT = 512;

    static final int BOOTS_KEPT = 2;

    private final Map<String, TreeMap<Long, Long>> micros = new LinkedHashMap<>();

    Stamp place(Unit.Waiting edge, Stamp stamp) {
        TreeMap<Long, Long> placed = placed(edge.boot());
        Map.Entry<Long, Long> before = placed.lowerEntry(edge.seq());
        Map.Entry<Long, Long> after = placed.higherEntry(edge.seq());
        long at = stamp.micros();
        at = before == null ? at : Math.max(at, before.getValue());
        at = after == null ? at : Math.min(at, after.getValue());
        placed.put(edge.seq(), at);
        if (placed.size() > STAMPS_KEPT) {
            placed.pollFirstEntry();
        }
        return new Stamp(at, Math.min(at, stamp.lowerMicros()), Math.max(at, stamp.upperMicros()));
    }

    private TreeMap<Long, Long> placed(String boot) {
        TreeMap<Long, Long> placed = micros.computeIfAbsent(boot, b -> new TreeMap<>());
        if (micros.size() > BOOTS_KEPT) {
            micros.remove(micros.keySet().iterator().next());
        }
        return placed;
    }

    void clear() {
        micros.clear();
    }
}
