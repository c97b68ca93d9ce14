/**
 * Judges each reading as it comes in: fresh, duplicate, conflicting, impossible; and knows what is
 * missing.
 *
 * <p>Invariant: absorbing a duplicate changes nothing but its tally.
 */
package yardclock.core.intake;
