package yardclock.sim.units;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * The words of the field-unit contract, version 1, as bytes. Stateless.
 *
 * <p>Written from the contract and not with the gateway's own decoder, so that each checks the
 * other.
 */
final class UnitMessages {
    static final int VERSION = 1;

    /** The most edges the contract allows in one message. */
    static final int MOST_EDGES = 32;

    private static final JsonMapper JSON = JsonMapper.builder().build();

    /** What must stand in the gateway's messages as a whole number, and what as a text. */
    private static final Map<String, List<String>> NUMBERS =
            Map.of(
                    "kept", List.of("upto"),
                    "resend", List.of("from", "to"),
                    "show", List.of("output", "expiresMs"),
                    "settings", List.of("version"),
                    "identify", List.of("seconds"));

    private static final Map<String, List<String>> TEXTS =
            Map.of(
                    "kept", List.of("boot"),
                    "resend", List.of("boot"),
                    "ask", List.of("id"),
                    "show", List.of("what"));

    private UnitMessages() {}

    static byte[] edges(String boot, List<StoredEdge> edges) {
        if (edges.size() == 1) {
            return bytes(edge(boot, edges.get(0)));
        }
        ArrayNode all = JSON.createArrayNode();
        edges.forEach(edge -> all.add(edge(boot, edge)));
        return bytes(all);
    }

    private static ObjectNode edge(String boot, StoredEdge edge) {
        return versioned()
                .put("boot", boot)
                .put("seq", edge.seq())
                .put("sensor", edge.sensor())
                .put("state", edge.state())
                .put("tick", edge.tick());
    }

    static byte[] health(Vitals vitals) {
        return written(
                health -> {
                    health.writeNumberField("up", 1);
                    health.writeStringField("boot", vitals.boot());
                    health.writeNumberField("tick", vitals.tick());
                    health.writeNumberField("nextSeq", vitals.nextSeq());
                    health.writeNumberField("batteryMillivolts", vitals.batteryMillivolts());
                    health.writeNumberField("rssiDbm", vitals.rssiDbm());
                    health.writeNumberField("bufferFill", vitals.bufferFill());
                    health.writeNumberField("lowestFreeMemory", vitals.lowestFreeMemory());
                    health.writeStringField("firmware", vitals.firmware());
                    health.writeNumberField("contract", VERSION);
                    health.writeFieldName("sensorStates");
                    health.writeArray(vitals.sensorStates(), 0, vitals.sensorStates().length);
                    health.writeStringField("accessPoint", vitals.accessPoint());
                });
    }

    /** What the broker says for a unit that is gone. */
    static byte[] will() {
        return bytes(versioned().put("up", 0));
    }

    static byte[] answer(String id, String boot, long receivedTick, long sentTick) {
        return written(
                answer -> {
                    answer.writeStringField("id", id);
                    answer.writeStringField("boot", boot);
                    answer.writeNumberField("received", receivedTick);
                    answer.writeNumberField("sent", sentTick);
                });
    }

    static byte[] applied(int settingsVersion, String refused) {
        return bytes(versioned().put("version", settingsVersion).put("refused", refused));
    }

    static byte[] climate(ClimateReading reading, String boot, long tick) {
        return bytes(
                versioned()
                        .put("boot", boot)
                        .put("tick", tick)
                        .put("centiCelsius", reading.centiCelsius())
                        .put("centiPercent", reading.centiPercent())
                        .put("globeCentiCelsius", reading.globeCentiCelsius())
                        .put("windMmPerS", reading.windMillimetresPerSecond()));
    }

    /** A message from the gateway, or empty when it breaks the contract. */
    static Optional<JsonNode> read(String name, byte[] payload) {
        try {
            JsonNode message = JSON.readTree(new String(payload, StandardCharsets.UTF_8));
            return isSound(name, message) ? Optional.of(message) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static boolean isSound(String name, JsonNode message) {
        JsonNode version = message.path("v");
        return version.isIntegralNumber()
                && version.asInt() == VERSION
                && are(NUMBERS.get(name), message, JsonNode::isIntegralNumber)
                && are(TEXTS.get(name), message, JsonNode::isTextual);
    }

    private static boolean are(List<String> fields, JsonNode message, Predicate<JsonNode> right) {
        if (fields != null) {
            for (String field : fields) {
                if (!right.test(message.path(field))) {
                    return false;
                }
            }
        }
        return true;
    }

    /** Writes the fields of one message. */
    private interface FieldsOf {
        void write(JsonGenerator to) throws IOException;
    }

    /** What a unit says all day is written as it goes, without a tree of it first. */
    private static byte[] written(FieldsOf message) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream(320);
        try (JsonGenerator to = JSON.createGenerator(bytes)) {
            to.writeStartObject();
            to.writeNumberField("v", VERSION);
            message.write(to);
            to.writeEndObject();
        } catch (IOException e) {
            throw new UncheckedIOException("a message that is no JSON", e);
        }
        return bytes.toByteArray();
    }

    private static ObjectNode versioned() {
        return JSON.createObjectNode().put("v", VERSION);
    }

    private static byte[] bytes(JsonNode message) {
        try {
            return JSON.writeValueAsBytes(message);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("a message that is no JSON: " + message, e);
        }
    }

    /** What {@code health} says. */
    record Vitals(
            String boot,
            long tick,
            long nextSeq,
            int batteryMillivolts,
            int rssiDbm,
            int bufferFill,
            long lowestFreeMemory,
            String firmware,
            int[] sensorStates,
            String accessPoint) {}
}
