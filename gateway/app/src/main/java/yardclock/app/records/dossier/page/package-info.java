/**
 * One attempt's dossier as a page that a person without the program can read and print.
 *
 * <p>It writes down what a {@link yardclock.app.records.dossier.Dossier} says and derives nothing
 * anew. Every time of day stands with its zone, every measured time with its limits.
 *
 * <p>Invariant: what does not follow from the entries is said not to.
 */
package yardclock.app.records.dossier.page;
