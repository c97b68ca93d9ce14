package yardclock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import yardclock.app.web.SseClient.Message;
import yardclock.core.engine.Engine.View;
import yardclock.core.ruling.Role;

import java.io.InputStream;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

class LiveStreamsTest {
    private final List<AutoCloseable> opened = new ArrayList<>();

    @AfterEach
    void closeAll() throws Exception {
        for (int i = opened.size() - 1; i >= 0; i--) {
            opened.get(i).close();
        }
    }

    private WebBench bench() {
        return bench(WebLimits.IDLE_MILLIS);
    }

    private WebBench bench(int idleMillis) {
        WebBench bench = new WebBench(idleMillis);
        opened.add(bench);
        return bench;
    }

    private SseClient listen(WebBench bench, String path, Role role) throws Exception {
        SseClient client = new SseClient(bench.client, bench.request(path, role).build());
        opened.add(client);
        return client;
    }

    private static void draw(WebBench bench) {
        bench.lane.onThread(() -> bench.server.live().accept(null, new View(5, List.of())));
    }

    @Test
    void aPageGetsAFrameAtOnceAndEachLaterOne() throws Exception {
        WebBench bench = bench();
        SseClient page = listen(bench, "/api/live/board", null);
        await().until(() -> page.messages.size() == 1);
        assertThat(page.response.headers().firstValue("Content-Type").orElse(""))
                .startsWith("text/event-stream");
        draw(bench);
        await().until(() -> page.messages.size() == 2);
        Message newest = page.messages.get(1);
        assertThat(newest.name()).isEqualTo("frame");
        assertThat(newest.id()).isEqualTo(bench.frames.get());
        assertThat(newest.data()).contains("\"frame\":" + newest.id());
    }

    @Test
    void onlyAudiencesSomebodyListensToAreDrawn() throws Exception {
        WebBench bench = bench();
        draw(bench);
        assertThat(bench.frames).hasValue(0);
        SseClient one = listen(bench, "/api/live/board", null);
        SseClient two = listen(bench, "/api/live/board", null);
        await().until(() -> !one.messages.isEmpty() && !two.messages.isEmpty());
        long before = bench.frames.get();
        draw(bench);
        assertThat(bench.frames).hasValue(before + 1);
    }

    @Test
    void aProctorGetsTheFramesOfTheirOwnDevice() throws Exception {
        WebBench bench = bench();
        SseClient page = listen(bench, "/api/live/post", Role.PROCTOR);
        await().until(() -> page.messages.stream().anyMatch(m -> m.name().equals("frame")));
        assertThat(page.messages)
                .filteredOn(m -> m.name().equals("frame"))
                .allMatch(m -> m.data().contains("t-proctor"));
    }

    @Test
    void lifeIsShownEachSecond() throws Exception {
        SseClient page = listen(bench(), "/api/live/board", null);
        await().atMost(Duration.ofSeconds(4)).until(() -> page.comments.size() >= 2);
        assertThat(page.comments).containsOnly(": alive");
    }

    @Test
    void aTabletThatDoesNotReadStallsNobody() throws Exception {
        WebBench bench = bench();
        bench.padding = "x".repeat(200_000);
        try (Socket stalled = stalledClient(bench)) {
            SseClient reader = listen(bench, "/api/live/board", null);
            await().until(() -> bench.server.live().open() == 2);
            await().until(() -> !reader.messages.isEmpty());
            // 100 frames of 200 kB are far more than the sockets' buffers take in.
            for (int i = 0; i < 100; i++) {
                long begun = System.nanoTime();
                draw(bench);
                long number = bench.frames.get();
                await().pollInterval(Duration.ofMillis(1))
                        .atMost(Duration.ofSeconds(2))
                        .until(() -> newest(reader) >= number);
                assertThat(Duration.ofNanos(System.nanoTime() - begun))
                        .isLessThan(Duration.ofSeconds(2));
            }
            assertThat(stalled.isConnected()).isTrue();
        }
    }

    @Test
    void aTabletThatCatchesUpGetsTheNewestFrameAndNotTheMissedOnes() throws Exception {
        WebBench bench = bench();
        bench.padding = "x".repeat(200_000);
        try (Socket stalled = stalledClient(bench)) {
            await().until(() -> bench.server.live().open() == 1);
            for (int i = 0; i < 100; i++) {
                draw(bench);
            }
            long newest = bench.frames.get();
            String seen = readUntil(stalled, "\"frame\":" + newest + ",");
            assertThat(seen.split("event: frame", -1)).hasSizeLessThan(60);
        }
    }

    @Test
    void aTabletThatStaysStalledLosesItsPlace() throws Exception {
        WebBench bench = bench(1_000);
        bench.padding = "x".repeat(200_000);
        try (Socket stalled = stalledClient(bench)) {
            await().until(() -> bench.server.live().open() == 1);
            await().atMost(Duration.ofSeconds(10))
                    .until(
                            () -> {
                                draw(bench);
                                return bench.server.live().open() == 0;
                            });
            assertThat(stalled.isClosed()).isFalse();
        }
    }

    @Test
    void aClosedPageGivesItsPlaceBack() throws Exception {
        WebBench bench = bench();
        SseClient page = listen(bench, "/api/live/board", null);
        await().until(() -> bench.server.live().open() == 1);
        page.close();
        await().until(() -> bench.server.live().open() == 0);
    }

    @Test
    void theSixtyFifthStreamIsRefusedInWords() throws Exception {
        WebBench bench = bench();
        for (int i = 0; i < WebLimits.STREAMS; i++) {
            listen(bench, "/api/live/board", null);
        }
        HttpResponse<String> refused = bench.get("/api/live/board", null);
        assertThat(refused.statusCode()).isEqualTo(503);
        assertThat(refused.body()).contains("\"refused\":\"too-many-streams\"");
        assertThat(bench.get("/api/state", null).statusCode()).isEqualTo(200);
    }

    @Test
    void aStopEndsTheStreamsAndIsNotHeldUpByAStalledOne() throws Exception {
        WebBench bench = new WebBench();
        bench.padding = "x".repeat(200_000);
        SseClient page = listen(bench, "/api/live/board", null);
        try (Socket stalled = stalledClient(bench)) {
            await().until(() -> bench.server.live().open() == 2);
            for (int i = 0; i < 30; i++) {
                draw(bench);
            }
            long begun = System.nanoTime();
            bench.close();
            assertThat(Duration.ofNanos(System.nanoTime() - begun))
                    .isLessThan(Duration.ofMillis(WebLimits.STOP_MILLIS + 3_000));
            await().until(() -> page.ended);
            assertThat(stalled.isConnected()).isTrue();
        }
    }

    private static long newest(SseClient client) {
        return client.messages.isEmpty()
                ? -1
                : client.messages.get(client.messages.size() - 1).id();
    }

    /** Asks for the board and then reads nothing; its own buffer is small. */
    private static Socket stalledClient(WebBench bench) throws Exception {
        Socket socket = new Socket();
        socket.setReceiveBufferSize(4_096);
        socket.connect(new InetSocketAddress("127.0.0.1", bench.server.port()));
        String host = "127.0.0.1:" + bench.server.port();
        String request = "GET /api/live/board HTTP/1.1\r\nHost: " + host + "\r\n\r\n";
        socket.getOutputStream().write(request.getBytes(StandardCharsets.US_ASCII));
        return socket;
    }

    private static String readUntil(Socket socket, String wanted) throws Exception {
        socket.setSoTimeout(10_000);
        StringBuilder seen = new StringBuilder();
        byte[] buffer = new byte[65_536];
        InputStream in = socket.getInputStream();
        while (seen.indexOf(wanted) < 0) {
            int n = in.read(buffer);
            assertThat(n).as("the stream went on until the newest frame").isPositive();
            seen.append(new String(buffer, 0, n, StandardCharsets.UTF_8));
        }
        return seen.toString();
    }
}
