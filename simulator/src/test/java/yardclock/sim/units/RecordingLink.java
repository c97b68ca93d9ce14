package yardclock.sim.units;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** A link that takes everything while it is up, and hands over when a test says so. */
final class RecordingLink implements UnitLink {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    final List<Message> sent = new ArrayList<>();
    private final List<Runnable> handed = new ArrayList<>();
    private Receiver receiver;
    private boolean up;

    @Override
    public void open(Receiver to) {
        receiver = to;
    }

    void comeUp() {
        up = true;
        receiver.up();
    }

    void goDown() {
        up = false;
        receiver.down();
    }

    @Override
    public boolean publish(Message message, Runnable whenHanded) {
        if (up) {
            sent.add(message);
            handed.add(whenHanded);
        }
        return up;
    }

    void acknowledgeAll() {
        List<Runnable> all = new ArrayList<>(handed);
        handed.clear();
        all.forEach(Runnable::run);
    }

    void say(String name, String json) {
        receiver.arrived(name, json.getBytes(java.nio.charset.StandardCharsets.UTF_8));
    }

    /** Every edge of every message so far, in the order sent. */
    List<JsonNode> edges() {
        List<JsonNode> edges = new ArrayList<>();
        for (JsonNode message : messages("edges")) {
            if (message.isArray()) {
                message.forEach(edges::add);
            } else {
                edges.add(message);
            }
        }
        return edges;
    }

    List<JsonNode> messages(String name) {
        return sent.stream()
                .filter(message -> message.name().equals(name))
                .map(RecordingLink::read)
                .toList();
    }

    private static JsonNode read(Message message) {
        try {
            return JSON.readTree(message.payload());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void breakOff() {
        goDown();
    }

    @Override
    public void close() {
        up = false;
    }
}
