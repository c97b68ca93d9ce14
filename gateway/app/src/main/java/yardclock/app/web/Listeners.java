package yardclock.app.web;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicReference;

/** The streams of one audience and the slot for its newest frame. Safe from any thread. */
final class Listeners {
    private static final Logger LOG = LoggerFactory.getLogger(Listeners.class);

    private final Executor pump;
    private final Map<LiveStream, Mailbox> mailboxes = new ConcurrentHashMap<>();
    private final AtomicReference<Painter.Painted> newest = new AtomicReference<>();

    Listeners(Executor pump) {
        this.pump = pump;
    }

    boolean isEmpty() {
        return mailboxes.isEmpty();
    }

    void add(LiveStream stream, Mailbox mailbox) {
        mailboxes.put(stream, mailbox);
    }

    void remove(LiveStream stream) {
        mailboxes.remove(stream);
    }

    /** Hands over a frame; an older one that was not sent yet is dropped. */
    void post(Painter.Painted frame) {
        if (newest.getAndSet(frame) == null) {
            try {
                pump.execute(this::deliver);
            } catch (RejectedExecutionException e) {
                newest.set(null);
            }
        }
    }

    private void deliver() {
        Painter.Painted frame = newest.getAndSet(null);
        byte[] shared;
        try {
            shared = SseText.message("frame", frame.number(), frame.frame());
        } catch (IllegalStateException e) {
            LOG.error("frame {} was not sent", frame.number(), e);
            return;
        }
        mailboxes.forEach(
                (stream, mailbox) -> {
                    mailbox.put(shared);
                    stream.wake();
                });
    }
}
