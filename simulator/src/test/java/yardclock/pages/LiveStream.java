package yardclock.pages;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;

/**
 * One scripted live stream, poured to any number of pages: the newest frame at once, then each new
 * one, and a sign of life every second. Guarded by its own monitor.
 */
final class LiveStream {
    private static final long ALIVE_EVERY_NANOS = 1_000_000_000;

    private String frame;
    private long version;
    private boolean silent;
    private boolean closed;

    synchronized void show(String json) {
        frame = json;
        version++;
        notifyAll();
    }

    synchronized void fallSilent(boolean isSilent) {
        silent = isSilent;
        notifyAll();
    }

    synchronized void close() {
        closed = true;
        notifyAll();
    }

    /** Pours until the page leaves or the stream is closed. */
    void pour(OutputStream to) throws IOException, InterruptedException {
        long sent = 0;
        while (true) {
            String next;
            synchronized (this) {
                if (closed) {
                    return;
                }
                next = sent < version && !silent ? frame : null;
                sent = silent ? sent : version;
                if (next == null) {
                    next = waitForMore();
                }
            }
            if (next != null) {
                to.write(
                        next.startsWith(":")
                                ? next.getBytes(StandardCharsets.UTF_8)
                                : message(next));
                to.flush();
            }
        }
    }

    /** A sign of life after a quiet second, or null when something else is to be looked at. */
    private String waitForMore() throws InterruptedException {
        long before = version;
        boolean wasSilent = silent;
        long until = System.nanoTime() + ALIVE_EVERY_NANOS;
        while (!closed && version == before && silent == wasSilent) {
            long millis = (until - System.nanoTime()) / 1_000_000;
            if (millis <= 0) {
                return silent ? null : ": alive\n\n";
            }
            wait(millis);
        }
        return null;
    }

    private static byte[] message(String json) {
        return ("event: frame\ndata: " + json + "\n\n").getBytes(StandardCharsets.UTF_8);
    }
}
