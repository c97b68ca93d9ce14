package yardclock.core.time;

/**
 * A stretch of one boot over which its clock ran as a clock may: no two exchanges contradict each
 * other. It ends where one does.
 */
final class ClockSegment {
    final ExchangeHistory history = new ExchangeHistory();

    /**
     * The tick of the first exchange; what lies before belongs to an earlier segment, or to none.
     */
    long firstTick() {
        return history.unitReceived(0);
    }

    long lastTick() {
        return history.unitSent(history.size() - 1);
    }

    long lastMiddle() {
        return history.unitMiddle(history.size() - 1);
    }

    /** Whether the newest exchange and those before it exclude each other. */
    boolean isContradictory() {
        int newest = history.size() - 1;
        return estimator(history.unitReceived(newest), Long.MAX_VALUE).live().contradiction()
                || estimator(history.unitSent(newest), Long.MAX_VALUE).live().contradiction();
    }

    ClockEstimator estimator(long tick, long arrivalMicros) {
        return new ClockEstimator(history, history.size(), tick, arrivalMicros);
    }
}
