package yardclock.app.boot;

import com.fasterxml.jackson.databind.JsonNode;

import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

import yardclock.app.json.Json;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** A field unit by hand: sends edges when told, and remembers what the gateway has kept. */
final class UnitByHand implements AutoCloseable {
    private static final String BOOT = "00112233445566aa";

    private final MqttClient client;
    private final String unit;
    private volatile long keptUpTo = -1;

    private UnitByHand(MqttClient client, String unit) {
        this.client = client;
        this.unit = unit;
    }

    static UnitByHand connect(Path directory, HostPort mqtt, String unit) throws Exception {
        JsonNode passwords =
                Json.mapper().readTree(directory.resolve("day/unit-passwords.json").toFile());
        MqttClient client = new MqttClient("tcp://" + mqtt, unit, new MemoryPersistence());
        MqttConnectOptions options = new MqttConnectOptions();
        options.setUserName(unit);
        options.setPassword(passwords.path(unit).asText().toCharArray());
        client.connect(options);
        UnitByHand byHand = new UnitByHand(client, unit);
        client.subscribe(
                "yc/1/" + unit + "/kept", 1, (topic, message) -> byHand.kept(message.getPayload()));
        return byHand;
    }

    private void kept(byte[] payload) throws Exception {
        keptUpTo = Json.mapper().readTree(payload).path("upto").asLong();
    }

    /** Sends the edges with these sequence numbers, both included, in one message. */
    void edges(long from, long to) throws Exception {
        var edges = Json.mapper().createArrayNode();
        for (long seq = from; seq <= to; seq++) {
            edges.addObject()
                    .put("v", 1)
                    .put("boot", BOOT)
                    .put("seq", seq)
                    .put("sensor", 3)
                    .put("state", (seq + 1) % 2)
                    .put("tick", 1_000_000 + seq * 50_000);
        }
        say("edges", edges.toString());
    }

    /** Sends any text at all. */
    void say(String topic, String text) throws Exception {
        byte[] payload = text.getBytes(StandardCharsets.UTF_8);
        client.publish("yc/1/" + unit + "/" + topic, payload, 1, false);
    }

    long keptUpTo() {
        return keptUpTo;
    }

    @Override
    public void close() throws Exception {
        client.disconnectForcibly(100, 500);
        client.close(true);
    }
}
