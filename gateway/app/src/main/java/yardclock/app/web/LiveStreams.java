package yardclock.app.web;

import io.javalin.http.Context;

import jakarta.servlet.ServletOutputStream;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.app.lane.Feed;
import yardclock.app.lane.FrameSink;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Engine.View;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ScheduledThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * All live streams, and the one pump thread that writes to them.
 *
 * <p>The lane's thread draws a frame for each audience that somebody listens to and puts it into
 * that audience's one slot. The pump turns it into bytes once and puts the same bytes into the
 * mailbox of each of the audience's streams. Whoever reads slowly misses frames in between and gets
 * the newest; nobody waits for anybody.
 */
public final class LiveStreams implements FrameSink, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(LiveStreams.class);

    private static final int CLOCK_LOOK_MILLIS = 50;

    private final Painter painter;
    private final TabletExchanges exchanges;
    private final Map<LiveStream, ClockedChunks> clocked = new ConcurrentHashMap<>();
    private final Map<Audience, Listeners> audiences = new ConcurrentHashMap<>();
    private final List<LiveStream> all = new CopyOnWriteArrayList<>();
    private final AtomicInteger places = new AtomicInteger(WebLimits.STREAMS);
    private final ScheduledThreadPoolExecutor pump;

    LiveStreams(Painter painter, TabletExchanges exchanges) {
        this.painter = painter;
        this.exchanges = exchanges;
        this.pump = new ScheduledThreadPoolExecutor(1, LiveStreams::pumpThread);
        int every = WebLimits.ALIVE_MILLIS;
        var unused = pump.scheduleAtFixedRate(this::sendAlive, every, every, TimeUnit.MILLISECONDS);
        int look = CLOCK_LOOK_MILLIS;
        unused = pump.scheduleAtFixedRate(this::askClocks, look, look, TimeUnit.MILLISECONDS);
    }

    private static Thread pumpThread(Runnable work) {
        Thread thread = new Thread(work, "live-streams");
        thread.setDaemon(true);
        return thread;
    }

    private void sendAlive() {
        all.forEach(LiveStream::sendAlive);
    }

    private void askClocks() {
        clocked.forEach(
                (stream, chunks) -> {
                    if (chunks.isDue()) {
                        stream.wake();
                    }
                });
    }

    /** Compares a device's clock soon, on all its streams; says how many there are. */
    int askClock(String device) {
        List<ClockedChunks> its =
                clocked.values().stream().filter(chunks -> chunks.isOf(device)).toList();
        its.forEach(ClockedChunks::burst);
        return its.size();
    }

    /** How many streams are open. */
    public int open() {
        return all.size();
    }

    /** Draws what somebody listens to; on the lane's thread. */
    @Override
    public void accept(Engine engine, View view) {
        audiences.forEach((audience, listeners) -> draw(engine, view, audience, listeners));
    }

    private void draw(Engine engine, View view, Audience audience, Listeners listeners) {
        if (listeners.isEmpty()) {
            return;
        }
        try {
            listeners.post(painter.paint(engine, view, audience));
        } catch (RuntimeException e) {
            // A screen that cannot be drawn must not stop the timing.
            LOG.error("no frame for {}", audience, e);
        }
    }

    /** Draws for one audience at once, so that a page that was just opened need not wait. */
    void drawNow(Engine engine, View view, Audience audience) {
        Listeners listeners = audiences.get(audience);
        if (listeners != null) {
            draw(engine, view, audience, listeners);
        }
    }

    /** Takes one of the places for a stream; false when there is none. Give it back, or open. */
    boolean takePlace() {
        if (places.decrementAndGet() >= 0) {
            return true;
        }
        places.incrementAndGet();
        return false;
    }

    /**
     * Opens a stream of frames on a request for which a place was taken.
     *
     * @param device whose clock is compared over the stream; empty for nobody's
     */
    void openFrames(Context request, Audience audience, String device) {
        Mailbox mailbox = new Mailbox();
        ClockedChunks chunks = new ClockedChunks(mailbox, exchanges, device);
        LiveStream stream = open(request, device.isEmpty() ? mailbox : chunks);
        if (!device.isEmpty()) {
            clocked.put(stream, chunks);
            stream.whenClosed(() -> clocked.remove(stream));
        }
        Listeners listeners = audiences.computeIfAbsent(audience, a -> new Listeners(pump));
        listeners.add(stream, mailbox);
        stream.whenClosed(() -> listeners.remove(stream));
        start(request, stream);
    }

    /** Opens a timing feed on a request for which a place was taken. */
    void openFeed(Context request, Feed feed, long after) {
        LiveStream stream = open(request, new FeedReader(feed, after));
        Feed.Following following = feed.follow(stream::wake);
        stream.whenClosed(following::close);
        start(request, stream);
    }

    private LiveStream open(Context request, Chunks chunks) {
        request.res().setStatus(200);
        request.res().setContentType(SseText.CONTENT_TYPE);
        request.res().setCharacterEncoding("UTF-8");
        request.res().setHeader("Cache-Control", "no-store");
        request.res().setHeader("X-Accel-Buffering", "no");
        try {
            ServletOutputStream out = request.res().getOutputStream();
            LiveStream stream = new LiveStream(out, chunks, pump);
            all.add(stream);
            stream.whenClosed(() -> forget(stream));
            return stream;
        } catch (IOException e) {
            places.incrementAndGet();
            throw new UncheckedIOException(e);
        }
    }

    private void forget(LiveStream stream) {
        all.remove(stream);
        places.incrementAndGet();
    }

    private static void start(Context request, LiveStream stream) {
        request.future(
                () -> {
                    // Only inside the supplier is the request asynchronous already.
                    try {
                        request.res().getOutputStream().setWriteListener(stream);
                    } catch (IOException | IllegalStateException e) {
                        stream.close();
                    }
                    return stream.closed();
                });
    }

    /** Ends every stream and takes no more. */
    @Override
    public void close() {
        places.set(Integer.MIN_VALUE / 2);
        all.forEach(LiveStream::close);
        pump.shutdownNow();
    }
}
