package yardclock.core.intake;

/** An edge as its unit sent it, without the key. */
public record RawEdge(int sensor, int state, long tick) {}
