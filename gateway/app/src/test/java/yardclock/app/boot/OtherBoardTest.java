package yardclock.app.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.clock.Machine;
import yardclock.app.json.Json;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * A board dies while a candidate is at a station, and another one goes on with its journal: another
 * boot, another monotonic clock, and a wall clock that stands in 1970.
 */
class OtherBoardTest {
    private static final String STATION = "hydrant-walk";
    private static final Machine FIRST =
            new Machine("board-a", System::nanoTime, Clock.systemUTC());
    private static final Machine SPARE =
            new Machine(
                    "board-b",
                    () -> System.nanoTime() + 987_654_321_000_000L,
                    Clock.offset(
                            Clock.systemUTC(),
                            Duration.between(Instant.now(), Instant.ofEpochSecond(60))));

    @TempDir Path directory;

    private final List<Throwable> deaths = new CopyOnWriteArrayList<>();
    private DayFolder day;

    @BeforeEach
    void findAFreePort() throws IOException {
        day = DayFolder.in(directory);
    }

    @Test
    void aSplitOverTheExchangeOfBoardsIsTheUnitsOwn() throws Exception {
        String coordinator;
        String proctor;
        long begun;
        try (Gateway gateway = start(FIRST);
                UnitByHand unit = UnitByHand.connect(directory, day.mqtt(), "fu-01")) {
            unit.answerQuestions();
            unit.health(0);
            Tablet desk = new Tablet(gateway.httpPort());
            coordinator = desk.enrol(directory, "coordinator");
            Tablet beside = new Tablet(gateway.httpPort());
            proctor = beside.enrol(directory, "proctor");
            var unused = Tablet.signTheChecklist(gateway.httpPort(), directory);
            desk.rule("release", "number", 1, "proctorDevice", beside.device());
            beside.rule("give-start", "number", 1);
            begun = UnitByHand.tick();
            unit.edgeNow(0, 9, 1);
            await().until(() -> split(desk).path("startMicros").asLong(-1) >= 0);
        }
        try (Gateway gateway = start(SPARE);
                UnitByHand unit = UnitByHand.connect(directory, day.mqtt(), "fu-01")) {
            Tablet desk = new Tablet(gateway.httpPort(), coordinator);
            assertThat(split(desk).path("why").asText()).contains("clock was interrupted");
            unit.answerQuestions();
            unit.health(1);
            await().until(() -> alarms().stream().anyMatch(w -> w.contains("is bridged by")));
            new Tablet(gateway.httpPort(), proctor)
                    .rule("tap", "number", 1, "station", STATION, "point", "cap-off");
            unit.edgeNow(1, 3, 1);
            long lasted = UnitByHand.tick() - begun;
            await().until(() -> split(desk).path("state").asText().equals("proposed"));
            JsonNode split = split(desk);
            assertThat(split.path("why").asText()).doesNotContain("interrupted");
            assertThat(lasted)
                    .as("%s", split)
                    .isBetween(
                            split.path("lowerMicros").asLong(), split.path("upperMicros").asLong());
        }
        assertThat(deaths).isEmpty();
        assertThat(epochs()).extracting(Input.Epoch::continuous).containsExactly(false, false);
        assertThat(day.entries().stream().map(Entry::gatewayMicros).toList()).isSorted();
    }

    private static JsonNode split(Tablet desk) throws Exception {
        JsonNode results = Json.mapper().readTree(desk.get("/api/results.json").body());
        for (JsonNode result : results.path("results")) {
            if (result.path("number").asInt() == 1) {
                return result.path("splits").path(0);
            }
        }
        throw new AssertionError("nobody has number 1: " + results);
    }

    private Gateway start(Machine machine) throws RefusedException {
        return Gateway.start(day.settings(), machine, deaths::add);
    }

    private List<String> alarms() throws Exception {
        Engine engine = new Engine();
        return day.entries().stream()
                .flatMap(entry -> engine.apply(entry).facts().stream())
                .filter(fact -> fact.kind() == FactKind.ALARM)
                .map(Fact::words)
                .toList();
    }

    private List<Input.Epoch> epochs() throws Exception {
        return day.entries().stream()
                .filter(e -> e.input() instanceof Input.Epoch)
                .map(e -> (Input.Epoch) e.input())
                .toList();
    }
}
