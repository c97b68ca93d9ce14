package yardclock.app.boot;

import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;

import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttMessage;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

import yardclock.app.json.Json;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Duration;

/** A field unit by hand: sends edges when told, and remembers what the gateway has kept. */
final class UnitByHand implements AutoCloseable {
    private static final String BOOT = "00112233445566aa";

    private static final Duration POLL = Duration.ofMillis(50);

    /** A report each five seconds, as often as units give one. */
    private static final int POLLS_A_REPORT = 100;

    private final MqttClient client;
    private final String unit;
    private volatile long keptUpTo = -1;
    private int polls;

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

    /** Answers every question for the time from now on. */
    void answerQuestions() throws Exception {
        client.subscribe(
                "yc/1/" + unit + "/ask", 0, (topic, message) -> answer(message.getPayload()));
    }

    private void answer(byte[] ask) throws Exception {
        long received = tick();
        var answer =
                Json.mapper()
                        .createObjectNode()
                        .put("v", 1)
                        .put("id", Json.mapper().readTree(ask).path("id").asText())
                        .put("boot", BOOT)
                        .put("received", received)
                        .put("sent", tick());
        MqttMessage message = new MqttMessage(answer.toString().getBytes(StandardCharsets.UTF_8));
        message.setQos(0);
        client.getTopic("yc/1/" + unit + "/answer").publish(message);
    }

    /** The unit's own counter, which runs on whatever becomes of the gateway. */
    static long tick() {
        return System.nanoTime() / 1_000;
    }

    /** A sign of life, after which the gateway asks for the time. */
    void health(long nextSeq) throws Exception {
        health(nextSeq, 0);
    }

    private void health(long nextSeq, int bufferFill) throws Exception {
        var health =
                Json.mapper()
                        .createObjectNode()
                        .put("v", 1)
                        .put("boot", BOOT)
                        .put("tick", tick())
                        .put("nextSeq", nextSeq)
                        .put("batteryMillivolts", 3_900)
                        .put("rssiDbm", -60)
                        .put("bufferFill", bufferFill)
                        .put("lowestFreeMemory", 90_000)
                        .put("firmware", "by hand")
                        .put("contract", 1);
        var states = health.putArray("sensorStates");
        for (int sensor = 1; sensor <= 8; sensor++) {
            states.add(0);
        }
        say("health", health.toString());
    }

    /** A sensor changes now. */
    void edgeNow(long seq, int sensor, int state) throws Exception {
        say(
                "edges",
                Json.mapper()
                        .createObjectNode()
                        .put("v", 1)
                        .put("boot", BOOT)
                        .put("seq", seq)
                        .put("sensor", sensor)
                        .put("state", state)
                        .put("tick", tick())
                        .toString());
    }

    /** Sends any text at all. */
    void say(String topic, String text) throws Exception {
        byte[] payload = text.getBytes(StandardCharsets.UTF_8);
        client.publish("yc/1/" + unit + "/" + topic, payload, 1, false);
    }

    /**
     * Waits until the gateway said that it kept everything up to this edge. What it says may get
     * lost at the broker; as every unit does, this one then reports that its buffer is not empty,
     * and is told again.
     */
    void awaitKept(long upTo) {
        await().pollInterval(POLL).until(() -> isKept(upTo));
    }

    private boolean isKept(long upTo) throws Exception {
        polls++;
        if (keptUpTo != upTo && polls % POLLS_A_REPORT == 0) {
            health(upTo + 1, 1);
        }
        return keptUpTo == upTo;
    }

    @Override
    public void close() throws Exception {
        client.disconnectForcibly(100, 500);
        client.close(true);
    }
}
