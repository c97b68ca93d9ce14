package yardclock.sim.tablets;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import yardclock.app.json.Json;
import yardclock.core.ruling.Act;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;

/**
 * The gateway as seen over HTTP. Safe from any thread; answers come on its own few threads.
 *
 * <p>Every question gets an {@link Answer}, a broken link being one too.
 */
public final class Gateway implements AutoCloseable {
    private static final Duration PATIENCE = Duration.ofSeconds(5);
    private static final int THREADS = 3;

    private final URI base;
    private final ExecutorService threads = Executors.newFixedThreadPool(THREADS, Gateway::thread);
    private final HttpClient client =
            HttpClient.newBuilder()
                    .version(HttpClient.Version.HTTP_1_1)
                    .connectTimeout(PATIENCE)
                    .executor(threads)
                    .build();

    public Gateway(URI base) {
        this.base = base;
    }

    private static Thread thread(Runnable run) {
        Thread thread = new Thread(run, "tablet-link");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * A status and what came with it.
     *
     * @param status of HTTP, or 0 when the link broke
     * @param body a missing node when it was not JSON
     */
    public record Answer(int status, JsonNode body) {
        static Answer noLink() {
            return new Answer(0, Json.mapper().missingNode());
        }

        public boolean isOk() {
            return status == 200;
        }

        /** Whether asking again later may help. */
        public boolean isTrouble() {
            return status == 0 || status >= 500;
        }

        /** The reason code of a refusal, or empty. */
        public String refused() {
            return body.path("refused").asText("");
        }
    }

    public CompletableFuture<Answer> enrol(String code, String person) {
        ObjectNode body = Json.mapper().createObjectNode();
        return post("/api/enrol", "", body.put("code", code).put("person", person));
    }

    /**
     * @param then gets the answer on one of the link's threads
     */
    void rule(String token, RulingToSend ruling, Consumer<Answer> then) {
        ObjectNode body = Json.mapper().createObjectNode();
        body.put("key", ruling.key()).put("boot", ruling.pressed().boot());
        body.put("deviceMicros", ruling.pressed().tick());
        body.put("basis", ruling.basis()).set("act", actTree(ruling.act()));
        CompletableFuture<Void> ignored = post("/api/rulings", token, body).thenAccept(then);
    }

    /** Answers a question to a tablet's clock; what comes back changes nothing here. */
    void answerClock(String token, String id, PageClock.Reading received, long sentTick) {
        ObjectNode body = Json.mapper().createObjectNode();
        body.put("id", id).put("boot", received.boot());
        body.put("received", received.tick()).put("sent", sentTick);
        CompletableFuture<Answer> ignored = post("/api/clock", token, body);
    }

    /** Asks to be asked, after a tablet's clock has started anew. */
    void wantClock(String token) {
        CompletableFuture<Answer> ignored =
                post("/api/clock-wanted", token, Json.mapper().createObjectNode());
    }

    private static JsonNode actTree(Act act) {
        try {
            return Json.mapper().readTree(Json.mapper().writeValueAsBytes(act));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    public CompletableFuture<Answer> newCode(String token, String role) {
        return post("/api/codes", token, Json.mapper().createObjectNode().put("role", role));
    }

    public CompletableFuture<Answer> get(String path, String token) {
        return send(request(path, token).GET().build());
    }

    private CompletableFuture<Answer> post(String path, String token, JsonNode body) {
        HttpRequest.BodyPublisher text = HttpRequest.BodyPublishers.ofString(body.toString());
        HttpRequest.Builder request = request(path, token).POST(text);
        return send(request.header("Content-Type", "application/json").build());
    }

    private HttpRequest.Builder request(String path, String token) {
        HttpRequest.Builder request = HttpRequest.newBuilder(base.resolve(path)).timeout(PATIENCE);
        return token.isEmpty() ? request : request.header("Authorization", "Bearer " + token);
    }

    private CompletableFuture<Answer> send(HttpRequest request) {
        return client.sendAsync(request, HttpResponse.BodyHandlers.ofByteArray())
                .thenApply(answer -> new Answer(answer.statusCode(), json(answer.body())))
                .exceptionally(broken -> Answer.noLink());
    }

    private static JsonNode json(byte[] body) {
        try {
            return Json.mapper().readTree(body);
        } catch (IOException e) {
            return Json.mapper().missingNode();
        }
    }

    /**
     * Opens a stream of server-sent messages.
     *
     * @param ended run on one of the link's threads when it ends, for whatever cause
     */
    void stream(StreamAddress from, MessageReader to, Runnable ended) {
        HttpRequest.Builder request =
                HttpRequest.newBuilder(base.resolve(from.path()))
                        .header("Accept", "text/event-stream");
        if (!from.token().isEmpty()) {
            request.header("Authorization", "Bearer " + from.token());
        }
        if (!from.after().isEmpty()) {
            request.header("Last-Event-ID", from.after());
        }
        HttpResponse.BodyHandler<Void> lines =
                status ->
                        HttpResponse.BodySubscribers.fromLineSubscriber(
                                to, reader -> null, StandardCharsets.UTF_8, null);
        CompletableFuture<Void> ignored =
                client.sendAsync(request.GET().build(), lines)
                        .handle(
                                (answer, broken) -> {
                                    ended.run();
                                    return null;
                                });
    }

    /**
     * Where a stream is and how far one has read it.
     *
     * @param after the last id that was read, or empty
     */
    record StreamAddress(String path, String token, String after) {}

    @Override
    public void close() {
        threads.shutdownNow();
    }
}
