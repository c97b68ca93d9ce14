package yardclock.sim.yard;

import java.util.SplittableRandom;

/**
 * Draws from the normal distribution by the polar form of Box and Muller (Marsaglia and Bray,
 * 1964). Spelt out, with {@link StrictMath}, so that a seed gives the same day on every JVM.
 */
public final class Bell {
    private Bell() {}

    /** Mean 0, standard deviation 1. */
    public static double draw(SplittableRandom random) {
        while (true) {
            double x = 2 * random.nextDouble() - 1;
            double y = 2 * random.nextDouble() - 1;
            double square = x * x + y * y;
            if (square > 0 && square < 1) {
                return x * StrictMath.sqrt(-2 * StrictMath.log(square) / square);
            }
        }
    }
}
