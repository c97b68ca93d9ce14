package yardclock.app.lane;

import yardclock.core.engine.Entry;

import java.util.List;
import java.util.function.Consumer;

/**
 * Where the lane keeps its entries before anything follows from them. Owned by the lane's thread.
 *
 * <p>A full or failing disk is a value, not an exception: the batch was then not kept at all, and
 * the same numbers are used again by the next one.
 */
public interface Journal {
    /** Keeps the whole batch durably in one commit, or none of it. */
    Appended append(List<Entry> batch);

    /**
     * Hands out the entries from 1 up to and including {@code upTo} again, in order.
     *
     * @throws IllegalStateException when they can't be read any more
     */
    void replay(long upTo, Consumer<Entry> each);

    /**
     * What became of a batch.
     *
     * @param trouble null when it is kept; else one plain sentence for every screen
     */
    record Appended(String trouble) {
        public static Appended kept() {
            return new Appended(null);
        }

        public static Appended lost(String trouble) {
            return new Appended(trouble);
        }

        public boolean isKept() {
            return trouble == null;
        }
    }
}
