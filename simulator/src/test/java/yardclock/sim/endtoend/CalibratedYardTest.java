package yardclock.sim.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.core.type.TypeReference;
import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.json.Json;
import yardclock.app.settings.DemoPlan;
import yardclock.core.ruling.Act;
import yardclock.sim.demo.DayFolder;
import yardclock.sim.demo.Demo;
import yardclock.sim.demo.DemoSettings;
import yardclock.sim.demo.FieldUnits;
import yardclock.sim.demo.GatewayProcess;
import yardclock.sim.stage.LiveStage;
import yardclock.sim.units.VirtualUnit;

import java.nio.file.Path;
import java.time.Duration;
import java.util.Map;

/**
 * Two virtual units on a real broker, tripped at once in real time: calibrated by a technician's
 * tablet, until one of them goes to another access point.
 */
class CalibratedYardTest {
    private static final long SEED = 3;
    private static final int TRIPS = 22;
    private static final long EVERY_MICROS = 700_000;
    private static final Duration PATIENCE = Duration.ofSeconds(40);

    @TempDir Path temporary;

    private final LiveStage stage = new LiveStage(1);
    private GatewayProcess gateway;
    private VirtualUnit first;
    private VirtualUnit second;
    private TechniciansTablet tablet;

    @BeforeEach
    void open() throws Exception {
        DemoSettings settings =
                new DemoSettings(
                        1,
                        SEED,
                        2,
                        FreePort.address(),
                        FreePort.address(),
                        DemoSettings.EMBEDDED,
                        null,
                        true);
        DayFolder folder = DayFolder.forNewDay(temporary.resolve("day"));
        folder.writeRoster(2);
        gateway = new GatewayProcess(settings, folder);
        gateway.start();
        Demo.awaitUp(settings.http(), gateway);
        Map<String, String> passwords =
                Json.mapper()
                        .readValue(
                                folder.path().resolve("unit-passwords.json").toFile(),
                                new TypeReference<>() {});
        Map<String, VirtualUnit> units =
                FieldUnits.build(
                        stage, DemoPlan.plan().plan(), "tcp://" + settings.mqtt(), passwords, SEED);
        first = units.get("fu-02");
        second = units.get("fu-11");
        stage.soon(first::powerOn);
        stage.soon(second::powerOn);
        stage.begin();
        tablet = new TechniciansTablet(settings.http(), folder.path());
    }

    @AfterEach
    void close() {
        first.powerOff();
        second.powerOff();
        stage.close();
        gateway.stop();
    }

    @Test
    void two_units_are_calibrated_until_one_roams() throws Exception {
        Act begin = new Act.BeginCalibration("fu-02", 1, "fu-11", 1);
        await().atMost(PATIENCE).until(() -> tablet.rule(begin).has("entry"));
        long from = stage.nowMicros() + EVERY_MICROS;
        for (int i = 0; i < TRIPS; i++) {
            trip(from + i * EVERY_MICROS);
        }
        await().atMost(PATIENCE)
                .until(() -> calibrations().at("/sitting/otherTrips").asInt() == TRIPS);
        await().atMost(PATIENCE)
                .pollInterval(Duration.ofSeconds(1))
                .untilAsserted(
                        () -> assertThat(endOrTripOnceMore().toString()).contains("\"entry\":"));
        JsonNode standing = calibrations().path("standing").path(0);
        assertThat(standing.path("kept").asInt()).isGreaterThanOrEqualTo(20);
        // One counter behind both: what is left is the ways of the exchanges, and a busy machine
        // makes
        // them milliseconds apart. What the plan allows a clock to be unknown by is the outside
        // limit.
        long allowed = DemoPlan.plan().plan().timing().boundLimitMicros();
        assertThat(Math.abs(standing.path("medianMicros").asLong()))
                .as("one machine, two short ways: %s", standing)
                .isLessThan(allowed);
        stage.soon(() -> second.roamTo("02:00:00:00:00:02"));
        await().atMost(PATIENCE).until(() -> calibrations().path("standing").isEmpty());
        JsonNode ended = calibrations().path("ended").path(0);
        assertThat(ended.path("why").asText()).isEqualTo("access-point");
        assertThat(ended.path("unit").asText()).isEqualTo("fu-11");
        assertThat(tablet.bench().path("alarms").toString())
                .contains("Calibration of fu-02, fu-11");
    }

    /**
     * Trips that a busy machine stamped late are left out; a technician then trips once more. The
     * answer is in the failure's message.
     */
    private JsonNode endOrTripOnceMore() throws Exception {
        JsonNode answer = tablet.rule(new Act.EndCalibration(true));
        if (!answer.has("entry")) {
            trip(stage.nowMicros() + EVERY_MICROS / 4);
        }
        return answer;
    }

    private void trip(long at) {
        stage.at(at, () -> bothSense(1, at));
        stage.at(at + EVERY_MICROS / 2, () -> bothSense(0, at + EVERY_MICROS / 2));
    }

    private void bothSense(int state, long at) {
        first.sense(1, state, at);
        second.sense(1, state, at);
    }

    private JsonNode calibrations() throws Exception {
        return tablet.bench().path("calibrations");
    }
}
