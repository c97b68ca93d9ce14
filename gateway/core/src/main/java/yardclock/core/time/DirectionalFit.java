package yardclock.core.time;

/**
 * A straight clock line through the cleanest legs of a window.
 *
 * <p>One common rate; the downlink legs have their floor and the uplink legs theirs. Each leg
 * weighs by how far it lies over its own direction's floor, so a clean uplink counts even when the
 * downlink of the same exchange waited for a Wi-Fi beacon. Three passes of re-weighting, started
 * from the centre line of the feasible band. Offsets in microseconds relative to the tick in
 * question.
 */
final class DirectionalFit {
    /** Below this excess a leg is as good as clean; microseconds. */
    private static final double CLEAN_MICROS = 120;

    private static final int PASSES = 3;

    private final double[] downAt;
    private final double[] downOffset;
    private final double[] upAt;
    private final double[] upOffset;
    private double offset;
    private double rate;
    private double floorRoundTrip;

    /**
     * @param downAt unit time of each receipt, relative to the tick
     * @param downOffset lower limit of the offset each downlink leg gives
     * @param upAt unit time of each sending
     * @param upOffset upper limit of the offset each uplink leg gives
     */
    DirectionalFit(double[] downAt, double[] downOffset, double[] upAt, double[] upOffset) {
        this.downAt = downAt;
        this.downOffset = downOffset;
        this.upAt = upAt;
        this.upOffset = upOffset;
    }

    void run(double startOffset, double startRate, double rateLimit) {
        offset = startOffset;
        rate = startRate;
        for (int pass = 0; pass < PASSES; pass++) {
            double[] downWeight = weights(downAt, downOffset, 1);
            double[] upWeight = weights(upAt, upOffset, -1);
            Direction down = new Direction(downAt, downOffset, downWeight);
            Direction up = new Direction(upAt, upOffset, upWeight);
            double spread = down.spread + up.spread;
            if (spread > 0) {
                double slope = (down.product + up.product) / spread;
                rate = Math.max(-rateLimit, Math.min(rateLimit, slope));
            }
            double downLevel = down.meanOffset - rate * down.meanAt;
            double upLevel = up.meanOffset - rate * up.meanAt;
            offset = (downLevel + upLevel) / 2;
            floorRoundTrip = upLevel - downLevel;
        }
    }

    /**
     * Weight by excess over the direction's floor; {@code sign} is 1 for lower limits, −1 for
     * upper.
     */
    private double[] weights(double[] at, double[] limits, int sign) {
        double[] excess = new double[at.length];
        double least = Double.MAX_VALUE;
        for (int i = 0; i < at.length; i++) {
            excess[i] = sign * (offset + rate * at[i] - limits[i]);
            least = Math.min(least, excess[i]);
        }
        for (int i = 0; i < at.length; i++) {
            double over = CLEAN_MICROS + excess[i] - least;
            excess[i] = 1 / (over * over);
        }
        return excess;
    }

    double offset() {
        return offset;
    }

    double rate() {
        return rate;
    }

    double floorRoundTrip() {
        return floorRoundTrip;
    }

    /** Weighted sums of one direction. */
    private static final class Direction {
        final double meanAt;
        final double meanOffset;
        double spread;
        double product;

        Direction(double[] at, double[] offset, double[] weight) {
            double total = 0;
            double sumAt = 0;
            double sumOffset = 0;
            for (int i = 0; i < at.length; i++) {
                total += weight[i];
                sumAt += weight[i] * at[i];
                sumOffset += weight[i] * offset[i];
            }
            meanAt = sumAt / total;
            meanOffset = sumOffset / total;
            for (int i = 0; i < at.length; i++) {
                double apart = at[i] - meanAt;
                spread += weight[i] * apart * apart;
                product += weight[i] * apart * (offset[i] - meanOffset);
            }
        }
    }
}
