package yardclock.app.stations;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import yardclock.core.course.SensorPlan;
import yardclock.core.fact.Effect;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The AsyncAPI document says what the schemas and the gateway's own messages say. */
class AsyncApiTest {
    private static JsonNode document;

    @BeforeAll
    static void read() throws IOException {
        document = new YAMLMapper().readTree(Vector.SPEC.resolve("asyncapi.yaml").toFile());
    }

    @Test
    void everyReferenceLeadsSomewhere() {
        for (JsonNode reference : document.findValues("$ref")) {
            String to = reference.textValue();
            if (to.startsWith("#")) {
                assertThat(document.at(to.substring(1)).isMissingNode()).as(to).isFalse();
            } else {
                assertThat(Files.exists(Vector.SPEC.resolve(to))).as(to).isTrue();
            }
        }
    }

    @Test
    void everySchemaHasAChannelAndAnOperation() throws IOException {
        List<String> leaves = new ArrayList<>();
        document.get("channels").fieldNames().forEachRemaining(leaves::add);
        try (var files = Files.list(Vector.SPEC.resolve("schemas"))) {
            assertThat(files.map(file -> file.getFileName().toString().replace(".json", "")))
                    .containsExactlyInAnyOrderElementsOf(leaves);
        }
        for (String leaf : leaves) {
            assertThat(document.at("/channels/" + leaf + "/address").textValue())
                    .isEqualTo("yc/1/{unit}/" + leaf);
            assertThat(operation(leaf)).as(leaf).isNotNull();
        }
    }

    @Test
    void theGatewayPublishesWithTheQosAndRetainFlagOfTheDocument() {
        List<Outgoing> said =
                List.of(
                        Outgoing.of(new Effect.Kept("fu-01", BenchUnit.BOOT, 1)),
                        Outgoing.of(new Effect.AskAgain("fu-01", BenchUnit.BOOT, 1, 2)),
                        Outgoing.of(new Effect.Show("fu-01", 9, "done", 100)),
                        Outgoing.of(new Effect.Blink("fu-01", 1)),
                        Outgoing.ask("fu-01", "a", 1),
                        Outgoing.settings("fu-01", 1, List.<SensorPlan>of()));
        for (Outgoing message : said) {
            JsonNode operation = operation(message.topic().substring("yc/1/fu-01/".length()));
            assertThat(operation.get("action").textValue()).isEqualTo("receive");
            assertThat(operation.at("/bindings/mqtt/qos").intValue()).isEqualTo(message.qos());
            assertThat(operation.at("/bindings/mqtt/retain").booleanValue())
                    .isEqualTo(message.retained());
        }
    }

    private static JsonNode operation(String leaf) {
        for (Map.Entry<String, JsonNode> each : document.get("operations").properties()) {
            String channel = each.getValue().at("/channel/$ref").textValue();
            if (channel.equals("#/channels/" + leaf)) {
                return each.getValue();
            }
        }
        return null;
    }
}
