package yardclock.process;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

import yardclock.app.json.Json;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.stream.IntStream;

/**
 * A field unit that keeps its edges until the gateway says that it has them: on a new connection it
 * sends everything after {@code kept} again, whatever the broker acknowledged.
 */
final class SteadyUnit {
    private static final String UNIT = "fu-01";
    private static final String BOOT = "5eed000000000001";
    private static final int A_MESSAGE = 5;

    private final Path data;
    private final String broker;
    private volatile long keptUpTo = -1;
    private MqttClient client;

    SteadyUnit(Path data, String mqtt) {
        this.data = data;
        this.broker = "tcp://" + mqtt;
    }

    long keptUpTo() {
        return keptUpTo;
    }

    /** Sends what is not kept yet, up to {@code last}; ends early when the connection breaks. */
    void sendUpTo(long last) throws Exception {
        client = new MqttClient(broker, UNIT, new MemoryPersistence());
        try {
            client.connect(options());
            client.subscribe(
                    "yc/1/" + UNIT + "/kept",
                    1,
                    (topic, message) -> kept(Json.mapper().readTree(message.getPayload())));
            for (long from = keptUpTo + 1; from <= last; from += A_MESSAGE) {
                byte[] edges = edges(from, Math.min(last, from + A_MESSAGE - 1));
                client.publish("yc/1/" + UNIT + "/edges", edges, 1, false);
            }
        } catch (MqttException gone) {
            // The gateway was killed; what is not kept is sent on the next connection.
            client.disconnectForcibly(1, 1, false);
        }
    }

    private void kept(JsonNode message) {
        keptUpTo = Math.max(keptUpTo, message.path("upto").asLong());
    }

    /** Says how many edges it still holds; the gateway then repeats what it has. */
    void reportHealth(long last) throws MqttException {
        ObjectNode health =
                Json.mapper()
                        .createObjectNode()
                        .put("v", 1)
                        .put("boot", BOOT)
                        .put("tick", 1_000_000 + last * 50_000 + 1)
                        .put("nextSeq", last + 1)
                        .put("batteryMillivolts", 0)
                        .put("rssiDbm", -60)
                        .put("bufferFill", last - keptUpTo)
                        .put("lowestFreeMemory", 100_000)
                        .put("firmware", "steady-1")
                        .put("contract", 1);
        ArrayNode states = health.putArray("sensorStates");
        IntStream.rangeClosed(1, 8).forEach(sensor -> states.add(sensor == 3 ? 0 : -1));
        byte[] bytes = health.toString().getBytes(StandardCharsets.UTF_8);
        client.publish("yc/1/" + UNIT + "/health", bytes, 0, false);
    }

    void disconnect() throws MqttException {
        client.disconnectForcibly(1, 100);
        client.close(true);
    }

    private MqttConnectOptions options() throws Exception {
        JsonNode passwords = Json.mapper().readTree(data.resolve("unit-passwords.json").toFile());
        MqttConnectOptions options = new MqttConnectOptions();
        options.setUserName(UNIT);
        options.setPassword(passwords.path(UNIT).asText().toCharArray());
        return options;
    }

    private static byte[] edges(long from, long to) {
        ArrayNode edges = Json.mapper().createArrayNode();
        for (long seq = from; seq <= to; seq++) {
            edges.addObject()
                    .put("v", 1)
                    .put("boot", BOOT)
                    .put("seq", seq)
                    .put("sensor", 3)
                    .put("state", (seq + 1) % 2)
                    .put("tick", 1_000_000 + seq * 50_000);
        }
        return edges.toString().getBytes(StandardCharsets.UTF_8);
    }
}
