package yardclock.sim.tablets;

import com.fasterxml.jackson.databind.JsonNode;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;

import yardclock.app.json.Json;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;

/** A web server that says what a test tells it to say, on a free port. */
final class StubGateway implements AutoCloseable {
    private static final int ENTRIES_BEFORE = 5;

    final List<JsonNode> rulings = new CopyOnWriteArrayList<>();
    final List<String> lastIds = new CopyOnWriteArrayList<>();
    private final ArrayDeque<Reply> replies = new ArrayDeque<>();
    private final List<OutputStream> streams = new ArrayList<>();
    private final HttpServer server;
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private String newest = "";
    private int nextId;

    private record Reply(int status, String body) {}

    StubGateway() throws IOException {
        InetSocketAddress anyPort = new InetSocketAddress(InetAddress.getLoopbackAddress(), 0);
        server = HttpServer.create(anyPort, 0);
        server.setExecutor(threads);
        server.createContext("/api/rulings", this::rule);
        server.createContext("/api/live", this::stream);
        server.start();
    }

    Gateway gateway() {
        return new Gateway(URI.create("http://127.0.0.1:" + server.getAddress().getPort()));
    }

    /** What the next ruling that is not answered yet gets; without it, acceptance. */
    synchronized void answerNext(int status, String body) {
        replies.addLast(new Reply(status, body));
    }

    private void rule(HttpExchange exchange) throws IOException {
        rulings.add(Json.mapper().readTree(exchange.getRequestBody()));
        Reply reply;
        synchronized (this) {
            reply = replies.isEmpty() ? accepted() : replies.removeFirst();
        }
        byte[] body = reply.body().getBytes(StandardCharsets.UTF_8);
        exchange.sendResponseHeaders(reply.status(), body.length);
        try (OutputStream out = exchange.getResponseBody()) {
            out.write(body);
        }
    }

    /** The first ruling is entry 6, and so on. */
    private Reply accepted() {
        int entry = ENTRIES_BEFORE + rulings.size();
        return new Reply(200, "{\"accepted\":true,\"entry\":" + entry + "}");
    }

    private synchronized void stream(HttpExchange exchange) throws IOException {
        String lastId = exchange.getRequestHeaders().getFirst("Last-Event-ID");
        lastIds.add(lastId == null ? "" : lastId);
        exchange.getResponseHeaders().add("Content-Type", "text/event-stream");
        exchange.sendResponseHeaders(200, 0);
        streams.add(exchange.getResponseBody());
        if (!newest.isEmpty()) {
            write(newest);
        }
    }

    synchronized void show(Object frame) {
        try {
            String json = Json.mapper().writeValueAsString(frame);
            newest = "id: " + ++nextId + "\nevent: frame\ndata: " + json + "\n\n";
            write(newest);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void write(String text) throws IOException {
        for (OutputStream stream : streams) {
            stream.write(text.getBytes(StandardCharsets.UTF_8));
            stream.flush();
        }
    }

    synchronized void cutStreams() throws IOException {
        for (OutputStream stream : streams) {
            stream.close();
        }
        streams.clear();
    }

    /** The acts so far, as their words in JSON. */
    List<String> acts() {
        return rulings.stream().map(ruling -> ruling.path("act").path("act").asText()).toList();
    }

    @Override
    public void close() {
        server.stop(0);
        threads.shutdownNow();
    }
}
