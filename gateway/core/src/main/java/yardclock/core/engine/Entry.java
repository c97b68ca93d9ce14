package yardclock.core.engine;

/**
 * One row of the journal: its number from 1, the gateway time the lane took it in, and the input.
 * Gateway times never run backwards from one entry to the next within an epoch.
 */
public record Entry(long number, long gatewayMicros, Input input) {}
