package yardclock.app.web;

import jakarta.servlet.ServletOutputStream;
import jakarta.servlet.WriteListener;

import java.io.IOException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.atomic.AtomicBoolean;

/**
 * One open connection to a tablet. Never blocks: bytes are handed to the server only when it says
 * that it can take them, and it calls back when it can again.
 *
 * <p>All writing happens on the pump thread; other threads only {@link #wake} it.
 */
final class LiveStream implements WriteListener {
    private final ServletOutputStream out;
    private final Chunks chunks;
    private final Executor pump;
    private final AtomicBoolean woken = new AtomicBoolean();
    private final CompletableFuture<Void> closed = new CompletableFuture<>();
    private volatile boolean begun;
    private volatile boolean aliveDue;
    private boolean flushDue;

    LiveStream(ServletOutputStream out, Chunks chunks, Executor pump) {
        this.out = out;
        this.chunks = chunks;
        this.pump = pump;
    }

    /** Completes once, whoever ends the stream. */
    CompletableFuture<Void> closed() {
        return closed;
    }

    /** Does this when the stream has ended, or at once when it has already. */
    void whenClosed(Runnable after) {
        var unused = closed.thenRun(after);
    }

    void close() {
        closed.complete(null);
    }

    void sendAlive() {
        aliveDue = true;
        wake();
    }

    /** There may be something to send. Any thread. */
    void wake() {
        if (begun && !closed.isDone() && woken.compareAndSet(false, true)) {
            try {
                pump.execute(this::drain);
            } catch (RejectedExecutionException e) {
                close();
            }
        }
    }

    private void drain() {
        woken.set(false);
        try {
            while (!closed.isDone() && out.isReady()) {
                if (!writeNext()) {
                    return;
                }
            }
        } catch (IOException | IllegalStateException e) {
            close();
        }
    }

    private boolean writeNext() throws IOException {
        byte[] chunk = next();
        if (chunk != null) {
            out.write(chunk);
            flushDue = true;
        } else if (flushDue) {
            flushDue = false;
            out.flush();
        } else {
            return false;
        }
        return true;
    }

    private byte[] next() {
        if (aliveDue) {
            aliveDue = false;
            return SseText.alive();
        }
        return chunks.next();
    }

    @Override
    public void onWritePossible() {
        begun = true;
        wake();
    }

    @Override
    public void onError(Throwable trouble) {
        close();
    }
}
