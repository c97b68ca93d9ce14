/**
 * The one JSON mapper that the journal, the field units' messages and the pages share.
 *
 * <p>Invariant: what it writes it reads back the same; a fraction or an unknown word is refused.
 */
package yardclock.app.json;
