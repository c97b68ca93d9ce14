package yardclock.core.readiness;

import yardclock.core.course.CheckItem;
import yardclock.core.course.Text;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The start-of-day checklist: what must be there before anybody is released, and who answers for
 * it. An item is open until it is signed, and open again once that is taken back. A plan without a
 * list has nothing open. Owned by one thread.
 */
public final class Checklist {
    private final List<CheckItem> items;
    private final Map<String, Word> words = new TreeMap<>();

    /**
     * The last word on an item.
     *
     * @param done whether it signed the item; else it took the signature back
     * @param words a note, or why it was taken back; may be empty for a note
     * @param person who said so
     * @param atMicros gateway time
     */
    public record Word(String item, boolean done, String words, String person, long atMicros) {}

    public Checklist(List<CheckItem> items) {
        this.items = items;
    }

    /** The plan's items in the plan's order. */
    public List<CheckItem> items() {
        return items;
    }

    public boolean has(String item) {
        return items.stream().anyMatch(one -> one.id().equals(item));
    }

    public boolean isDone(String item) {
        return word(item).filter(Word::done).isPresent();
    }

    /** What was said of an item last; empty while nobody has signed it. */
    public Optional<Word> word(String item) {
        return item == null ? Optional.empty() : Optional.ofNullable(words.get(item));
    }

    /** Signs an item of the list, or takes its signature back. */
    public void say(Word word) {
        words.put(word.item(), word);
    }

    /** The items nobody answers for now, in words; while there are any nobody is released. */
    public List<Text> open() {
        return items.stream().filter(item -> !isDone(item.id())).map(CheckItem::words).toList();
    }

    @Override
    public String toString() {
        return words.values().toString();
    }
}
