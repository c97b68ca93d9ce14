package yardclock.sim.tablets;

import yardclock.sim.stage.Stage;

import java.util.function.Consumer;

/**
 * A server-sent stream that is opened again whenever it ends, after the last id it had. Retries run
 * in real time. Safe from any thread.
 */
public final class Stream implements MessageReader.Listener {
    private static final long RETRY_REAL_MILLIS = 300;
    private static final long STALE_REAL_NANOS = 3_000_000_000L;

    /** One message of a stream. */
    public record Message(String id, String kind, String data) {}

    private final Stage stage;
    private final Gateway gateway;
    private final String path;
    private final String token;
    private final Consumer<Message> onMessage;
    private volatile String lastId = "";
    private volatile long heardNanos = System.nanoTime() - STALE_REAL_NANOS;
    private volatile boolean closed;
    private volatile MessageReader reader;

    public Stream(
            Stage stage, Gateway gateway, String path, String token, Consumer<Message> onMessage) {
        this.stage = stage;
        this.gateway = gateway;
        this.path = path;
        this.token = token;
        this.onMessage = onMessage;
    }

    public void open() {
        if (closed) {
            return;
        }
        reader = new MessageReader(this);
        gateway.stream(
                new Gateway.StreamAddress(path, token, lastId),
                reader,
                () -> stage.afterRealMillis(RETRY_REAL_MILLIS, this::open));
    }

    /** Whether anything was heard in the last three seconds of real time. */
    public boolean isFresh() {
        return System.nanoTime() - heardNanos < STALE_REAL_NANOS;
    }

    public void close() {
        closed = true;
        MessageReader open = reader;
        if (open != null) {
            open.cancel();
        }
    }

    @Override
    public void message(String id, String kind, String data) {
        lastId = id;
        onMessage.accept(new Message(id, kind, data));
    }

    @Override
    public void heard() {
        heardNanos = System.nanoTime();
    }
}
