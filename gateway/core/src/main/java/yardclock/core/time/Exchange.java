package yardclock.core.time;

/**
 * Four time stamps that compare a field unit's clock with the gateway's: sent and received back on
 * the gateway's clock, received and sent again on the unit's. All in microseconds, kept raw.
 */
public record Exchange(
        long gatewaySentMicros,
        long unitReceivedTick,
        long unitSentTick,
        long gatewayReceivedMicros) {

    /** The time the two messages spent under way together; RFC 5905 section 8, delta. */
    public long roundTripMicros() {
        return (gatewayReceivedMicros - gatewaySentMicros) - (unitSentTick - unitReceivedTick);
    }
}
