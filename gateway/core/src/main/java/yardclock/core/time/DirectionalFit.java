package yardclock.core.time;

/**
 * A straight clock line through the cleanest legs of a window.
 *
 * <p>One common rate; the downlink legs have their floor and the uplink legs theirs. Each leg
 * weighs by how far it lies over its own direction's floor, so a clean uplink counts even when the
 * downlink of the same exchange waited for a Wi-Fi beacon; and less the further it is in time, for
 * no rate stays. Three passes of re-weighting, started from the centre line of the feasible band.
 *
 * <p>That a rate is more likely small than large counts as one observation among many: it keeps a
 * handful of unclean legs from a wild slope, and bends a full window's rate by a thousandth.
 * Offsets in microseconds relative to the tick in question.
 */
final class DirectionalFit {
    /** Below this excess a leg is as good as clean; what the best legs of a window scatter by. */
    private static final double CLEAN_MICROS = 300;

    /** A leg so far from the tick counts half; microseconds. */
    private static final double NEAR_MICROS = 200_000_000;

    /** How far off most crystals are, parts per one; data sheets say ±10 to ±40 ppm. */
    private static final double USUAL_RATE = 30e-6;

    private static final double USUAL_RATE_WEIGHT = 1 / (USUAL_RATE * USUAL_RATE);
    private static final int PASSES = 3;

    private final Legs legs;
    private final double[] downNear;
    private final double[] upNear;
    private double offset;
    private double rate;
    private double floorRoundTrip;

    DirectionalFit(Legs legs) {
        this.legs = legs;
        downNear = nearness(legs.downAt);
        upNear = nearness(legs.upAt);
    }

    private static double[] nearness(double[] at) {
        double[] near = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            double far = at[i] / NEAR_MICROS;
            near[i] = 1 / (1 + far * far);
        }
        return near;
    }

    void run(double startOffset, double startRate, double rateLimit) {
        offset = startOffset;
        rate = startRate;
        for (int pass = 0; pass < PASSES; pass++) {
            double[] downWeight = weights(legs.downAt, legs.downOffset, downNear, 1);
            double[] upWeight = weights(legs.upAt, legs.upOffset, upNear, -1);
            Direction down = new Direction(legs.downAt, legs.downOffset, downWeight);
            Direction up = new Direction(legs.upAt, legs.upOffset, upWeight);
            double spread = down.spread + up.spread + USUAL_RATE_WEIGHT;
            double slope = (down.product + up.product) / spread;
            rate = Math.max(-rateLimit, Math.min(rateLimit, slope));
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
    private double[] weights(double[] at, double[] limits, double[] near, int sign) {
        double[] excess = new double[at.length];
        double least = Double.MAX_VALUE;
        for (int i = 0; i < at.length; i++) {
            excess[i] = sign * (offset + rate * at[i] - limits[i]);
            least = Math.min(least, excess[i]);
        }
        for (int i = 0; i < at.length; i++) {
            double over = CLEAN_MICROS + excess[i] - least;
            excess[i] = near[i] / (over * over);
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
