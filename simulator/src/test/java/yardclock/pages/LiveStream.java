package yardclock.pages;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * One scripted live stream, poured to any number of pages: the newest frame at once, then each new
 * one, and a sign of life every second. Guarded by its own monitor.
 */
final class LiveStream {
    private static final long ALIVE_EVERY_MILLIS = 1000;
    private static final String ALIVE = ": alive\n\n";

    private static final String QUESTION =
            "event: clock\ndata: {\"id\":\"q%d\",\"gatewayMicros\":5,\"speed\":1}\n\n";

    private final AtomicInteger questions = new AtomicInteger();
    private String frame = "";
    private long version;
    private long changes;
    private int cuts;
    private boolean silent;

    synchronized void show(String json) {
        frame = "event: frame\ndata: " + json + "\n\n";
        version++;
        changed();
    }

    synchronized void fallSilent(boolean isSilent) {
        silent = isSilent;
        changed();
    }

    /** Ends every connection there is now. */
    synchronized void cut() {
        cuts++;
        changed();
    }

    private void changed() {
        changes++;
        notifyAll();
    }

    /**
     * Asks the page's clock once, when it is quiet, and pours until the page leaves or the
     * connection is cut.
     */
    void pour(OutputStream to) throws IOException, InterruptedException {
        Pouring pouring = new Pouring();
        for (String piece = pouring.next(); piece != null; piece = pouring.next()) {
            to.write(piece.getBytes(StandardCharsets.UTF_8));
            to.flush();
            if (!pouring.asked && (piece.equals(ALIVE) || piece.isEmpty())) {
                pouring.asked = true;
                String question = QUESTION.formatted(questions.incrementAndGet());
                to.write(question.getBytes(StandardCharsets.UTF_8));
                to.flush();
            }
        }
    }

    /** How far one connection has come. */
    private final class Pouring {
        private final int cutsBefore = cuts;
        private long sent;
        private boolean asked;

        /** The next piece, possibly empty; null when the connection is to end. */
        String next() throws InterruptedException {
            synchronized (LiveStream.this) {
                if (!silent && sent < version) {
                    sent = version;
                    return frame;
                }
                boolean quiet = waitForChange();
                return cuts > cutsBefore ? null : quiet && !silent ? ALIVE : "";
            }
        }

        private boolean waitForChange() throws InterruptedException {
            long before = changes;
            long until = System.currentTimeMillis() + ALIVE_EVERY_MILLIS;
            while (changes == before) {
                long left = until - System.currentTimeMillis();
                if (left <= 0) {
                    return true;
                }
                LiveStream.this.wait(left);
            }
            return false;
        }
    }
}
