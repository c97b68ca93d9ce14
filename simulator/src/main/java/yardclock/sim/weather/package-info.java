/**
 * The weather of the simulated day: a slow curve of air, humidity, globe and wind.
 *
 * <p>Invariant: the curve depends on the exam time alone, so two runs see the same weather.
 */
package yardclock.sim.weather;
