package yardclock.sim.units;

/**
 * One edge in a unit's buffer.
 *
 * @param tick microseconds since the unit's boot
 */
record StoredEdge(long seq, int sensor, int state, long tick) {}
