/**
 * Official time, its interval, the decision against the cut-off, the outcome and its reasons.
 *
 * <p>Invariant: a total is finish − start − credited holds, never a sum of splits.
 */
package yardclock.core.result;
