package yardclock.sim.endtoend;

import com.fasterxml.jackson.databind.JsonNode;

import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttClient;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

import yardclock.app.json.Json;

import java.io.IOException;
import java.util.Set;
import java.util.TreeSet;

/** A client that is neither gateway nor unit and counts the edges that pass by. */
final class Onlooker implements MqttCallback, AutoCloseable {
    private final MqttClient client;
    private final Set<Seen> edges = new TreeSet<>();
    private String broken = "";

    /** One edge by its key. */
    record Seen(String unit, String boot, int seq) implements Comparable<Seen> {
        @Override
        public int compareTo(Seen other) {
            int byUnit = unit.compareTo(other.unit);
            int byBoot = byUnit != 0 ? byUnit : boot.compareTo(other.boot);
            return byBoot != 0 ? byBoot : Integer.compare(seq, other.seq);
        }
    }

    Onlooker(String uri) throws MqttException {
        client = new MqttClient(uri, FieldBroker.ONLOOKER, new MemoryPersistence());
        MqttConnectOptions options = new MqttConnectOptions();
        options.setUserName(FieldBroker.ONLOOKER);
        options.setPassword(FieldBroker.ONLOOKER_PASSWORD.toCharArray());
        client.setCallback(this);
        client.connect(options);
        client.subscribe("yc/1/+/edges", 1);
    }

    @Override
    public synchronized void messageArrived(String topic, MqttMessage message) throws IOException {
        String unit = topic.split("/")[2];
        JsonNode edges = Json.mapper().readTree(message.getPayload());
        if (edges.isArray()) {
            edges.forEach(edge -> see(unit, edge));
        } else {
            see(unit, edges);
        }
    }

    private void see(String unit, JsonNode edge) {
        edges.add(new Seen(unit, edge.get("boot").textValue(), edge.get("seq").intValue()));
    }

    synchronized Set<Seen> edges() {
        return new TreeSet<>(edges);
    }

    synchronized String broken() {
        return broken;
    }

    @Override
    public synchronized void connectionLost(Throwable cause) {
        broken = cause.toString();
    }

    @Override
    public void deliveryComplete(IMqttDeliveryToken token) {
        // it says nothing
    }

    @Override
    public void close() throws MqttException {
        client.disconnectForcibly(0, 200);
        client.close(true);
    }
}
