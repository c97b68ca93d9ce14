package yardclock.sim.referee;

/**
 * A mark the gateway proposed by itself, before anybody ruled on it.
 *
 * @param point {@code start}, {@code finish} or a checkpoint's id
 * @param micros the mark's instant in gateway time
 */
record Proposal(int number, String station, String point, long micros) {}
