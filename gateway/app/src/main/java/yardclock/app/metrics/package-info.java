/**
 * Figures about the gateway itself, for a monitoring system to fetch.
 *
 * <p>Meters are told what happened by whoever saw it, through small calls that never block. Names
 * begin with {@code yardclock_}, durations are seconds of real time.
 *
 * <p>Invariant: nothing here decides anything; a gateway without meters times exactly the same.
 */
package yardclock.app.metrics;
