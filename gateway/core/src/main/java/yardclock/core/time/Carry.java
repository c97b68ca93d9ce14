package yardclock.core.time;

import java.util.SortedMap;
import java.util.TreeMap;

/**
 * By how much the instants of each time line are to be moved onto the present one, in whole
 * microseconds. Lines that stay where they are count as moved by nothing.
 */
public final class Carry {
    private final SortedMap<Integer, Long> microsByLine;

    Carry(SortedMap<Integer, Long> microsByLine) {
        this.microsByLine = new TreeMap<>(microsByLine);
    }

    public long of(int line) {
        return microsByLine.getOrDefault(line, 0L);
    }

    /** The move of the newest line that moves; nothing moves by nothing. */
    public long ofNewest() {
        return microsByLine.isEmpty() ? 0 : of(microsByLine.lastKey());
    }

    public boolean isEmpty() {
        return microsByLine.isEmpty();
    }
}
