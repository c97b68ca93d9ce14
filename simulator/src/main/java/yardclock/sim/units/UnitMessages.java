package yardclock.sim.units;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;

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
        ObjectNode health =
                versioned()
                        .put("up", 1)
                        .put("boot", vitals.boot())
                        .put("tick", vitals.tick())
                        .put("nextSeq", vitals.nextSeq())
                        .put("batteryMillivolts", vitals.batteryMillivolts())
                        .put("rssiDbm", vitals.rssiDbm())
                        .put("bufferFill", vitals.bufferFill())
                        .put("lowestFreeMemory", vitals.lowestFreeMemory())
                        .put("firmware", vitals.firmware())
                        .put("contract", VERSION);
        ArrayNode states = health.putArray("sensorStates");
        vitals.sensorStates().forEach(states::add);
        health.put("accessPoint", vitals.accessPoint());
        return bytes(health);
    }

    /** What the broker says for a unit that is gone. */
    static byte[] will() {
        return bytes(versioned().put("up", 0));
    }

    static byte[] answer(String id, String boot, long receivedTick, long sentTick) {
        return bytes(
                versioned()
                        .put("id", id)
                        .put("boot", boot)
                        .put("received", receivedTick)
                        .put("sent", sentTick));
    }

    static byte[] applied(int settingsVersion, String refused) {
        return bytes(versioned().put("version", settingsVersion).put("refused", refused));
    }

    static byte[] climate(ClimateReading reading, long tick) {
        return bytes(
                versioned()
                        .put("tick", tick)
                        .put("centiCelsius", reading.centiCelsius())
                        .put("centiPercent", reading.centiPercent())
                        .put("globeCentiCelsius", reading.globeCentiCelsius())
                        .put("windMmPerS", reading.windMillimetresPerSecond()));
    }

    /** A message from the gateway, or empty when it breaks the contract. */
    static Optional<JsonNode> read(String name, byte[] payload) {
        try {
            JsonNode message = JSON.readTree(payload);
            return isSound(name, message) ? Optional.of(message) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static boolean isSound(String name, JsonNode message) {
        JsonNode version = message.path("v");
        return version.isIntegralNumber()
                && version.asInt() == VERSION
                && NUMBERS.getOrDefault(name, List.of()).stream()
                        .allMatch(field -> message.path(field).isIntegralNumber())
                && TEXTS.getOrDefault(name, List.of()).stream()
                        .allMatch(field -> message.path(field).isTextual());
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
            List<Integer> sensorStates,
            String accessPoint) {}
}
