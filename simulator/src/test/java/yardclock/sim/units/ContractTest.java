package yardclock.sim.units;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import yardclock.app.json.Json;
import yardclock.sim.stage.VirtualStage;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.stream.Stream;

/**
 * The virtual unit against the field-unit contract in {@code station-firmware-spec/}: it obeys what
 * a gateway may say, ignores the rest, and says only what the schemas allow.
 */
class ContractTest {
    private static final Path SPEC = spec();
    private static final List<Integer> REST = List.of(0, 0, 1, 0, -1, -1, -1, -1);
    private static final SchemaRegistry SCHEMAS =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    private final VirtualStage stage = new VirtualStage(1);
    private final RecordingLink link = new RecordingLink();

    private static Path spec() {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            if (Files.isDirectory(at.resolve("station-firmware-spec"))) {
                return at.resolve("station-firmware-spec");
            }
        }
        throw new IllegalStateException("no station-firmware-spec above the working folder");
    }

    /** One vector, shown by its name. */
    record Vector(String name, JsonNode json) {
        String leaf() {
            String topic = json.get("topic").textValue();
            return topic.substring(topic.lastIndexOf('/') + 1);
        }

        byte[] bytes() {
            if (json.has("hex")) {
                return HexFormat.of().parseHex(json.get("hex").textValue());
            }
            String text = json.path("text").asText(json.path("payload").toString());
            return text.getBytes(StandardCharsets.UTF_8);
        }

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Vector> vectors() throws IOException {
        try (Stream<Path> files = Files.walk(SPEC.resolve("vectors"))) {
            return files
                    .filter(file -> file.toString().endsWith(".json"))
                    .sorted()
                    .toList()
                    .stream()
                    .map(ContractTest::read);
        }
    }

    private static Vector read(Path file) {
        try {
            String name = SPEC.resolve("vectors").relativize(file).toString();
            return new Vector(name, Json.mapper().readTree(file.toFile()));
        } catch (IOException e) {
            throw new IllegalStateException("not a vector: " + file, e);
        }
    }

    private VirtualUnit unit() {
        VirtualUnit unit = new VirtualUnit(stage, new UnitSettings("fu-05", REST, 0, 1), link);
        unit.powerOn();
        link.comeUp();
        return unit;
    }

    @ParameterizedTest
    @MethodSource("vectors")
    void a_unit_reads_what_is_for_it_and_refuses_what_breaks_the_contract(Vector vector) {
        if (!vector.json().get("for").textValue().equals("unit")) {
            // What is for the gateway the unit only says; see the test below.
            assertThat(vector.json().get("for").textValue()).isEqualTo("gateway");
            return;
        }
        VirtualUnit unit = unit();
        unit.sense(1, 1, stage.nowMicros());
        unit.arrived(vector.leaf(), vector.bytes());
        stage.settle();
        assertThat(unit.refused()).isEqualTo(vector.name().startsWith("invalid") ? 1 : 0);
        // What an output shows is answered with an edge of its own.
        int edges = vector.leaf().equals("show") && unit.refused() == 0 ? 2 : 1;
        assertThat(unit.counts().open())
                .as("nothing is dropped by a stranger's boot")
                .isEqualTo(edges);
    }

    static Stream<String> spoken() {
        return Stream.of("edges", "health", "climate", "answer", "applied");
    }

    @ParameterizedTest
    @MethodSource("spoken")
    void everything_a_unit_says_keeps_to_its_schema(String name) throws IOException {
        VirtualUnit unit = unit();
        senseALot(unit);
        link.goDown();
        senseALot(unit);
        link.comeUp();
        link.acknowledgeAll();
        link.say("ask", "{\"v\":1,\"id\":\"6f00c1d2e3f40516\",\"gateway\":5}");
        link.say("settings", "{\"v\":1,\"version\":2,\"sensors\":[{\"number\":77}]}");
        link.say("show", "{\"v\":1,\"output\":9,\"what\":\"start\",\"expiresMs\":800}");
        unit.read(new ClimateReading(2_150, 6_200, 3_050, 1_800));
        stage.advanceMicros(10_000_000);
        Path file = SPEC.resolve("schemas").resolve(name + ".json");
        Schema schema = SCHEMAS.getSchema(Files.readString(file), InputFormat.JSON);
        assertThat(link.messages(name)).isNotEmpty();
        for (JsonNode message : link.messages(name)) {
            assertThat(schema.validate(message.toString(), InputFormat.JSON))
                    .as(message.toString())
                    .isEmpty();
            assertThat(message.toString().length()).isLessThanOrEqualTo(4_096);
        }
    }

    private void senseALot(VirtualUnit unit) {
        for (int i = 0; i < 80; i++) {
            stage.advanceMicros(1_500);
            unit.sense(2, (i + 1) % 2, stage.nowMicros());
        }
    }

    @ParameterizedTest
    @MethodSource("spoken")
    void qos_and_retain_are_the_contracts(String name) {
        VirtualUnit unit = unit();
        unit.sense(1, 1, stage.nowMicros());
        unit.read(new ClimateReading(2_150, 6_200, 3_050, 1_800));
        link.say("ask", "{\"v\":1,\"id\":\"q\",\"gateway\":5}");
        link.say("settings", "{\"v\":1,\"version\":2,\"sensors\":[]}");
        stage.settle();
        boolean retained = name.equals("health") || name.equals("applied");
        int qos = name.equals("answer") ? 0 : 1;
        assertThat(link.sent)
                .filteredOn(message -> message.name().equals(name))
                .isNotEmpty()
                .allMatch(message -> message.qos() == qos && message.retained() == retained);
    }
}
