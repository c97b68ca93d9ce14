/** The one JSON mapper that the journal, the field units' messages and the pages share. */
package yardclock.app.json;
