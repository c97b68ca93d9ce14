/**
 * What is wrong with a station's sensors, and who decided to go on by hand all the same.
 *
 * <p>Wired as the specification asks, a cut cable reads blocked: a sensor that stays away from its
 * rest while nobody is meant to be there, or that never spoke in turns it should have spoken in, is
 * seen here before it costs anybody a time.
 *
 * <p>Invariant: a station with a trouble nobody answered for takes no part in a release.
 */
package yardclock.core.trouble;
