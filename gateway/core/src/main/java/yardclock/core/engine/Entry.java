package yardclock.core.engine;

/**
 * One row of the journal: its number from 1, the gateway time the lane took it in, and the input.
 * Gateway times never run backwards from one entry to the next within an epoch.
 */
public record Entry(long number, long gatewayMicros, Input input) {
    /** As any record, without parsing a format each time; see {@link Input}. */
    @Override
    public String toString() {
        return "Entry[number="
                + number
                + ", gatewayMicros="
                + gatewayMicros
                + ", input="
                + input
                + ']';
    }
}
