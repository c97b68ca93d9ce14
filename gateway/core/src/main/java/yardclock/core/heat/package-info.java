/**
 * Heat index and level, in first form. It advises; bounds are the plan's and local medical
 * direction's.
 *
 * <p>Invariant: absence of data is a state, never "normal".
 */
package yardclock.core.heat;
