package yardclock.app.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.pins.BoardWiring;
import yardclock.app.pins.ClimateWiring;
import yardclock.app.pins.OutputMap;
import yardclock.app.pins.PinMap;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.engine.InputKind;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** A whole gateway on real parts: journal, embedded broker, pages, one field unit, one tablet. */
class GatewayTest {
    @TempDir Path directory;

    private final List<Throwable> deaths = new CopyOnWriteArrayList<>();
    private DayFolder day;

    @BeforeEach
    void findAFreePort() throws IOException {
        day = DayFolder.in(directory);
    }

    @Test
    void freezesTheDayFirstAndServesIt() throws Exception {
        try (Gateway gateway = start()) {
            Tablet tablet = new Tablet(gateway.httpPort());
            await().until(() -> tablet.state().path("broker").asText().equals("up"));
            assertThat(tablet.get("/").statusCode()).isEqualTo(200);
            assertThat(tablet.state().path("journal").asText()).isEqualTo("ok");

            tablet.enrol(directory, "coordinator");
            assertThat(tablet.get("/api/plan").body()).contains("QB-3");
            assertThat(gateway.announcement().lines().toString()).contains("first-codes.json");
        }
        List<InputKind> kinds = day.entries().stream().map(e -> e.input().kind()).toList();
        assertThat(kinds.subList(0, 3))
                .containsExactly(InputKind.EPOCH, InputKind.PLAN, InputKind.ROSTER);
        assertThat(kinds.subList(3, 16)).containsOnly(InputKind.CODE);
        assertThat(kinds).contains(InputKind.ENROLMENT);
        assertThat(deaths).isEmpty();
    }

    @Test
    void keepsWhatAUnitSaysBeforeItTellsTheUnitSo() throws Exception {
        try (Gateway gateway = start();
                UnitByHand unit = UnitByHand.connect(directory, day.mqtt(), "fu-01")) {
            unit.edges(0, 4);
            unit.awaitKept(4);
            assertThat(edgesInJournal()).isEqualTo(5);

            unit.edges(3, 6);
            unit.awaitKept(6);
            Tablet tablet = new Tablet(gateway.httpPort());
            assertThat(tablet.get("/metrics").body())
                    .contains("yardclock_edges_total 7.0")
                    .contains("yardclock_edges_duplicate_total 2.0");
        }
    }

    @Test
    void countsAndShowsAMessageItTurnsAwayAndLosesNothingElse() throws Exception {
        try (Gateway gateway = start();
                UnitByHand unit = UnitByHand.connect(directory, day.mqtt(), "fu-01")) {
            unit.say("edges", "{ this is no JSON");
            unit.edges(0, 1);
            unit.awaitKept(1);
            Tablet bench = new Tablet(gateway.httpPort());
            bench.enrol(directory, "technician");
            assertThat(bench.get("/metrics").body())
                    .contains("yardclock_messages_rejected_total{reason=\"not-json\"} 1.0");
            assertThat(bench.firstFrame("bench").path("alarms").toString())
                    .contains("turned away since the start: 1")
                    .contains("yc/1/fu-01/edges");
        }
    }

    @Test
    void goesOnWhereItWasWithTheSameDigestAsAReplay() throws Exception {
        String token;
        try (Gateway gateway = start();
                UnitByHand unit = UnitByHand.connect(directory, day.mqtt(), "fu-01")) {
            Tablet tablet = new Tablet(gateway.httpPort());
            token = tablet.enrol(directory, "coordinator");
            unit.edges(0, 9);
            unit.awaitKept(9);
        }
        String digest;
        try (Gateway gateway = start()) {
            Tablet tablet = new Tablet(gateway.httpPort(), token);
            assertThat(tablet.get("/api/plan").statusCode()).isEqualTo(200);
            digest = tablet.state().path("digest").asText();
            assertThat(tablet.state().path("digest").asText()).isEqualTo(digest);
        }
        Engine engine = new Engine();
        day.entries().forEach(engine::apply);
        assertThat(engine.digest()).isEqualTo(digest);
        assertThat(epochs()).hasSize(2);
        assertThat(epochs().get(1).continuous()).isTrue();
        assertThat(day.entries().stream().map(Entry::gatewayMicros).toList()).isSorted();
    }

    @Test
    void holdsToTheFrozenPlanAndRosterAndSpeed() throws Exception {
        start().close();
        Path plan = write("plan.yaml", demo("plan.yaml") + "\n# another version\n");
        Path same = write("same.yaml", demo("plan.yaml"));
        Path roster = write("roster.csv", "number,name,group\n501,Wren Example,1\n");

        assertThatThrownBy(() -> Gateway.start(settings(plan, null, 1), deaths::add))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("exam plan of this day is frozen");
        assertThatThrownBy(() -> Gateway.start(settings(same, roster, 1), deaths::add))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("roster of this day is frozen");
        assertThatThrownBy(() -> Gateway.start(settings(null, null, 10), deaths::add))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("This day runs at speed 1");
        Gateway.start(settings(same, null, 1), deaths::add).close();
        assertThat(epochs()).hasSize(2);
    }

    @Test
    void runsADayOfOnesOwnRoster() throws Exception {
        Path roster = write("roster.csv", "number,name,group\n501,Wren Example,1\n");
        Gateway.start(settings(null, roster, 1), deaths::add).close();
        assertThat(Files.readAllBytes(day.journal())).asString().doesNotContain("Wren");
        Input.RosterFrozen frozen = (Input.RosterFrozen) day.entries().get(2).input();
        assertThat(frozen.lines()).hasSize(1);
        assertThat(frozen.lines().get(0).number()).isEqualTo(501);
    }

    @Test
    void refusesASecondGatewayOnTheSameDirectory() throws Exception {
        try (Gateway gateway = start()) {
            assertThat(gateway.httpPort()).isPositive();
            assertThatThrownBy(this::start)
                    .isInstanceOf(RefusedException.class)
                    .hasMessageContaining("Another gateway runs on");
        }
    }

    @Test
    void leavesNothingRunningWhenAPortIsTaken() throws Exception {
        try (ServerSocket taken = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            HostPort http = new HostPort("127.0.0.1", taken.getLocalPort());
            ServeSettings settings = day.settings(http, null, null, 1, BoardWiring.NONE);
            assertThatThrownBy(() -> Gateway.start(settings, deaths::add))
                    .isInstanceOf(RefusedException.class)
                    .hasMessageContaining("Pages can't be served at " + http);
        }
        start().close();
    }

    @Test
    void runsOnWhereThereAreNoPinsAndSaysSo() throws Exception {
        try (Gateway gateway = Gateway.start(withPins("fu-01:3=17"), deaths::add)) {
            await().until(
                            () ->
                                    day.entries().stream()
                                            .map(Entry::input)
                                            .anyMatch(GatewayTest::isHealthWithoutPins));
            Tablet bench = new Tablet(gateway.httpPort());
            bench.enrol(directory, "technician");
            assertThat(bench.firstFrame("bench").path("head").path("troubles").toString())
                    .contains("The pins of this board");
        }
    }

    @Test
    void runsOnWhereThereIsNoBusForTheClimateSensorAndSaysSo() throws Exception {
        try (Gateway gateway = Gateway.start(withClimate("fu-12:bus=31"), deaths::add)) {
            Tablet bench = new Tablet(gateway.httpPort());
            bench.enrol(directory, "technician");
            await().until(
                            () ->
                                    bench.get("/metrics")
                                            .body()
                                            .lines()
                                            .anyMatch(GatewayTest::isBusMissed));
            assertThat(bench.firstFrame("bench").path("head").path("troubles").toString())
                    .contains("climate sensor of fu-12")
                    .contains("bus of this board can't be used");
            assertThat(day.entries()).noneMatch(e -> e.input().kind() == InputKind.CLIMATE);
        }
    }

    @Test
    void runsOnWhereThereAreNoOutputsAndSaysSo() throws Exception {
        HostPort http = new HostPort("127.0.0.1", 0);
        OutputMap outputs = OutputMap.parse("pulse=5,run=6");
        BoardWiring wiring = new BoardWiring(null, List.of(), outputs);
        try (Gateway gateway =
                Gateway.start(day.settings(http, null, null, 1, wiring), deaths::add)) {
            Tablet bench = new Tablet(gateway.httpPort());
            bench.enrol(directory, "technician");
            assertThat(bench.firstFrame("bench").path("head").path("troubles").toString())
                    .contains("The outputs of this board, lamps and horn, can't be used");
        }
    }

    private static boolean isBusMissed(String line) {
        return line.startsWith("yardclock_climate_looks_total{")
                && line.contains("outcome=\"no-bus\"")
                && line.contains("unit=\"fu-12\"")
                && !line.endsWith(" 0.0");
    }

    @Test
    void refusesAClimateSensorOfAUnitThatThePlanDoesNotKnow() {
        assertThatThrownBy(() -> Gateway.start(withClimate("fu-77"), deaths::add))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("no field unit fu-77");
    }

    private static boolean isHealthWithoutPins(Input input) {
        return input instanceof Input.Health health && health.firmware().contains("not available");
    }

    @Test
    void refusesPinsThatThePlanDoesNotKnow() {
        assertThatThrownBy(() -> Gateway.start(withPins("fu-77:1=17"), deaths::add))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("no field unit fu-77");
        assertThatThrownBy(() -> Gateway.start(withPins("fu-01:8=17"), deaths::add))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("fu-01/8");
    }

    private Gateway start() throws RefusedException {
        return Gateway.start(settings(null, null, 1), deaths::add);
    }

    private ServeSettings settings(Path plan, Path roster, int speed) {
        HostPort http = new HostPort("127.0.0.1", 0);
        return day.settings(http, plan, roster, speed, BoardWiring.NONE);
    }

    private ServeSettings withPins(String pins) {
        HostPort http = new HostPort("127.0.0.1", 0);
        return day.settings(
                http, null, null, 1, new BoardWiring(PinMap.parse(pins), List.of(), null));
    }

    private ServeSettings withClimate(String climate) {
        HostPort http = new HostPort("127.0.0.1", 0);
        List<ClimateWiring> climates = List.of(ClimateWiring.parse(climate));
        return day.settings(http, null, null, 1, new BoardWiring(null, climates, null));
    }

    private long edgesInJournal() throws Exception {
        return day.entries().stream().filter(e -> e.input().kind() == InputKind.EDGE).count();
    }

    private List<Input.Epoch> epochs() throws Exception {
        return day.entries().stream()
                .filter(e -> e.input().kind() == InputKind.EPOCH)
                .map(e -> (Input.Epoch) e.input())
                .toList();
    }

    private Path write(String name, String text) throws IOException {
        return Files.writeString(directory.resolve(name), text);
    }

    private static String demo(String name) throws IOException {
        try (var from = GatewayTest.class.getResourceAsStream("/yardclock/demo/" + name)) {
            return new String(from.readAllBytes(), java.nio.charset.StandardCharsets.UTF_8);
        }
    }
}
