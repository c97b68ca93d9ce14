package yardclock.app.stations;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import yardclock.app.json.Json;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.Text;
import yardclock.core.engine.Input;
import yardclock.core.fact.Effect;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** Every vector of the specification, through the decoder, the encoder and the JSON schemas. */
class VectorsTest {
    /** What only a reader can see: the topic, the bytes and the text come before any schema. */
    private static final Set<String> BEFORE_ANY_SCHEMA =
            Set.of(
                    "unknown-topic",
                    "bad-unit-id",
                    "unknown-unit",
                    "too-large",
                    "not-utf8",
                    "not-json",
                    "duplicate-key");

    private static final UnitMessages MESSAGES =
            new UnitMessages(IntStream.rangeClosed(1, 12).mapToObj("fu-%02d"::formatted).toList());
    private static final SchemaRegistry SCHEMAS =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);

    static Stream<Vector> vectors() throws IOException {
        return Vector.all().stream();
    }

    @ParameterizedTest
    @MethodSource("vectors")
    void everyVectorIsReadAsItSays(Vector vector) {
        if (vector.isForUnit()) {
            theGatewaySaysIt(vector);
        } else {
            theGatewayReadsIt(vector);
        }
    }

    @ParameterizedTest
    @MethodSource("vectors")
    void theSchemasAgreeWithTheDecoder(Vector vector) throws IOException {
        if (vector.refused().stream().anyMatch(BEFORE_ANY_SCHEMA::contains)) {
            return;
        }
        String text = new String(vector.bytes(), StandardCharsets.UTF_8);
        boolean accepted = schema(vector.leaf()).validate(text, InputFormat.JSON).isEmpty();
        boolean expected = vector.isValid() || vector.json().path("schemaAccepts").asBoolean();
        assertThat(accepted).as("accepted by the schema of %s", vector.leaf()).isEqualTo(expected);
    }

    @Test
    void everyReasonForARefusalHasAVector() throws IOException {
        Set<String> shown = new TreeSet<>();
        vectors().forEach(vector -> shown.addAll(vector.refused()));
        Set<String> known = new TreeSet<>();
        for (RejectionReason reason : RejectionReason.values()) {
            known.add(reason.code());
        }
        // These depend on what happened before, which a single message can't show.
        known.removeAll(
                Set.of(
                        "retained",
                        "exchange-unknown",
                        "exchange-again",
                        "exchange-late",
                        "inbox-full"));
        assertThat(shown).isEqualTo(known);
    }

    @Test
    void everySchemaHasAValidVector() throws IOException {
        Set<String> shown = new TreeSet<>();
        vectors().filter(Vector::isValid).forEach(vector -> shown.add(vector.leaf() + ".json"));
        try (Stream<Path> files = Files.list(Vector.SPEC.resolve("schemas"))) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrderElementsOf(shown);
        }
    }

    private static void theGatewayReadsIt(Vector vector) {
        Decoded decoded = MESSAGES.decode(vector.topic(), vector.bytes());
        assertThat(decoded.rejections())
                .extracting(rejection -> rejection.reason().code())
                .containsExactlyElementsOf(vector.refused());
        List<JsonNode> inputs = new ArrayList<>();
        for (Input input : decoded.inputs()) {
            ObjectNode json = Json.mapper().createObjectNode().put("kind", input.kind().word());
            inputs.add(json.setAll((ObjectNode) Json.mapper().valueToTree(input)));
        }
        assertThat(Json.mapper().createArrayNode().addAll(inputs).toString())
                .isEqualTo(
                        vector.json().path("inputs").isMissingNode()
                                ? "[]"
                                : vector.json().get("inputs").toString());
        assertThat(decoded.answer().map(answer -> Json.mapper().valueToTree(answer).toString()))
                .isEqualTo(
                        Optional.ofNullable(vector.json().get("answer")).map(JsonNode::toString));
    }

    /** Says again what the vector says, and compares; a unit's refusals are the unit's to test. */
    private static void theGatewaySaysIt(Vector vector) {
        if (!vector.isValid()) {
            assertThat(vector.refused()).hasSize(1);
            return;
        }
        JsonNode said = vector.json().get("payload");
        Outgoing message = message(vector.topic().split("/")[2], vector.leaf(), said);
        assertThat(message.topic()).isEqualTo(vector.topic());
        assertThat(new String(message.payload(), StandardCharsets.UTF_8))
                .isEqualTo(said.toString());
    }

    private static Outgoing message(String unit, String leaf, JsonNode said) {
        String boot = said.path("boot").asText();
        return switch (leaf) {
            case "kept" -> Outgoing.of(new Effect.Kept(unit, boot, said.get("upto").asLong()));
            case "resend" ->
                    Outgoing.of(
                            new Effect.AskAgain(
                                    unit,
                                    boot,
                                    said.get("from").asLong(),
                                    said.get("to").asLong()));
            case "ask" -> Outgoing.ask(unit, said.get("id").asText(), said.get("gateway").asLong());
            case "identify" -> Outgoing.of(new Effect.Blink(unit, said.get("seconds").asInt()));
            case "show" ->
                    Outgoing.of(
                            new Effect.Show(
                                    unit,
                                    said.get("output").asInt(),
                                    said.get("what").asText(),
                                    said.get("expiresMs").asInt()));
            case "settings" -> Outgoing.settings(unit, said.get("version").asInt(), sensors(said));
            default -> throw new AssertionError("nobody says " + leaf);
        };
    }

    private static List<SensorPlan> sensors(JsonNode said) {
        List<SensorPlan> sensors = new ArrayList<>();
        for (JsonNode each : said.get("sensors")) {
            sensors.add(
                    new SensorPlan(
                            each.get("number").asInt(),
                            SensorKind.CONTACT,
                            new Text("", ""),
                            0,
                            each.get("inverted").asBoolean(),
                            each.get("pullUp").asBoolean(),
                            0));
        }
        return sensors;
    }

    private static Schema schema(String leaf) throws IOException {
        Path file = Vector.SPEC.resolve("schemas").resolve(leaf + ".json");
        return SCHEMAS.getSchema(Files.readString(file), InputFormat.JSON);
    }
}
