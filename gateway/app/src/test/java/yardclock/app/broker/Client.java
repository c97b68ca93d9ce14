package yardclock.app.broker;

import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/** Any MQTT client: a unit, the gateway, or somebody who should not get in. */
final class Client implements AutoCloseable {
    private static final long WAIT_MILLIS = 10_000;

    private final MqttAsyncClient mqtt;
    private final List<String> heard = new CopyOnWriteArrayList<>();

    Client(String uri, String clientId, String user, String password) throws MqttException {
        mqtt = new MqttAsyncClient(uri, clientId, new MemoryPersistence());
        // Set before connecting: a session's backlog comes in before any subscription is repeated.
        mqtt.setCallback(new Ear());
        MqttConnectOptions options = new MqttConnectOptions();
        options.setMqttVersion(MqttConnectOptions.MQTT_VERSION_3_1_1);
        options.setCleanSession(false);
        if (user != null) {
            options.setUserName(user);
            options.setPassword(password.toCharArray());
        }
        mqtt.connect(options).waitForCompletion(WAIT_MILLIS);
    }

    /** What the broker granted: a QoS, or 128 for a refusal. */
    int subscribe(String filter) throws MqttException {
        IMqttToken token = mqtt.subscribe(filter, 1);
        token.waitForCompletion(WAIT_MILLIS);
        return token.getGrantedQos()[0];
    }

    void publish(String topic, String text, boolean retained) throws MqttException {
        mqtt.publish(topic, text.getBytes(StandardCharsets.UTF_8), 1, retained)
                .waitForCompletion(WAIT_MILLIS);
    }

    List<String> heard() {
        return heard;
    }

    boolean isConnected() {
        return mqtt.isConnected();
    }

    @Override
    public void close() throws MqttException {
        if (mqtt.isConnected()) {
            mqtt.disconnectForcibly(0, 200);
        }
        mqtt.close(true);
    }

    private final class Ear implements MqttCallback {
        @Override
        public void messageArrived(String topic, MqttMessage message) {
            heard.add(topic + " " + new String(message.getPayload(), StandardCharsets.UTF_8));
        }

        @Override
        public void connectionLost(Throwable cause) {}

        @Override
        public void deliveryComplete(IMqttDeliveryToken token) {}
    }
}
