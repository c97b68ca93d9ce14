/**
 * How well the gateway's clock rules date an edge, beside plainer methods, on simulated and on
 * recorded runs whose truth is known.
 *
 * <p>Invariant: no method sees the truth, and every method sees the same exchanges.
 */
package yardclock.sim.clockbench;
