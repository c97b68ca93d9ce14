package yardclock.core.ordering;

/**
 * How far back and how far on nothing of one unit's boot is missing, in the unit's own ticks.
 *
 * <p>A sign of life names the number the next edge will have. When every edge below that number is
 * here, the unit has told everything it stamped up to that tick. Edges that are lost for good hold
 * it up only for what lies before them. After a restart the boot before keeps what it had told.
 */
public final class Watermark {
    private Told present = Told.NOTHING;
    private Told before = Told.NOTHING;
    private String firstBoot = "";
    private long firstTick;

    /**
     * What one boot told whole.
     *
     * @param arrivedMicros when the last of it came, in gateway time
     */
    public record Told(String boot, long fromTick, long toTick, long arrivedMicros) {
        static final Told NOTHING = new Told("", 0, -1, 0);

        public boolean isNothing() {
            return toTick < 0;
        }
    }

    /**
     * A sign of life came.
     *
     * @param wholeFromTick from where on no edge is missing, 0 when none ever was; −1 when some
     *     that it announces are still under way
     */
    public void hear(String boot, long tick, long wholeFromTick, long nowMicros) {
        if (!boot.equals(firstBoot)) {
            before = present;
            present = Told.NOTHING;
            firstBoot = boot;
            firstTick = tick;
        }
        if (wholeFromTick >= 0) {
            present = new Told(boot, Math.max(wholeFromTick, firstTick), tick, nowMicros);
        }
    }

    /** Gateway time went on somewhere else: what was told has no place on it yet. */
    public void forget() {
        present = Told.NOTHING;
        before = Told.NOTHING;
    }

    /** Whether any sign of life ever came; a unit without one is not relied on. */
    public boolean isHeardOf() {
        return !firstBoot.isEmpty();
    }

    public Told present() {
        return present;
    }

    public Told before() {
        return before;
    }

    @Override
    public String toString() {
        return firstBoot + "@" + firstTick + " " + before + " " + present;
    }
}
