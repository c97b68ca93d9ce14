package yardclock.sim.units;

import java.util.SplittableRandom;

/**
 * A crystal's rate as sun and shade change it: a slow swing over the day and a quick one over
 * minutes. Immutable and the same on every JVM.
 *
 * <p>Sizes and periods are those of the clock design's own hostile weather, 3 parts per million
 * within some minutes; from memory, no source.
 */
public record Drift(Swing slow, Swing quick) {
    static final Drift NONE = new Drift(new Swing(0, 1, 0), new Swing(0, 1, 0));
    private static final long MINUTE = 60_000_000;

    /**
     * @param partsPerBillion how far the rate swings to either side
     * @param periodMicros from one extreme to the next of its kind
     * @param phase where it begins, in parts of a whole turn
     */
    record Swing(long partsPerBillion, long periodMicros, double phase) {
        /** How far the counter is ahead by then: the rate, summed up. */
        private double micros(long examMicros) {
            double turns = (double) examMicros / periodMicros + phase;
            double most = partsPerBillion * 1e-9 * periodMicros / (2 * Math.PI);
            return most * StrictMath.sin(2 * Math.PI * (turns - Math.floor(turns)));
        }
    }

    public static Drift draw(SplittableRandom random) {
        return new Drift(
                new Swing(
                        random.nextLong(3_000, 6_000),
                        random.nextLong(60, 240) * MINUTE,
                        random.nextDouble()),
                new Swing(
                        random.nextLong(1_000, 3_000),
                        random.nextLong(6, 15) * MINUTE,
                        random.nextDouble()));
    }

    long micros(long examMicros) {
        return Math.round(slow.micros(examMicros) + quick.micros(examMicros));
    }
}
