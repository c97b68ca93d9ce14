package yardclock.core.heat.watch;

import java.util.Arrays;

/**
 * Readings in some order to a level 0 to 4. It rises at once. It falls one level at a reading, and
 * only when at least two readings over at least 20 minutes were far enough under the level's bound.
 * A gap longer than a level outlives begins the 20 minutes anew: nothing is read into it.
 */
final class LevelFold {
    private static final long LOWER_AFTER = 20 * Due.MINUTE;
    private static final int LEVELS = 4;

    /** By level: since when, and in how many readings, everything was far enough under it. */
    private final long[] underSince = new long[LEVELS + 1];

    private final int[] underCount = new int[LEVELS + 1];
    private long lastMicros;
    private int level = -1;

    void take(Taken taken) {
        long at = taken.reading().measuredMicros();
        if (!taken.isSuspect()) {
            if (at - lastMicros > Due.unknownAt(level)) {
                gap();
            }
            lastMicros = at;
        }
        for (int each = 1; each <= LEVELS; each++) {
            count(each, taken, at);
        }
        int own = taken.level().level();
        if (own >= level) {
            level = own;
        } else if (!taken.isSuspect() && isUnderLongEnough(at)) {
            level--;
        }
    }

    private void count(int each, Taken taken, long at) {
        if (taken.level().heldLevel() >= each) {
            underCount[each] = 0;
        } else if (!taken.isSuspect()) {
            underSince[each] = underCount[each] == 0 ? at : underSince[each];
            underCount[each]++;
        }
    }

    private boolean isUnderLongEnough(long at) {
        return underCount[level] >= 2 && at - underSince[level] >= LOWER_AFTER;
    }

    void raiseTo(int least) {
        level = Math.max(level, least);
    }

    /** What was read before says nothing of what comes. */
    void gap() {
        Arrays.fill(underCount, 0);
    }

    /** 0 to 4, or −1 before the first reading. */
    int level() {
        return level;
    }

    @Override
    public String toString() {
        return level
                + " "
                + lastMicros
                + " "
                + Arrays.toString(underSince)
                + Arrays.toString(underCount);
    }
}
