package yardclock.core.board;

import yardclock.core.course.CheckItem;
import yardclock.core.course.Text;
import yardclock.core.readiness.Checklist;

import java.util.List;

/**
 * One item of the start-of-day checklist.
 *
 * @param done whether somebody answers for it now
 * @param note what they said of it, or why the signature was taken back; may be empty
 * @param person who signed it, or took that back; empty while nobody has signed
 * @param atMicros gateway time of that, −1 for none
 */
public record CheckView(
        String id, Text words, boolean done, String note, String person, long atMicros) {

    static List<CheckView> all(Checklist list) {
        return list.items().stream().map(item -> of(item, list)).toList();
    }

    private static CheckView of(CheckItem item, Checklist list) {
        return list.word(item.id())
                .map(
                        word ->
                                new CheckView(
                                        item.id(),
                                        item.words(),
                                        word.done(),
                                        word.words(),
                                        word.person(),
                                        word.atMicros()))
                .orElseGet(() -> new CheckView(item.id(), item.words(), false, "", "", -1));
    }
}
