/**
 * The heat watch: readings, in the order they come, to the level 0 to 4 or unknown. A pure fold; it
 * asks no clock, and what changes by time alone changes at an instant it names beforehand.
 *
 * <p>Two histories. <em>Shown</em> is what people were told, by arrival, never rewritten. <em>
 * Measured</em> is what was so, by the time of measuring; it is the same whatever the order in
 * which readings came. A level shown is never under the one measured.
 *
 * <p>Invariant: absence of data is a state, never "normal".
 */
package yardclock.core.heat.watch;
