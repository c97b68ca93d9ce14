package yardclock.core.heat;

/**
 * What somebody says of the sun where people work, when no globe and no sunlight is measured.
 *
 * <p>How much of the light outside the atmosphere reaches the ground, as a share, is our own
 * estimate; 0.85 is the outdoor model's own clearest sky.
 */
public enum Sky {
    SHADE(0, 0),
    /** The sun comes and goes, or shines through thin cloud. */
    CLOUDS(0.15, 0.75),
    SUN(0.5, 0.85);

    private final double least;
    private final double most;

    Sky(double least, double most) {
        this.least = least;
        this.most = most;
    }

    boolean isSunlit() {
        return this != SHADE;
    }

    double least() {
        return least;
    }

    double most() {
        return most;
    }
}
