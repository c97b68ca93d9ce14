package yardclock.core.time;

/**
 * Of many lower limits, each of which falls from its own tick on as fast as the rate bound says,
 * those that can still be the highest one at a later tick. A limit that a newer one lies above will
 * stay below it, so it is dropped for good; of hundreds a dozen are left.
 *
 * <p>A faster fall than {@link ClockEstimator#RATE_PPM} takes more from the older of two limits, so
 * what is kept answers for any rate bound from there on.
 */
final class Frontier {
    private static final double SLOWEST = ClockEstimator.RATE_PPM * 1e-6;

    private final double[] limit = new double[ExchangeHistory.KEPT];
    private final long[] tick = new long[ExchangeHistory.KEPT];
    private int size;
    private long latest = Long.MIN_VALUE;

    void add(double newLimit, long newTick) {
        while (size > 0
                && newTick >= tick[size - 1]
                && newLimit >= at(size - 1, newTick, SLOWEST)) {
            size--;
        }
        limit[size] = newLimit;
        tick[size] = newTick;
        size++;
        latest = Math.max(latest, newTick);
    }

    /** Whether a tick comes after all limits, so that {@link #highest} may be asked. */
    boolean isAhead(long atTick) {
        return atTick >= latest;
    }

    /** The limits at ticks up to this one are no longer known. */
    void forgetUpTo(long lastTick) {
        int gone = 0;
        while (gone < size && tick[gone] <= lastTick) {
            gone++;
        }
        System.arraycopy(limit, gone, limit, 0, size - gone);
        System.arraycopy(tick, gone, tick, 0, size - gone);
        size -= gone;
    }

    void clear() {
        size = 0;
        latest = Long.MIN_VALUE;
    }

    /** The highest limit there; −∞ while there is none. */
    double highest(long atTick, double phi) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < size; i++) {
            highest = Math.max(highest, at(i, atTick, phi));
        }
        return highest;
    }

    private double at(int i, long atTick, double phi) {
        return limit[i] - phi * (atTick - tick[i]);
    }
}
