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

/** A technician's tablet calibrates two units of the demo course; every frame is as described. */
class CalibrationDayTest {
    @TempDir Path folder;
    private DayBench day;
    private Description description;
    private SseClient bench;

    @BeforeEach
    void open() throws Exception {
        day = new DayBench(folder);
        description = Description.read();
        bench = day.listen("/api/live/bench", Role.TECHNICIAN);
    }

    @AfterEach
    void close() throws Exception {
        bench.close();
        day.close();
    }

    @Test
    void begunTrippedAndAcceptedItStandsInTheNextFrame() throws Exception {
        assertThat(begin().statusCode()).isEqualTo(200);
        trips(3);
        HttpResponse<String> tooSoon = end(true);
        assertThat(tooSoon.statusCode()).isEqualTo(409);
        assertThat(tooSoon.body()).contains("too-few-trips");
        trips(18);
        assertThat(end(true).statusCode()).isEqualTo(200);
        await().until(() -> newest().path("standing").size() == 1);
        JsonNode standing = newest().path("standing").path(0);
        assertThat(standing.path("reference").asText()).isEqualTo("fu-02/1");
        assertThat(standing.path("other").asText()).isEqualTo("fu-11/1");
        assertThat(standing.path("kept").asInt()).isEqualTo(21);
        everyFrameIsAsDescribed();
    }

    @Test
    void aReleaseGoesFirst() throws Exception {
        assertThat(begin().statusCode()).isEqualTo(200);
        trips(2);
        await().until(() -> newest().at("/sitting/otherTrips").asInt() == 2);
        new OneRun(day, 1).release();
        await().until(() -> newest().path("sitting").isNull());
        assertThat(begin().body()).contains("station-awaits");
        everyFrameIsAsDescribed();
    }

    private HttpResponse<String> begin() throws Exception {
        return day.rule(
                Role.TECHNICIAN,
                "begin-calibration",
                "referenceUnit",
                "fu-02",
                "referenceSensor",
                1,
                "unit",
                "fu-11",
                "sensor",
                1);
    }

    private HttpResponse<String> end(boolean accept) throws Exception {
        return day.rule(Role.TECHNICIAN, "end-calibration", "accept", accept);
    }

    private void trips(int times) {
        for (int i = 0; i < times; i++) {
            day.lane.pass(3_000);
            day.edge("fu-02", 1, 1);
            day.edge("fu-11", 1, 1);
            day.lane.pass(500);
            day.edge("fu-02", 1, 0);
            day.edge("fu-11", 1, 0);
        }
    }

    private JsonNode newest() throws Exception {
        List<JsonNode> frames = frames();
        return frames.isEmpty()
                ? Json.mapper().createObjectNode()
                : frames.get(frames.size() - 1).path("calibrations");
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
        JsonNode schema = description.schema("BenchFrame");
        assertThat(frames()).isNotEmpty();
        for (JsonNode frame : frames()) {
            assertThat(description.faults(schema, frame)).as(frame.toString()).isEmpty();
        }
    }
}
