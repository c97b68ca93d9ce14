package yardclock.core.reading;

import yardclock.core.course.Combination;
import yardclock.core.course.Contact;
import yardclock.core.course.Guards;
import yardclock.core.course.Trigger;
import yardclock.core.passage.Passage;
import yardclock.core.passage.TimedEdge;
import yardclock.core.passage.TriggerJudge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Every passage that may have been the candidate's at one trigger.
 *
 * <p>First those the trigger takes as the plan has it. Where others cross the sensor they can spoil
 * a guard: a proctor through the line 0.4 s after the candidate keeps it from staying clear, one
 * just before keeps it locked. So there the guards are relaxed as well, as far as chatter allows;
 * what only the relaxed trigger takes is marked so. Within {@link #ONE_OCCURRENCE_MICROS} the
 * plan's rule alone says which edge counts. Stateless.
 */
final class Possibilities {
    /** Chatter and limbs of one body; people come through further apart. Our choice. */
    static final long ONE_OCCURRENCE_MICROS = 60_000;

    /** Chatter of mats and contacts lasts 1–20 ms; from memory, no source. */
    private static final long CHATTER_MICROS = 25_000;

    private final Trigger trigger;
    private final long settleMicros;

    Possibilities(Trigger trigger, long settleMicros) {
        this.trigger = trigger;
        this.settleMicros = settleMicros;
    }

    /** In time order, by the plan's rule only. */
    List<Possible> byRule(List<TimedEdge> edges, long fromMicros) {
        int skipped = Math.max(1, trigger.guards().nth()) - 1;
        return new TriggerJudge(trigger, settleMicros)
                .passages(edges, fromMicros).stream()
                        .skip(skipped)
                        .map(passage -> new Possible(passage, true))
                        .toList();
    }

    /** In time order, those whose guards may have been spoiled included. */
    List<Possible> all(List<TimedEdge> edges, long fromMicros) {
        List<Possible> byRule = byRule(edges, fromMicros);
        List<Possible> all = new ArrayList<>(byRule);
        for (Passage passage :
                new TriggerJudge(relaxed().standing(trigger.site()), settleMicros)
                        .passages(edges, fromMicros)) {
            boolean isKnown = false;
            for (Possible known : byRule) {
                long apart = Math.abs(known.atMicros() - passage.edge().stamp().micros());
                isKnown |= apart <= ONE_OCCURRENCE_MICROS;
            }
            if (!isKnown) {
                all.add(new Possible(passage, false));
            }
        }
        all.sort(Comparator.comparing(Possible::edge));
        return all;
    }

    /**
     * The same edge without what somebody else's crossing can spoil. Another body can only make a
     * block longer: so a block that is too short stays too short.
     */
    private Trigger relaxed() {
        Guards guards = trigger.guards();
        boolean isRelease = guards.clearForMicros() > 0;
        boolean isFoot = guards.stoodForMicros() > 0;
        Guards free =
                new Guards(
                        isRelease || isFoot ? 0 : CHATTER_MICROS,
                        0,
                        isRelease ? CHATTER_MICROS : 0,
                        guards.stoodForMicros(),
                        guards.minBlockMicros(),
                        0,
                        0,
                        1,
                        "");
        boolean isDirection = trigger.combination() == Combination.DIRECTION;
        List<Contact> contacts = trigger.contacts();
        return isDirection
                ? new Trigger(
                        Combination.SINGLE,
                        contacts.subList(contacts.size() - 1, contacts.size()),
                        free,
                        trigger.words())
                : new Trigger(trigger.combination(), contacts, free, trigger.words());
    }
}
