package yardclock.sim.yard;

/**
 * Something a proctor beside the candidate can see: a required act that no sensor watches.
 *
 * @param offsetMicros from the start of the station
 * @param checkpoint the checkpoint's id in the plan
 */
public record Sight(long offsetMicros, String checkpoint) {}
