package yardclock.app.lane;

import yardclock.core.engine.Entry;
import yardclock.core.fact.Fact;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * The feed in memory: the newest items in a ring. The lane's thread adds, any thread reads.
 *
 * <p>Replaying a journal through {@link #add} gives every fact the number it had before.
 */
public final class FeedRing implements Feed {
    private final int capacity;
    private final ArrayDeque<Item> items = new ArrayDeque<>();
    private final CopyOnWriteArrayList<Runnable> followers = new CopyOnWriteArrayList<>();
    private long newest;

    public FeedRing() {
        this(Limits.FEED_ITEMS);
    }

    FeedRing(int capacity) {
        this.capacity = capacity;
    }

    /** Numbers and keeps those facts of one entry that are on the feed. */
    public void add(Entry entry, List<Fact> facts) {
        boolean added = false;
        synchronized (items) {
            for (Fact fact : facts) {
                if (fact.kind().onFeed()) {
                    items.addLast(new Item(++newest, entry.number(), entry.gatewayMicros(), fact));
                    added = true;
                }
            }
            while (items.size() > capacity) {
                items.removeFirst();
            }
        }
        if (added) {
            followers.forEach(Runnable::run);
        }
    }

    @Override
    public long newest() {
        synchronized (items) {
            return newest;
        }
    }

    @Override
    public Page after(long frame) {
        synchronized (items) {
            long oldestHeld = newest - items.size() + 1;
            boolean missed = frame < oldestHeld - 1 || frame > newest;
            long from = missed ? oldestHeld : frame + 1;
            List<Item> page = new ArrayList<>();
            for (Item item : items) {
                if (item.frame() >= from && page.size() < Limits.FEED_PAGE) {
                    page.add(item);
                }
            }
            return new Page(missed, page);
        }
    }

    @Override
    public Following follow(Runnable more) {
        // Each call is its own following, even when the same runnable follows twice.
        Runnable own = () -> more.run();
        followers.add(own);
        return () -> followers.remove(own);
    }
}
