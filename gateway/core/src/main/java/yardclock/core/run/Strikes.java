package yardclock.core.run;

import yardclock.core.passage.EdgeKey;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Which ruling struck which edges of a turn. No edge is struck by two. */
final class Strikes {
    private final Map<Long, List<EdgeKey>> byEntry = new TreeMap<>();

    void add(long entry, List<EdgeKey> keys) {
        byEntry.put(entry, List.copyOf(keys));
    }

    boolean made(long entry) {
        return byEntry.containsKey(entry);
    }

    /** The entry that struck an edge and stands. */
    Optional<Long> of(EdgeKey key) {
        return byEntry.entrySet().stream()
                .filter(strike -> strike.getValue().contains(key))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** What counts again now that an entry struck nothing. */
    List<EdgeKey> withdraw(long entry) {
        List<EdgeKey> keys = byEntry.remove(entry);
        return keys == null ? List.of() : keys;
    }

    @Override
    public String toString() {
        return byEntry.toString();
    }
}
