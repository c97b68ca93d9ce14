package yardclock.sim.yard;

/**
 * A tap of the proctor's, drawn with its lateness.
 *
 * @param offsetMicros from the start of the station, in exam time
 * @param point {@code start} or {@code finish}
 */
public record Press(long offsetMicros, String point) {}
