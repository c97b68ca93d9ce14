package yardclock.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.journal.JournalReader;
import yardclock.app.json.Json;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.LongStream;

class ServeProcessTest {
    private static final Duration PATIENCE = Duration.ofSeconds(40);
    private static final long LAST = 999;

    @TempDir Path data;

    private String http;
    private String mqtt;

    @BeforeEach
    void findFreePorts() throws IOException {
        http = "127.0.0.1:" + freePort();
        mqtt = "127.0.0.1:" + freePort();
    }

    @Test
    void nothingKeptIsMissingAfterAKillAndTheDayGoesOn() throws Exception {
        SteadyUnit unit = new SteadyUnit(data, mqtt);
        long keptBeforeTheKill;
        try (GatewayProcess gateway = GatewayProcess.serve(data, http, mqtt)) {
            CompletableFuture<Void> sending = CompletableFuture.runAsync(() -> send(unit));
            await().atMost(PATIENCE).until(() -> unit.keptUpTo() >= 200);
            gateway.kill();
            keptBeforeTheKill = unit.keptUpTo();
            sending.join();
        }
        assertThat(edges(entries())).contains(keptBeforeTheKill);

        JsonNode live;
        try (GatewayProcess gateway = GatewayProcess.serve(data, http, mqtt)) {
            send(unit);
            awaitKept(unit, LAST);
            unit.disconnect();
            live = state();
            assertThat(gateway.stop()).isZero();
        }
        List<Entry> entries = entries();
        // The broker may mix what it delivers again with what is new; only nothing may be missing.
        assertThat(edges(entries).stream().distinct().sorted().toList())
                .isEqualTo(LongStream.rangeClosed(0, LAST).boxed().toList());
        assertThat(epochs(entries)).containsExactly(false, true);
        assertThat(entries.stream().map(Entry::gatewayMicros).toList()).isSorted();
        assertThat(digest(entries, live.path("entries").asLong()))
                .isEqualTo(live.path("digest").asText());
    }

    @Test
    void anotherJvmDerivesTheSameStateFromTheSameFile() throws Exception {
        SteadyUnit unit = new SteadyUnit(data, mqtt);
        try (GatewayProcess gateway = GatewayProcess.serve(data, http, mqtt)) {
            unit.sendUpTo(99);
            awaitKept(unit, 99);
            unit.disconnect();
            assertThat(gateway.stop()).isZero();
        }
        List<Entry> entries = entries();
        JsonNode printed =
                Json.mapper().readTree(GatewayProcess.print("replay", journal().toString()));
        assertThat(printed.path("entries").asLong()).isEqualTo(entries.size());
        assertThat(printed.path("digest").asText()).isEqualTo(digest(entries, entries.size()));
    }

    private static void awaitKept(SteadyUnit unit, long last) {
        await().atMost(PATIENCE)
                .pollInterval(Duration.ofMillis(500))
                .until(
                        () -> {
                            unit.reportHealth(last);
                            return unit.keptUpTo() == last;
                        });
    }

    private static void send(SteadyUnit unit) {
        try {
            unit.sendUpTo(LAST);
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private JsonNode state() throws Exception {
        URI address = URI.create("http://" + http + "/api/state");
        HttpResponse<String> answer =
                HttpClient.newHttpClient()
                        .send(
                                HttpRequest.newBuilder(address).build(),
                                HttpResponse.BodyHandlers.ofString());
        return Json.mapper().readTree(answer.body());
    }

    private Path journal() {
        return data.resolve("journal.db");
    }

    private List<Entry> entries() throws Exception {
        List<Entry> entries = new ArrayList<>();
        try (JournalReader reader = JournalReader.open(journal())) {
            reader.entries(entries::add);
        }
        return entries;
    }

    private static String digest(List<Entry> entries, long upTo) {
        Engine engine = new Engine();
        entries.stream().filter(entry -> entry.number() <= upTo).forEach(engine::apply);
        return engine.digest();
    }

    private static List<Long> edges(List<Entry> entries) {
        return entries.stream()
                .filter(entry -> entry.input() instanceof Input.Edge)
                .map(entry -> ((Input.Edge) entry.input()).seq())
                .toList();
    }

    private static List<Boolean> epochs(List<Entry> entries) {
        return entries.stream()
                .filter(entry -> entry.input() instanceof Input.Epoch)
                .map(entry -> ((Input.Epoch) entry.input()).continuous())
                .toList();
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }
}
