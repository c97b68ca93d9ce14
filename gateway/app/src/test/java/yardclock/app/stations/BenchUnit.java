package yardclock.app.stations;

import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;

/** A field unit played by hand: says what the test says, remembers what it is told. */
final class BenchUnit implements AutoCloseable {
    static final String BOOT = "00000000000000a1";

    private static final long WAIT_MILLIS = 10_000;

    private final String id;
    private final MqttAsyncClient client;
    private final Map<String, List<String>> heard = new ConcurrentHashMap<>();

    BenchUnit(String uri, String id, String password) throws MqttException {
        this(uri, id, id, password);
    }

    BenchUnit(String uri, String clientId, String id, String password) throws MqttException {
        this.id = id;
        client = new MqttAsyncClient(uri, clientId, new MemoryPersistence());
        MqttConnectOptions options = new MqttConnectOptions();
        options.setMqttVersion(MqttConnectOptions.MQTT_VERSION_3_1_1);
        options.setCleanSession(false);
        options.setMaxInflight(500);
        if (password != null) {
            options.setUserName(id);
            options.setPassword(password.toCharArray());
        }
        options.setWill(
                topic("health"), "{\"v\":1,\"up\":0}".getBytes(StandardCharsets.UTF_8), 1, true);
        client.connect(options).waitForCompletion(WAIT_MILLIS);
    }

    void listen(String leaf) throws MqttException {
        List<String> lines = new CopyOnWriteArrayList<>();
        heard.put(leaf, lines);
        client.subscribe(
                        topic(leaf),
                        leaf.equals("ask") || leaf.equals("show") ? 0 : 1,
                        (topic, message) ->
                                lines.add(new String(message.getPayload(), StandardCharsets.UTF_8)))
                .waitForCompletion(WAIT_MILLIS);
    }

    /** Answers every question at once, with its tick going from 1,000,000 in steps of 10. */
    void answerQuestions() throws MqttException {
        List<String> lines = new CopyOnWriteArrayList<>();
        heard.put("ask", lines);
        client.subscribe(
                        topic("ask"),
                        0,
                        (topic, message) -> {
                            String ask = new String(message.getPayload(), StandardCharsets.UTF_8);
                            long tick = 1_000_000 + 10L * lines.size();
                            lines.add(ask);
                            String answered =
                                    ask.replaceFirst(
                                                    "\"gateway\":\\d+", "\"boot\":\"" + BOOT + "\"")
                                            .replace(
                                                    "}",
                                                    ",\"received\":"
                                                            + tick
                                                            + ",\"sent\":"
                                                            + (tick + 5)
                                                            + "}");
                            client.publish(
                                    topic("answer"),
                                    answered.getBytes(StandardCharsets.UTF_8),
                                    0,
                                    false);
                        })
                .waitForCompletion(WAIT_MILLIS);
    }

    List<String> heard(String leaf) {
        return heard.get(leaf);
    }

    /** Publishes and waits for the broker's own acknowledgement. */
    void say(String leaf, String json) throws MqttException {
        publish(topic(leaf), json, false).waitForCompletion(WAIT_MILLIS);
    }

    void sayRetained(String leaf, String json) throws MqttException {
        publish(topic(leaf), json, true).waitForCompletion(WAIT_MILLIS);
    }

    IMqttToken publish(String topic, String json, boolean retained) throws MqttException {
        return client.publish(topic, json.getBytes(StandardCharsets.UTF_8), 1, retained);
    }

    void edges(int from, int to) throws MqttException {
        for (int seq = from; seq <= to; seq++) {
            say("edges", edge(seq));
        }
    }

    static String edge(long seq) {
        return "{\"v\":1,\"boot\":\""
                + BOOT
                + "\",\"seq\":"
                + seq
                + ",\"sensor\":1,\"state\":"
                + seq % 2
                + ",\"tick\":"
                + (1_000 + 500 * seq)
                + "}";
    }

    static String health(String boot) {
        return "{\"v\":1,\"boot\":\""
                + boot
                + "\",\"tick\":5000,\"nextSeq\":0,\"batteryMillivolts\":3900,\"rssiDbm\":-60,"
                + "\"bufferFill\":0,\"lowestFreeMemory\":90000,\"firmware\":\"bench 1\","
                + "\"contract\":1,\"sensorStates\":[0,0,0,0,0,0,0,-1]}";
    }

    boolean isConnected() {
        return client.isConnected();
    }

    /** Breaks off without a word, so that the broker sends the last will. */
    void drop() throws MqttException {
        client.disconnectForcibly(0, 0, false);
    }

    private String topic(String leaf) {
        return "yc/1/" + id + "/" + leaf;
    }

    @Override
    public void close() throws MqttException {
        if (client.isConnected()) {
            client.disconnectForcibly(0, 200);
        }
        client.close(true);
    }
}
