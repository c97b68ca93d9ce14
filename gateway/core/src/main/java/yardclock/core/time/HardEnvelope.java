package yardclock.core.time;

/**
 * What causality alone says of a tick: the gateway sent before the unit received, and the unit sent
 * before the gateway received; between those and the tick the clocks drifted apart by no more than
 * the rate bound. Every exchange narrows it.
 *
 * @param lower lower limit of gateway time − tick, microseconds
 * @param upper upper limit of the same
 */
record HardEnvelope(double lower, double upper) {

    /**
     * @param count how many exchanges count, from the first
     * @param ratePpm the rate bound either way, parts per million
     */
    static HardEnvelope of(ExchangeHistory history, int count, long tick, double ratePpm) {
        double phi = ratePpm * 1e-6;
        boolean isAhead =
                count == history.size()
                        && history.isAhead(tick)
                        && ratePpm >= ClockEstimator.RATE_PPM;
        double low = isAhead ? history.lowerAhead(tick, phi) : Double.NEGATIVE_INFINITY;
        double high = isAhead ? history.upperAhead(tick, phi) : Double.POSITIVE_INFINITY;
        for (int i = isAhead ? Math.max(0, count - 1) : 0; i < count; i++) {
            double byDown = history.down(i) - phi * Math.abs(tick - history.unitReceived(i));
            double byUp = history.up(i) + phi * Math.abs(tick - history.unitSent(i));
            low = Math.max(low, byDown);
            high = Math.min(high, byUp);
        }
        return new HardEnvelope(low, high);
    }
}
