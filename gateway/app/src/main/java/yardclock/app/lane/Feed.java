package yardclock.app.lane;

import yardclock.core.fact.Fact;

import java.util.List;

/**
 * The timing feed: the facts that are on the feed, numbered from 1 in the order they were
 * concluded.
 *
 * <p>The numbers are a function of the journal alone, so a client may resume by number across a
 * restart of the gateway. Only the newest {@link Limits#FEED_ITEMS} are held. Safe from any thread.
 *
 * <p>A live stream remembers the number it sent last, {@link #follow follows}, and reads {@link
 * #after} each time it is woken: a slow stream costs nobody anything and learns from {@code missed}
 * that it fell behind.
 */
public interface Feed {
    /** The number of the newest item, or 0. */
    long newest();

    /** At most {@link Limits#FEED_PAGE} items with numbers above {@code frame}, oldest first. */
    Page after(long frame);

    /**
     * Wakes {@code more} on the lane's thread whenever items were added; it must be quick and must
     * not write to a socket.
     */
    Following follow(Runnable more);

    /**
     * One fact on the feed; {@code frame} is its number on the feed, {@code entry} its journal
     * entry.
     */
    record Item(long frame, long entry, long gatewayMicros, Fact fact) {}

    /**
     * A run of items.
     *
     * @param missed true when the number asked for is no longer held, or was never given out: the
     *     client's picture must start anew
     */
    record Page(boolean missed, List<Item> items) {
        public Page {
            items = List.copyOf(items);
        }
    }

    /** Ends the waking when closed. */
    interface Following extends AutoCloseable {
        @Override
        void close();
    }
}
