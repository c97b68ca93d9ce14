package yardclock.sim.clockbench;

import java.util.Random;

/**
 * A unit's counter over an hour: its rate's first error, a random walk of it, warming up, and ramps
 * with sun and shade. Seconds in, seconds out; exact between whole seconds of the grid.
 */
final class Crystal {
    private static final int BEFORE = 120;
    private static final int AFTER = 600;
    private static final double WALK = 0.05e-6;
    private static final double WARMING = 3e-6;
    private static final double WARMING_SECONDS = 600;
    private static final double RAMP_EVERY_SECONDS = 900;
    private static final double RAMP_SECONDS = 60;

    private final double[] reading;
    private double jumpAt = Double.POSITIVE_INFINITY;
    private double jumpBy;

    Crystal(Random random, Weather weather, double firstRate, int seconds) {
        int n = BEFORE + seconds + AFTER;
        double[] rate = new double[n];
        double walked = firstRate;
        double warming = (random.nextDouble() * 2 - 1) * WARMING;
        for (int i = 0; i < n; i++) {
            walked += random.nextGaussian() * WALK;
            rate[i] = walked + warming * Math.exp(-Math.max(i - BEFORE, 0) / WARMING_SECONDS);
        }
        if (weather.ramp() > 0) {
            addRamps(random, weather.ramp(), rate, seconds);
        }
        reading = new double[n];
        reading[0] = 10 + random.nextDouble() * 990;
        for (int i = 1; i < n; i++) {
            reading[i] = reading[i - 1] + 1 + rate[i - 1];
        }
    }

    private static void addRamps(Random random, double size, double[] rate, int seconds) {
        double at = Draws.exponential(random, RAMP_EVERY_SECONDS);
        while (at <= seconds) {
            double ramp = random.nextBoolean() ? size : -size;
            for (int i = 0; i < rate.length; i++) {
                double done = (i - BEFORE - at) / RAMP_SECONDS;
                rate[i] += ramp * Math.max(0, Math.min(1, done));
            }
            at += Draws.exponential(random, RAMP_EVERY_SECONDS);
        }
    }

    /** From this time on the counter reads so much more, as after a fault in its firmware. */
    void jump(double atSeconds, double bySeconds) {
        jumpAt = atSeconds;
        jumpBy = bySeconds;
    }

    double at(double seconds) {
        return smooth(seconds) + (seconds >= jumpAt ? jumpBy : 0);
    }

    private double smooth(double seconds) {
        double place = seconds + BEFORE;
        int whole = (int) Math.floor(place);
        return reading[whole] + (place - whole) * (reading[whole + 1] - reading[whole]);
    }
}
