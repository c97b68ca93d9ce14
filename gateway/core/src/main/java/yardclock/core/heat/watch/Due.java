package yardclock.core.heat.watch;

/** How long a reading holds, in microseconds (heat design). */
final class Due {
    static final long MINUTE = 60_000_000;

    /** Without a reading for so long nobody new is released. */
    static final long SILENT = 60 * MINUTE;

    private static final long[] BY_LEVEL = {
        30 * MINUTE, 15 * MINUTE, 15 * MINUTE, 10 * MINUTE, 10 * MINUTE
    };

    private Due() {}

    /** The next reading is due so long after the last; before the first level as at level 0. */
    static long at(int level) {
        return BY_LEVEL[Math.max(0, level)];
    }

    /** Past this the level is unknown. */
    static long unknownAt(int level) {
        return 2 * at(level);
    }
}
