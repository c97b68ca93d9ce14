package yardclock.sim.clockbench;

import java.util.Random;

/**
 * How far off the crystals of a bench run are at first, either way, parts per million.
 *
 * @param slowest the smallest error
 * @param fastest the largest
 */
public record Crystals(double slowest, double fastest) {
    /** As the design takes them to be. */
    public static final Crystals USUAL = new Crystals(5, 40);

    /** Past the data sheet's bound. */
    public static final Crystals POOR = new Crystals(70, 80);

    /** As no crystal should be. */
    public static final Crystals BROKEN = new Crystals(195, 205);

    /** One crystal's rate error, parts per one, the sign at random. */
    double rate(Random random) {
        double rate = Draws.between(random, slowest, fastest) * 1e-6;
        return random.nextBoolean() ? rate : -rate;
    }
}
