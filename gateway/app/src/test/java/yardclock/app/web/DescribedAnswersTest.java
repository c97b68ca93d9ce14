package yardclock.app.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.json.Json;
import yardclock.core.course.GuardTimes;
import yardclock.core.ruling.Role;

import java.lang.reflect.RecordComponent;
import java.net.http.HttpResponse;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/** Follows one candidate over the whole course and holds every answer to its description. */
class DescribedAnswersTest {
    @TempDir private static Path folder;
    private DayBench day;
    private Description description;

    @BeforeEach
    void open() throws Exception {
        description = Description.read();
        day = new DayBench(folder);
    }

    @AfterEach
    void close() {
        day.close();
    }

    @Test
    void everyAnswerAndMessageOfADayIsAsDescribed() throws Exception {
        Map<String, SseClient> streams = listenToAll();
        OneRun run = new OneRun(day, 1);
        run.release();
        run.hydrantWalk();
        run.mannequinDrag();
        run.pikePoles();
        run.lowDeck();
        run.ropeBag();
        run.fanCarry();
        run.wedgeDrive();
        run.groundLadder();
        run.rollUp();
        run.confirmAll();
        String sheet = day.get("/api/telling/1", Role.PROCTOR).body();
        assertThat(sheet).contains("Hydrant walk").contains("Result of number 1");
        run.tell();
        documents();
        for (Map.Entry<String, SseClient> stream : streams.entrySet()) {
            messages(stream.getKey(), stream.getValue());
            stream.getValue().close();
        }
    }

    private Map<String, SseClient> listenToAll() throws Exception {
        Map<String, SseClient> streams = new TreeMap<>();
        Map<String, Role> listeners =
                Map.of(
                        "/api/live/control", Role.COORDINATOR,
                        "/api/live/post", Role.PROCTOR,
                        "/api/live/crew", Role.CREW,
                        "/api/live/watch", Role.SAFETY,
                        "/api/live/bench", Role.TECHNICIAN,
                        "/api/live/leaderboard", Role.SAFETY,
                        "/api/feed", Role.TECHNICIAN);
        for (Map.Entry<String, Role> one : listeners.entrySet()) {
            streams.put(one.getKey(), day.listen(one.getKey(), one.getValue()));
        }
        streams.put("/api/live/board", day.listen("/api/live/board", null));
        return streams;
    }

    private void documents() throws Exception {
        JsonNode results = document("GET /api/results.json", "/api/results.json", Role.SAFETY);
        JsonNode first = results.path("results").path(0);
        assertThat(first.path("outcome").asText()).isEqualTo("passed");
        assertThat(first.path("splits")).hasSize(9);
        JsonNode clock = document("GET /api/clock/{unit}", "/api/clock/fu-02", Role.TECHNICIAN);
        assertThat(clock.at("/trace/envelope")).isNotEmpty();
        answer("GET /api/clock/{unit}", day.get("/api/clock/fu-99", Role.TECHNICIAN));
        rejudged();
        document("GET /api/plan", "/api/plan", Role.CREW);
        document("GET /api/state", "/api/state", null);
        assertThat(day.get("/api/results.csv", Role.SAFETY).body())
                .startsWith("number,run,group,outcome,")
                .contains("\r\n1,1,1,passed,");
        assertThat(day.get("/api/telling/1", Role.COORDINATOR).body())
                .contains(first.path("display").asText());
        HttpResponse<String> foreign = day.get("/api/telling/2", Role.PROCTOR);
        assertThat(foreign.statusCode()).isEqualTo(403);
        answer("GET /api/telling/{number}", foreign);
        answer("GET /api/telling/{number}", day.get("/api/telling/2", Role.COORDINATOR));
        answer("POST /api/codes", day.post("/api/codes", Role.COORDINATOR, "{\"role\":\"crew\"}"));
        answer("POST /api/rulings", day.rule(Role.CREW, "note", "number", 0, "words", "dry"));
        HttpResponse<String> refused = day.rule(Role.PROCTOR, "tell", "number", 1);
        assertThat(refused.statusCode()).isEqualTo(409);
        answer("POST /api/rulings", refused);
        for (JsonNode enrolment : day.enrolled().values()) {
            valid("POST /api/enrol", "200", enrolment);
        }
    }

    /** Nobody stood on the mat for nine seconds: that rule would have seen no start. */
    private void rejudged() throws Exception {
        JsonNode found = rejudged("mannequin-drag", "stoodForMicros", 9_000_000);
        assertThat(found.path("judged").asInt()).isEqualTo(1);
        JsonNode line = found.at("/changed/0");
        assertThat(line.at("/before/splitMicros").asLong())
                .isPositive()
                .isEqualTo(line.path("standsMicros").asLong());
        assertThat(line.at("/after/label").asText()).isEqualTo("look");
        assertThat(line.path("state").asText()).isEqualTo("confirmed");
        assertThat(rejudged("moat", "stoodForMicros", 1).path("refused").asText())
                .isEqualTo("unknown-station");
        assertThat(rejudged("mannequin-drag", "stoodForMicros", -1).path("words").asText())
                .contains("“stoodForMicros” must be a whole number from 0");
    }

    private JsonNode rejudged(String station, String guard, long micros) throws Exception {
        ObjectNode question = Json.mapper().createObjectNode();
        question.put("station", station).put("point", "start");
        for (RecordComponent each : GuardTimes.class.getRecordComponents()) {
            question.put(each.getName(), 0);
        }
        String body = question.put(guard, micros).toString();
        return answer(
                "POST /api/bench/rejudge", day.post("/api/bench/rejudge", Role.TECHNICIAN, body));
    }

    private JsonNode document(String operation, String path, Role role) throws Exception {
        return answer(operation, day.get(path, role));
    }

    private JsonNode answer(String operation, HttpResponse<String> answer) throws Exception {
        JsonNode json = Json.mapper().readTree(answer.body());
        valid(operation, Integer.toString(answer.statusCode()), json);
        return json;
    }

    private void valid(String operation, String status, JsonNode json) {
        JsonNode response = description.operations().get(operation).path("responses").path(status);
        assertThat(response.isMissingNode()).as(operation + " " + status).isFalse();
        JsonNode schema =
                description.resolve(response).at("/content/application~1json").path("schema");
        assertThat(schema.isMissingNode()).as(operation + " " + status).isFalse();
        assertThat(description.faults(schema, json)).as(operation).isEmpty();
        assertThat(description.faults(schema, Json.mapper().createObjectNode())).isNotEmpty();
    }

    private void messages(String path, SseClient stream) throws Exception {
        await().until(() -> !stream.messages.isEmpty());
        JsonNode schemas =
                description.operations().get("GET " + path).at("/responses/200/x-messages");
        for (SseClient.Message message : stream.messages) {
            JsonNode schema = schemas.path(message.name());
            assertThat(schema.isMissingNode()).as(path + " " + message.name()).isFalse();
            JsonNode json = Json.mapper().readTree(message.data());
            assertThat(description.faults(schema, json)).as(path + message.data()).isEmpty();
        }
    }
}
