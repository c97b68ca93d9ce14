package yardclock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import yardclock.app.json.Json;
import yardclock.app.lane.Limits;
import yardclock.app.web.SseClient.Message;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Role;

import java.util.ArrayList;
import java.util.List;

class FeedTest {
    private final WebBench bench = new WebBench();
    private final List<SseClient> clients = new ArrayList<>();
    private long entry;

    @BeforeEach
    void fill() {
        conclude(3);
    }

    @AfterEach
    void close() throws Exception {
        for (SseClient client : clients) {
            client.close();
        }
        bench.close();
    }

    /** Each entry concludes two facts that are on the feed and one that is not. */
    private void conclude(int entries) {
        for (int i = 0; i < entries; i++) {
            entry++;
            Fact start = Fact.of(FactKind.MARK_PROPOSED, 12, "low-deck", "start");
            Fact taken = Fact.aboutUnit(FactKind.EDGE_TAKEN, "fu-04", "");
            Fact split = Fact.of(FactKind.SPLIT_PROPOSED, 12, "low-deck", "clean");
            bench.feed.add(
                    new Entry(entry, entry * 10, new Input.Deadline()),
                    List.of(start, taken, split));
        }
    }

    private SseClient follow(String path, String lastId) throws Exception {
        var request = bench.request(path, Role.TECHNICIAN);
        if (lastId != null) {
            request.header("Last-Event-ID", lastId);
        }
        SseClient client = new SseClient(bench.client, request.build());
        clients.add(client);
        return client;
    }

    private static List<Long> ids(SseClient client) {
        return client.messages.stream().map(Message::id).toList();
    }

    @Test
    void aClientThatGivesItsLastNumberGetsEveryFactAfterIt() throws Exception {
        SseClient client = follow("/api/feed", "3");
        await().until(() -> client.messages.size() == 3);
        conclude(1);
        await().until(() -> client.messages.size() == 5);
        assertThat(ids(client)).containsExactly(4L, 5L, 6L, 7L, 8L);
        var first = Json.mapper().readTree(client.messages.get(0).data());
        assertThat(client.messages.get(0).name()).isEqualTo("fact");
        assertThat(first.path("frame").asLong()).isEqualTo(4);
        assertThat(first.path("entry").asLong()).isEqualTo(2);
        assertThat(first.path("gatewayMicros").asLong()).isEqualTo(20);
        assertThat(first.path("fact").path("kind").asText()).isEqualTo("split-proposed");
    }

    @Test
    void theNumberMayAlsoStandInTheAddress() throws Exception {
        SseClient client = follow("/api/feed?after=0", null);
        await().until(() -> client.messages.size() == 6);
        assertThat(ids(client)).containsExactly(1L, 2L, 3L, 4L, 5L, 6L);
    }

    @Test
    void withoutANumberTheFeedBeginsNow() throws Exception {
        SseClient client = follow("/api/feed", null);
        await().until(() -> bench.server.live().open() == 1);
        conclude(1);
        await().until(() -> client.messages.size() == 2);
        assertThat(ids(client)).containsExactly(7L, 8L);
    }

    @Test
    void aNumberThatIsNoLongerHeldBringsOneResetFirst() throws Exception {
        conclude(Limits.FEED_ITEMS / 2);
        SseClient client = follow("/api/feed?after=2", null);
        await().until(() -> client.messages.size() == Limits.FEED_ITEMS + 1);
        assertThat(client.messages.get(0).name()).isEqualTo("reset");
        assertThat(client.messages.get(0).data()).isEqualTo("{\"after\":6}");
        assertThat(client.messages.get(1).id()).isEqualTo(7);
        assertThat(client.messages.stream().filter(m -> m.name().equals("reset"))).hasSize(1);
    }

    @Test
    void aNumberThatWasNeverGivenOutBringsAReset() throws Exception {
        SseClient client = follow("/api/feed?after=999", null);
        await().until(() -> client.messages.size() == 7);
        assertThat(client.messages.get(0).name()).isEqualTo("reset");
        assertThat(client.messages.get(1).id()).isEqualTo(1);
    }

    @Test
    void somethingThatIsNoNumberIsRefused() throws Exception {
        for (String after : List.of("-1", "x", "99999999999999999999", "")) {
            var refused = bench.get("/api/feed?after=" + after, Role.TECHNICIAN);
            assertThat(refused.statusCode()).as(after).isEqualTo(400);
            assertThat(refused.body()).contains("\"refused\":\"malformed\"");
        }
    }
}
