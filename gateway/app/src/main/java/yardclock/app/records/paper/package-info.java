/**
 * How a document for people is written: one HTML page that stands for itself, prints on A4 and
 * Letter, and runs no script.
 *
 * <p>Invariant: text from outside reaches a page only through {@link
 * yardclock.app.records.paper.Markup}, which escapes it.
 */
package yardclock.app.records.paper;
