package yardclock.core.heat;

/**
 * What somebody says of the sun where people work, when no globe and no sunlight is measured.
 *
 * <p>How much of the light outside the atmosphere reaches the ground, in percent, is our own
 * estimate; 85 is the outdoor model's own clearest sky.
 */
public enum Sky {
    SHADE(0, 0),
    /** The sun comes and goes, or shines through thin cloud. */
    CLOUDS(15, 75),
    SUN(50, 85);

    private final int leastPercent;
    private final int mostPercent;

    Sky(int leastPercent, int mostPercent) {
        this.leastPercent = leastPercent;
        this.mostPercent = mostPercent;
    }

    boolean isSunlit() {
        return this != SHADE;
    }

    double least() {
        return leastPercent / 100.0;
    }

    double most() {
        return mostPercent / 100.0;
    }
}
