/**
 * The simulator's command line: reads options, starts what they ask for.
 *
 * <p>Invariant: exit code 0 is done, 1 is refused with a sentence, 2 is wrong usage.
 */
package yardclock.sim.boot;
