/**
 * Puts edges of several units into one order.
 *
 * <p>Invariant: within a turn, the order of arrival does not matter.
 */
package yardclock.core.ordering;
