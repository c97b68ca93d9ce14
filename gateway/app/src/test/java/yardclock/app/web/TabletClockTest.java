package yardclock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import yardclock.app.json.Json;
import yardclock.core.engine.Input;
import yardclock.core.ruling.Role;

import java.net.http.HttpResponse;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/** Questions to tablets' clocks on their streams, and the answers, good and bad. */
class TabletClockTest {
    private final WebBench bench = new WebBench();
    private final List<SseClient> streams = new ArrayList<>();

    @AfterEach
    void close() throws Exception {
        for (SseClient stream : streams) {
            stream.close();
        }
        bench.close();
    }

    @Test
    void a_question_is_answered_and_becomes_an_input_with_all_four_stamps() throws Exception {
        JsonNode question = question(listen("/api/live/post", Role.PROCTOR), 0);
        HttpResponse<String> said = answer(Role.PROCTOR, question, "boot-1", 7_000, 7_020);
        assertThat(said.statusCode()).as(said.body()).isEqualTo(200);
        Input.TabletExchange taken = (Input.TabletExchange) bench.lane.taken().get(0);
        assertThat(taken.device()).isEqualTo("t-proctor");
        assertThat(taken.boot()).isEqualTo("boot-1");
        assertThat(taken.id()).isEqualTo(question.path("id").asText());
        assertThat(taken.gatewaySentMicros()).isEqualTo(question.path("gatewayMicros").asLong());
        assertThat(taken.tabletReceivedTick()).isEqualTo(7_000);
        assertThat(taken.tabletSentTick()).isEqualTo(7_020);
        assertThat(taken.gatewayReceivedMicros()).isGreaterThan(taken.gatewaySentMicros());
    }

    @Test
    void a_stream_begins_with_a_burst_and_each_id_is_new() throws Exception {
        SseClient stream = listen("/api/live/crew", Role.CREW);
        await().atMost(Duration.ofSeconds(10)).until(() -> questions(stream).size() >= 4);
        assertThat(questions(stream))
                .extracting(q -> q.path("id").asText())
                .doesNotHaveDuplicates();
        assertThat(questions(stream)).allMatch(q -> q.path("speed").asInt() == 1);
    }

    @Test
    void a_page_with_a_new_clock_is_asked_again_on_its_own_streams_alone() throws Exception {
        listen("/api/live/post", Role.PROCTOR);
        listen("/api/live/crew", Role.CREW);
        await().until(() -> bench.server.live().open() == 2);
        HttpResponse<String> said = bench.post("/api/clock-wanted", Role.PROCTOR, "{}");
        assertThat(said.body()).isEqualTo("{\"streams\":1}");
    }

    @Test
    void the_public_board_is_asked_nothing() throws Exception {
        SseClient board = listen("/api/live/board", Role.PROCTOR);
        await().until(() -> board.comments.size() >= 2);
        assertThat(questions(board)).isEmpty();
    }

    @Test
    void an_id_nobody_gave_out_is_refused() throws Exception {
        JsonNode invented = Json.mapper().createObjectNode().put("id", "0011223344556677");
        refused(answer(Role.PROCTOR, invented, "b", 1, 2), 409, "exchange-unknown");
    }

    @Test
    void an_id_is_good_for_one_answer() throws Exception {
        JsonNode question = question(listen("/api/live/post", Role.PROCTOR), 0);
        assertThat(answer(Role.PROCTOR, question, "b", 1, 2).statusCode()).isEqualTo(200);
        refused(answer(Role.PROCTOR, question, "b", 3, 4), 409, "exchange-used");
        assertThat(bench.lane.taken()).hasSize(1);
    }

    @Test
    void another_devices_id_is_refused_and_left_to_its_own() throws Exception {
        JsonNode question = question(listen("/api/live/post", Role.PROCTOR), 0);
        refused(answer(Role.CREW, question, "b", 1, 2), 403, "exchange-not-yours");
        assertThat(answer(Role.PROCTOR, question, "b", 1, 2).statusCode()).isEqualTo(200);
    }

    @Test
    void what_cannot_be_a_clocks_answer_is_malformed() throws Exception {
        String id = question(listen("/api/live/post", Role.PROCTOR), 0).path("id").asText();
        List<String> bodies =
                List.of(
                        "{}",
                        "{\"id\":\"" + id + "\",\"boot\":\"b\",\"received\":5,\"sent\":4}",
                        "{\"id\":\"" + id + "\",\"boot\":\"\",\"received\":5,\"sent\":6}",
                        "{\"id\":\"" + id + "\",\"boot\":\"b\",\"received\":-1,\"sent\":6}",
                        "{\"id\":\"" + id + "\",\"boot\":\"b\",\"received\":1.5,\"sent\":6}",
                        "{\"id\":7,\"boot\":\"b\",\"received\":5,\"sent\":6}",
                        "{\"id\":\""
                                + "x".repeat(65)
                                + "\",\"boot\":\"b\",\"received\":5,\"sent\":6}");
        for (String body : bodies) {
            refused(bench.post("/api/clock", Role.PROCTOR, body), 400, "malformed");
        }
        assertThat(bench.lane.taken()).isEmpty();
    }

    private SseClient listen(String path, Role role) throws Exception {
        SseClient client = new SseClient(bench.client, bench.request(path, role).build());
        streams.add(client);
        return client;
    }

    private static List<JsonNode> questions(SseClient stream) {
        return stream.messages.stream()
                .filter(message -> message.name().equals("clock"))
                .map(message -> read(message.data()))
                .toList();
    }

    private static JsonNode question(SseClient stream, int nth) {
        await().until(() -> questions(stream).size() > nth);
        return questions(stream).get(nth);
    }

    private static JsonNode read(String json) {
        try {
            return Json.mapper().readTree(json);
        } catch (java.io.IOException e) {
            throw new IllegalStateException(json, e);
        }
    }

    private HttpResponse<String> answer(
            Role role, JsonNode question, String boot, long received, long sent) throws Exception {
        var body = Json.mapper().createObjectNode();
        body.put("id", question.path("id").asText()).put("boot", boot);
        body.put("received", received).put("sent", sent);
        return bench.post("/api/clock", role, body.toString());
    }

    private void refused(HttpResponse<String> answer, int status, String reason) throws Exception {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(status);
        assertThat(Json.mapper().readTree(answer.body()).path("refused").asText())
                .isEqualTo(reason);
        assertThat(bench.refused).contains(reason);
    }
}
