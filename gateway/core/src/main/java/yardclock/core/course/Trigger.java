package yardclock.core.course;

import java.util.List;

/**
 * The plan's rule that says which edge makes a mark: contacts, an edge rule, and guards.
 *
 * @param contacts in the written order; empty for a proctor's press without a wired button
 * @param words how the trigger is told to a proctor, as "finish line clear 1.5 s, last release"
 * @param adjustment how often its guards were adjusted on the bench; 0 as the plan has it
 */
public record Trigger(
        Combination combination,
        EdgeRule edge,
        List<Contact> contacts,
        Guards guards,
        Site site,
        Text words,
        int adjustment) {
    /** Journals before edge rules were named have none: the first edge counted. */
    public Trigger {
        contacts = List.copyOf(contacts);
        edge = edge == null ? EdgeRule.FIRST : edge;
        site = site == null ? Site.UNSAID : site;
    }

    /** As the plan has it, by its first edge, with nothing said of its site. */
    public Trigger(Combination combination, List<Contact> contacts, Guards guards, Text words) {
        this(combination, EdgeRule.FIRST, contacts, guards, Site.UNSAID, words, 0);
    }

    public boolean isJudged() {
        return combination == Combination.JUDGED;
    }

    /** Whether one of its contacts is this sensor's. */
    public boolean uses(SensorRef sensor) {
        return contacts.stream().anyMatch(contact -> contact.sensor().equals(sensor));
    }

    /** With other guards, as adjusted on the bench; its words say that they are not the plan's. */
    public Trigger adjusted(Guards other, int adjustmentNumber) {
        String count = " " + adjustmentNumber + ")";
        Text said = new Text(words.en() + " (adjusted" + count, words.es() + " (ajustado" + count);
        return new Trigger(combination, edge, contacts, other, site, said, adjustmentNumber);
    }

    /** With other guards, to look at: neither another wording nor another version. */
    public Trigger guarded(Guards other) {
        return new Trigger(combination, edge, contacts, other, site, words, adjustment);
    }

    /** With what is said of its site. */
    public Trigger standing(Site where) {
        return new Trigger(combination, edge, contacts, guards, where, words, adjustment);
    }

    /** Whether a block is what ends with the stamp, and not what begins with it. */
    public boolean endsBlock() {
        return edge == EdgeRule.RELEASE
                || guards.clearForMicros() > 0
                || guards.stoodForMicros() > 0;
    }
}
