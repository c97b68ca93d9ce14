/**
 * Reads the repository as text and refuses what a compiler does not see.
 *
 * <p>Invariant: each rule here is one a reader would otherwise have to say in a review; all
 * breaches of a rule are reported at once, each with file and line.
 */
package yardclock.tidy;
