package yardclock.core.time;

/**
 * The one-way legs of some neighbouring exchanges as a tick sees them: when they happened, in unit
 * time from the tick, and the limit each sets to the offset, gateway time − unit time. A downlink
 * leg sets a lower limit, an uplink leg an upper one. Microseconds. Not changed once made.
 */
final class Legs {
    private static final double PPM = 1e-6;

    final int from;
    final int to;
    final double[] downAt;
    final double[] downOffset;
    final double[] upAt;
    final double[] upOffset;

    /**
     * @param from the first exchange's place in the history
     * @param to the place after the last one's
     */
    Legs(ExchangeHistory history, int from, int to, long tick) {
        this.from = from;
        this.to = to;
        int n = to - from;
        downAt = new double[n];
        downOffset = new double[n];
        upAt = new double[n];
        upOffset = new double[n];
        for (int i = 0; i < n; i++) {
            downAt[i] = history.unitReceived(from + i) - tick;
            downOffset[i] = history.gatewaySent(from + i) - history.unitReceived(from + i);
            upAt[i] = history.unitSent(from + i) - tick;
            upOffset[i] = history.gatewayReceived(from + i) - history.unitSent(from + i);
        }
    }

    /**
     * The straight clocks that none of these legs contradicts.
     *
     * @param arrival one more upper limit, at the tick itself; infinite when there is none
     * @return null when there is no such clock
     */
    RateBand band(double arrival, RateRange rates) {
        return RateBand.solve(
                lowerLimits(), upperLimits(arrival), rates.lowPpm() * PPM, rates.highPpm() * PPM);
    }

    /** Slopes must rise: a leg at time u is a line over the rate with slope −u. */
    private LineEnvelope lowerLimits() {
        LineEnvelope low = new LineEnvelope(downAt.length);
        for (int i = downAt.length - 1; i >= 0; i--) {
            low.add(-downAt[i], downOffset[i] - slack(downAt[i]));
        }
        return low;
    }

    /** Upper limits negated, so that the highest of them counts; their slope is u. */
    private LineEnvelope upperLimits(double arrival) {
        LineEnvelope highNegated = new LineEnvelope(upAt.length + 1);
        boolean arrivalAdded = arrival == Double.POSITIVE_INFINITY;
        for (int i = 0; i < upAt.length; i++) {
            if (!arrivalAdded && upAt[i] >= 0) {
                highNegated.add(0, -(arrival + ClockEstimator.READING_MICROS));
                arrivalAdded = true;
            }
            highNegated.add(upAt[i], -(upOffset[i] + slack(upAt[i])));
        }
        if (!arrivalAdded) {
            highNegated.add(0, -(arrival + ClockEstimator.READING_MICROS));
        }
        return highNegated;
    }

    /** For a rate that moves meanwhile, and for the reading itself. */
    private static double slack(double at) {
        return ClockEstimator.WANDER_PPM * PPM * Math.abs(at) + ClockEstimator.READING_MICROS;
    }
}
