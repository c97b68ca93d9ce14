package yardclock.app.lane;

import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.engine.Outcome;

import java.util.ArrayList;
import java.util.List;

/**
 * Offers on their way through one commit. The lane's own input, if any, comes first; then the
 * offers in the order they came.
 */
record Batch(List<Entry> entries, int own, List<Waiting.Offer> offers) {

    static Batch of(long lastEntry, long micros, List<Input> own, List<Waiting.Offer> offers) {
        List<Entry> entries = new ArrayList<>();
        long number = lastEntry;
        for (Input input : own) {
            entries.add(new Entry(++number, micros, input));
        }
        for (Waiting.Offer offer : offers) {
            for (Input input : offer.inputs()) {
                entries.add(new Entry(++number, micros, input));
            }
        }
        return new Batch(entries, own.size(), offers);
    }

    boolean isEmpty() {
        return entries.isEmpty();
    }

    /** The part of all outcomes that belongs to one offer. */
    List<List<Outcome>> byOffer(List<Outcome> outcomes) {
        List<List<Outcome>> parts = new ArrayList<>();
        int from = own;
        for (Waiting.Offer offer : offers) {
            int to = from + offer.inputs().size();
            parts.add(List.copyOf(outcomes.subList(from, to)));
            from = to;
        }
        return parts;
    }
}
