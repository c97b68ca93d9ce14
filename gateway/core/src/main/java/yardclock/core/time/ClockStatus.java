package yardclock.core.time;

/**
 * A unit clock's own figures for the bench.
 *
 * @param exchanges how many were accepted since the boot
 * @param refused how many were impossible
 * @param faults how often an exchange contradicted those before it: jumps of the unit's counter
 * @param ratePartsPerBillion the fitted rate against the gateway's clock; 0 while unknown
 * @param floorRoundTripMicros the shortest round trip in use; −1 while none
 * @param boundWidthMicros the full width of a stamp made now; −1 while there is no bound
 * @param lastExchangeAgeMicros age of the newest accepted exchange; −1 while none
 */
public record ClockStatus(
        long exchanges,
        long refused,
        long faults,
        long ratePartsPerBillion,
        long floorRoundTripMicros,
        long boundWidthMicros,
        long lastExchangeAgeMicros) {}
