/**
 * One attempt's whole timeline: what the sensors said, what was concluded, who ruled what, how the
 * stations were, and the part of the journal it all follows from.
 *
 * <p>A {@link yardclock.app.records.dossier.Timeline} is a pure function of journal entries: the
 * same rules that ran on the day are handed them again. A dossier is made from the whole journal;
 * {@linkplain yardclock.app.records.dossier.Inclusion some entries} go into it, and the timeline
 * that follows from these alone is what it shows. Nobody else's rulings or edges are among them.
 * What depends on others (whether a sensor stood still, whether a unit was silent) does not follow
 * from them and stands apart, as the maker's word.
 *
 * <p>Invariant: whoever holds a dossier and this program comes to the same timeline, or is told.
 */
package yardclock.app.records.dossier;
