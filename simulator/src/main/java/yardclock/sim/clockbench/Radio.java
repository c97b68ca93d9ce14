package yardclock.sim.clockbench;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** One unit's link: good and bad stretches, outages, and how long a message is under way. */
final class Radio {
    private static final double LONGEST = 0.5;
    private static final double BEACON = 0.1024;

    private final Random random;
    private final Weather weather;
    private final List<Double> turns = new ArrayList<>();
    private final List<double[]> outages = new ArrayList<>();
    private final double leastUp;
    private final double leastDown;

    Radio(Random random, Weather weather, int seconds) {
        this.random = random;
        this.weather = weather;
        leastUp = Draws.between(random, 1.5e-3, 3e-3);
        leastDown = Draws.between(random, 1.5e-3, 4e-3);
        boolean bad = false;
        for (double t = -10; t < seconds + 600; bad = !bad) {
            turns.add(t);
            t += Draws.exponential(random, bad ? weather.badSeconds() : weather.goodSeconds());
        }
        double t = Draws.exponential(random, weather.outageSeconds());
        while (t <= seconds) {
            double length = Draws.between(random, 30, 120);
            outages.add(new double[] {t, t + length});
            t += length + Draws.exponential(random, weather.outageSeconds());
        }
    }

    private boolean isBad(double t) {
        int passed = 0;
        while (passed < turns.size() && turns.get(passed) <= t) {
            passed++;
        }
        return passed % 2 == 0;
    }

    boolean isOut(double t) {
        return outages.stream().anyMatch(o -> t >= o[0] && t < o[1]);
    }

    /** When an edge of this time is sent: at once, or a little after the outage it fell into. */
    double sendTime(double t) {
        return outages.stream()
                .filter(o -> t >= o[0] && t < o[1])
                .findFirst()
                .map(o -> o[1] + Draws.between(random, 0.5, 3))
                .orElse(t);
    }

    double up(double t) {
        return leastUp + Math.min(LONGEST, extra(t));
    }

    double down(double t) {
        double waited =
                random.nextDouble() < weather.powerSave() ? random.nextDouble() * BEACON : 0;
        return leastDown + Math.min(LONGEST, extra(t) + waited);
    }

    private double extra(double t) {
        double extra = Draws.gammaOfTwo(random, 0.6e-3);
        if (random.nextDouble() < 0.03) {
            extra += Math.min(LONGEST, Draws.pareto(random, 5e-3, 1.5));
        }
        if (isBad(t) && random.nextDouble() < 0.7) {
            extra += Math.min(LONGEST, 30e-3 * Math.exp(random.nextGaussian()));
        }
        return extra;
    }
}
