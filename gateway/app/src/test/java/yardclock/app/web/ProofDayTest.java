package yardclock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.json.Json;
import yardclock.core.ruling.Role;

import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A proof run of one station over HTTP, signed by two; every frame is as described. */
class ProofDayTest {
    @TempDir Path folder;
    private DayBench day;
    private SseClient bench;

    @BeforeEach
    void open() throws Exception {
        day = new DayBench(folder);
        bench = day.listen("/api/live/bench", Role.TECHNICIAN);
    }

    @AfterEach
    void close() throws Exception {
        bench.close();
        day.close();
    }

    @Test
    void begunPressedAndSignedByTwoItStandsInTheNextFrame() throws Exception {
        taken(
                day.rule(
                        Role.TECHNICIAN,
                        "begin-proof-run",
                        "station",
                        "mannequin-drag",
                        "why",
                        "after-repair"));
        HttpResponse<String> release =
                day.rule(
                        Role.COORDINATOR,
                        "release",
                        "number",
                        1,
                        "proctorDevice",
                        day.device(Role.PROCTOR));
        assertThat(release.body()).contains("proof-run-under-way");
        day.lane.pass(2_000);
        day.edge("fu-02", 1, 1);
        day.lane.pass(1_000);
        day.edge("fu-02", 1, 0);
        taken(
                day.rule(
                        Role.TECHNICIAN,
                        "proof-tap",
                        "station",
                        "mannequin-drag",
                        "point",
                        "start"));
        await().until(() -> start().path("pressed").asInt() == 1);
        assertThat(start().path("automatic").asInt()).isEqualTo(1);
        assertThat(sign(Role.TECHNICIAN, "").body()).contains("no-words");
        taken(sign(Role.TECHNICIAN, "only its mat was changed"));
        assertThat(sign(Role.TECHNICIAN, "again").body()).contains("signed-by-you");
        taken(sign(Role.COORDINATOR, "only its mat was changed"));
        await().until(() -> proof().path("signed").size() == 1);
        JsonNode signed = proof().path("signed").path(0);
        assertThat(signed.path("station").asText()).isEqualTo("mannequin-drag");
        assertThat(signed.path("words").asText()).isEqualTo("only its mat was changed");
        assertThat(proof().path("run").isNull()).isTrue();
        everyFrameIsAsDescribed();
    }

    private static void taken(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(200);
    }

    private HttpResponse<String> sign(Role role, String words) throws Exception {
        return day.rule(role, "sign-proof-run", "words", words);
    }

    private JsonNode start() throws Exception {
        return proof().path("points").path(0);
    }

    private JsonNode proof() throws Exception {
        List<JsonNode> frames = frames();
        return frames.isEmpty()
                ? Json.mapper().createObjectNode()
                : frames.get(frames.size() - 1).path("proof");
    }

    private List<JsonNode> frames() throws Exception {
        List<JsonNode> frames = new ArrayList<>();
        for (SseClient.Message message : bench.messages) {
            if (message.name().equals("frame")) {
                frames.add(Json.mapper().readTree(message.data()));
            }
        }
        return frames;
    }

    private void everyFrameIsAsDescribed() throws Exception {
        Description description = Description.read();
        JsonNode schema = description.schema("BenchFrame");
        for (JsonNode frame : frames()) {
            assertThat(description.faults(schema, frame)).as(frame.toString()).isEmpty();
        }
    }
}
