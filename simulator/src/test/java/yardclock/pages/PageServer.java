package yardclock.pages;

import com.fasterxml.jackson.databind.JsonNode;
import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;

import yardclock.app.json.Json;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * A gateway's outside without its inside: the dashboard's own files, scripted frames as live
 * streams, and an ear for acts. Frames can be set from the test's thread at any time.
 */
final class PageServer implements AutoCloseable {
    private static final String PAGE_POLICY =
            "default-src 'none'; script-src 'self' '%s'; style-src 'self' 'unsafe-inline';"
                    + " img-src 'self' data: blob:; connect-src 'self'; manifest-src 'self';"
                    + " worker-src 'self'; frame-src 'self' blob:;"
                    + " base-uri 'none'; form-action 'self'; frame-ancestors 'none'";

    private final HttpServer server;
    private final ExecutorService threads = Executors.newCachedThreadPool();
    private final Map<String, LiveStream> streams = new ConcurrentHashMap<>();
    private final Map<String, String> clocks = new ConcurrentHashMap<>();
    private final List<JsonNode> rulings = new CopyOnWriteArrayList<>();
    private final List<JsonNode> rejudgeQuestions = new CopyOnWriteArrayList<>();
    private final StaticFiles files = new StaticFiles();
    private volatile String answer = "{\"accepted\":true,\"entry\":1}";
    private volatile int status = 200;
    private volatile boolean deaf;
    private final List<JsonNode> clockAnswers = new CopyOnWriteArrayList<>();
    private final AtomicInteger wanted = new AtomicInteger();
    private volatile boolean comparing = true;
    private volatile CompletableFuture<String> dossier = CompletableFuture.completedFuture("");
    private final AtomicInteger cuts = new AtomicInteger();

    PageServer() {
        try {
            server =
                    HttpServer.create(
                            new InetSocketAddress(InetAddress.getLoopbackAddress(), 0), 50);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        server.setExecutor(threads);
        server.createContext("/", this::file);
        server.createContext("/api/live/", this::live);
        server.createContext("/api/rulings", this::ruling);
        server.createContext("/api/bench/rejudge", this::rejudge);
        server.createContext("/api/clock", this::ownClock);
        server.createContext("/api/clock-wanted", this::ownClock);
        server.createContext("/api/enrol", this::enrol);
        server.createContext("/api/clock/", this::clock);
        server.createContext("/api/dossier/", this::dossier);
        server.createContext(
                "/api/codes", exchange -> reply(exchange, 200, "{\"code\":\"K7MPQ2XW\"}"));
        server.start();
    }

    String address(String path) {
        return "http://127.0.0.1:" + server.getAddress().getPort() + path;
    }

    /** What the stream of this name shows from now on. */
    void show(String stream, String frame) {
        stream(stream).show(frame);
    }

    /** Every stream falls silent without closing, as a link does that dies on the way. */
    void fallSilent(boolean silent) {
        streams.values().forEach(stream -> stream.fallSilent(silent));
    }

    /** Every open stream ends; pages may open it again. */
    void dropLinks() {
        streams.values().forEach(LiveStream::cut);
    }

    /** Acts get no answer from now on; they are still read. */
    void fallDeaf(boolean isDeaf) {
        deaf = isDeaf;
    }

    /** The next so many acts are read, and their connections end without an answer. */
    void cutAnswers(int count) {
        cuts.set(count);
    }

    void answerWith(int code, String body) {
        status = code;
        answer = body;
    }

    List<JsonNode> rulings() {
        return rulings;
    }

    private LiveStream stream(String name) {
        return streams.computeIfAbsent(name, any -> new LiveStream());
    }

    private void live(HttpExchange exchange) throws IOException {
        String name = exchange.getRequestURI().getPath().substring("/api/live/".length());
        exchange.getResponseHeaders().set("Content-Type", "text/event-stream");
        exchange.getResponseHeaders().set("Cache-Control", "no-store");
        exchange.sendResponseHeaders(200, 0);
        try (OutputStream to = exchange.getResponseBody()) {
            stream(name).pour(to);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void ruling(HttpExchange exchange) throws IOException {
        rulings.add(Json.mapper().readTree(exchange.getRequestBody().readAllBytes()));
        if (cuts.getAndUpdate(left -> Math.max(0, left - 1)) > 0) {
            exchange.close();
        } else if (!deaf) {
            reply(exchange, status, answer);
        }
    }

    private void rejudge(HttpExchange exchange) throws IOException {
        rejudgeQuestions.add(Json.mapper().readTree(exchange.getRequestBody().readAllBytes()));
        reply(exchange, 200, ScriptedFrames.rejudged());
    }

    /** What was asked about other guards. */
    List<JsonNode> rejudgeQuestions() {
        return rejudgeQuestions;
    }

    /** What the picture of this unit's clock is from now on. */
    void showClock(String unit, String sheet) {
        clocks.put(unit, sheet);
    }

    private void clock(HttpExchange exchange) throws IOException {
        String unit = exchange.getRequestURI().getPath().substring("/api/clock/".length());
        String sheet = clocks.get(unit);
        if (sheet == null) {
            reply(exchange, 503, "{\"refused\":\"busy\",\"words\":\"-\"}");
        } else {
            reply(exchange, 200, sheet);
        }
    }

    /** Dossiers are this text from now on, once it is there; busy where it fails to be. */
    void giveDossiers(CompletableFuture<String> made) {
        dossier = made;
    }

    /** The text goes out with what was asked for in front of it. */
    private void dossier(HttpExchange exchange) throws IOException {
        String made = dossier.exceptionally(failed -> "").join();
        if (made.isEmpty()) {
            reply(exchange, 503, "{\"refused\":\"busy\",\"words\":\"-\"}");
        } else {
            reply(exchange, 200, exchange.getRequestURI() + " " + made);
        }
    }

    private void ownClock(HttpExchange exchange) throws IOException {
        if (exchange.getRequestURI().getPath().endsWith("-wanted")) {
            wanted.incrementAndGet();
            reply(exchange, 200, "{\"streams\":1}");
        } else {
            clockAnswers.add(Json.mapper().readTree(exchange.getRequestBody().readAllBytes()));
            reply(exchange, 200, "{\"compared\":" + comparing + "}");
        }
    }

    /** Whether the pages' clocks count as compared once they have answered. */
    void compareClocks(boolean compares) {
        comparing = compares;
    }

    List<JsonNode> clockAnswers() {
        return clockAnswers;
    }

    /** How often a page has asked to be asked. */
    int clockWanted() {
        return wanted.get();
    }

    private void enrol(HttpExchange exchange) throws IOException {
        JsonNode asked = Json.mapper().readTree(exchange.getRequestBody().readAllBytes());
        if ("PR0CT0R1".equals(asked.path("code").asText())) {
            reply(exchange, 200, "{\"token\":\"t\",\"device\":\"d-1\",\"role\":\"proctor\"}");
        } else {
            reply(exchange, 409, "{\"refused\":\"unknown-code\",\"words\":\"-\"}");
        }
    }

    private void file(HttpExchange exchange) throws IOException {
        StaticFiles.Found found = files.find(exchange.getRequestURI().getPath());
        exchange.getResponseHeaders().set("Content-Type", found.type());
        exchange.getResponseHeaders()
                .set("Content-Security-Policy", PAGE_POLICY.formatted(files.importMapHash()));
        exchange.sendResponseHeaders(
                found.status(), found.bytes().length == 0 ? -1 : found.bytes().length);
        try (OutputStream to = exchange.getResponseBody()) {
            to.write(found.bytes());
        }
    }

    private static void reply(HttpExchange exchange, int status, String body) throws IOException {
        byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
        try (InputStream rest = exchange.getRequestBody()) {
            rest.readAllBytes();
        }
        exchange.getResponseHeaders().set("Content-Type", "application/json");
        exchange.sendResponseHeaders(status, bytes.length);
        try (OutputStream to = exchange.getResponseBody()) {
            to.write(bytes);
        }
    }

    @Override
    public void close() {
        streams.values().forEach(LiveStream::cut);
        server.stop(0);
        threads.shutdownNow();
    }
}
