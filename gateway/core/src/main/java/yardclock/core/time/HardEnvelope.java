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
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            double down = history.gatewaySent(i) - history.unitReceived(i);
            double up = history.gatewayReceived(i) - history.unitSent(i);
            low = Math.max(low, down - phi * Math.abs(tick - history.unitReceived(i)));
            high = Math.min(high, up + phi * Math.abs(tick - history.unitSent(i)));
        }
        return new HardEnvelope(low, high);
    }
}
