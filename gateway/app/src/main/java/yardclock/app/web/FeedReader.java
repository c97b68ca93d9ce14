package yardclock.app.web;

import yardclock.app.lane.Feed;

import java.util.ArrayDeque;

/**
 * Reads the timing feed for one stream, from the number it had last. Owned by the pump thread.
 *
 * <p>Where numbers are missing, because the client was away for too long or asks for numbers that
 * were never given out, one {@code reset} message comes first.
 */
final class FeedReader implements Chunks {
    private final Feed feed;
    private final ArrayDeque<Feed.Item> page = new ArrayDeque<>();
    private long sent;

    FeedReader(Feed feed, long after) {
        this.feed = feed;
        this.sent = after;
    }

    /** What a client learns with a reset: the number before the first fact that follows. */
    private record Reset(long after) {}

    @Override
    public byte[] next() {
        if (page.isEmpty()) {
            Feed.Page more = feed.after(sent);
            page.addAll(more.items());
            if (more.missed()) {
                sent = page.isEmpty() ? feed.newest() : page.peekFirst().frame() - 1;
                return SseText.message("reset", sent, new Reset(sent));
            }
        }
        Feed.Item item = page.pollFirst();
        if (item == null) {
            return null;
        }
        sent = item.frame();
        return SseText.message("fact", sent, item);
    }
}
