package yardclock.sim.clockbench;

import java.util.Random;

/** Random figures of the usual shapes, from a seeded source. */
final class Draws {
    private Draws() {}

    static double between(Random random, double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    static double exponential(Random random, double mean) {
        return -Math.log(1 - random.nextDouble()) * mean;
    }

    /** Gamma with shape 2: the sum of two exponentials. */
    static double gammaOfTwo(Random random, double scale) {
        return exponential(random, scale) + exponential(random, scale);
    }

    /** Pareto from {@code least} on. */
    static double pareto(Random random, double least, double shape) {
        return least / Math.pow(1 - random.nextDouble(), 1 / shape);
    }
}
