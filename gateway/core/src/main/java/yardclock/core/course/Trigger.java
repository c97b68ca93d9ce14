package yardclock.core.course;

import java.util.List;

/**
 * The plan's rule that says which edge makes a mark.
 *
 * @param contacts in the written order; empty for a proctor's press without a wired button
 * @param words how the trigger is told to a proctor, as "finish line clear 1.5 s, last release"
 */
public record Trigger(Combination combination, List<Contact> contacts, Guards guards, Text words) {
    public Trigger {
        contacts = List.copyOf(contacts);
    }

    public boolean isJudged() {
        return combination == Combination.JUDGED;
    }
}
