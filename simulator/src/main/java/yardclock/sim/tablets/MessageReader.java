package yardclock.sim.tablets;

import java.util.concurrent.Flow;

/**
 * Puts the lines of a server-sent stream together to messages, as the HTML standard's section
 * "Server-sent events" says. Comments only show that the link is alive.
 *
 * <p>Runs on the link's threads, one line at a time.
 */
final class MessageReader implements Flow.Subscriber<String> {
    /** Who gets the messages. */
    interface Listener {
        void message(String id, String kind, String data);

        /** Any sign of life, comments included. */
        void heard();
    }

    private final Listener listener;
    private final StringBuilder data = new StringBuilder();
    private String id = "";
    private String kind = "";
    private volatile Flow.Subscription subscription;

    MessageReader(Listener listener) {
        this.listener = listener;
    }

    @Override
    public void onSubscribe(Flow.Subscription begun) {
        subscription = begun;
        begun.request(Long.MAX_VALUE);
    }

    @Override
    public void onNext(String line) {
        listener.heard();
        if (line.isEmpty()) {
            dispatch();
        } else if (!line.startsWith(":")) {
            int colon = line.indexOf(':');
            String name = colon < 0 ? line : line.substring(0, colon);
            String value = colon < 0 ? "" : line.substring(colon + 1);
            take(name, value.startsWith(" ") ? value.substring(1) : value);
        }
    }

    private void take(String name, String value) {
        switch (name) {
            case "id" -> id = value;
            case "event" -> kind = value;
            case "data" -> data.append(data.length() == 0 ? "" : "\n").append(value);
            default -> {
                // the standard says to ignore other names
            }
        }
    }

    private void dispatch() {
        if (data.length() > 0) {
            listener.message(id, kind, data.toString());
        }
        data.setLength(0);
        kind = "";
    }

    void cancel() {
        Flow.Subscription begun = subscription;
        if (begun != null) {
            begun.cancel();
        }
    }

    @Override
    public void onError(Throwable cause) {
        // the stream's future says it too
    }

    @Override
    public void onComplete() {
        // the stream's future says it too
    }
}
