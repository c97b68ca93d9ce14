package yardclock.sim.yard;

import java.util.SplittableRandom;

/**
 * How late a watching person presses: 0.11 s, SD 0.07 s, and one press lies between 0.03 s before
 * and 0.25 s after the instant. Figures: Am. J. Phys. 87(2) 110, 2019.
 */
public final class HandReaction {
    private static final long MEAN = 110_000;
    private static final long DEVIATION = 70_000;
    private static final long EARLIEST = -30_000;
    private static final long LATEST = 250_000;

    private HandReaction() {}

    public static long micros(SplittableRandom random) {
        long drawn = MEAN + Math.round(DEVIATION * Bell.draw(random));
        return Math.max(EARLIEST, Math.min(LATEST, drawn));
    }
}
