package yardclock.sim.units;

import org.eclipse.paho.client.mqttv3.IMqttActionListener;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.sim.stage.Stage;

import java.util.Map;
import java.util.function.Consumer;

/**
 * A link over MQTT 3.1.1: persistent session, the unit's id as client id, last will, own loop for
 * every connect. Automatic reconnect is not used, as it does not cover the first one.
 */
public final class PahoLink implements UnitLink, MqttCallback {
    private static final Logger LOG = LoggerFactory.getLogger(PahoLink.class);
    private static final String ROOT = "yc/1/";
    private static final Map<String, Integer> LISTENS =
            Map.of("kept", 1, "resend", 1, "settings", 1, "identify", 1, "ask", 0, "show", 0);
    private static final int KEEP_ALIVE_SECONDS = 5;
    private static final int MOST_IN_FLIGHT = 1_000;
    private static final int FIRST_RETRY_REAL_MILLIS = 400;
    private static final int LAST_RETRY_REAL_MILLIS = 2_000;

    private final Stage stage;
    private final String unit;
    private final MqttConnectOptions options;
    private final MqttAsyncClient client;
    private Receiver receiver;
    private volatile int retryMillis = FIRST_RETRY_REAL_MILLIS;
    private volatile boolean closed;

    public PahoLink(Stage stage, String brokerUri, String unit, String password) {
        this.stage = stage;
        this.unit = unit;
        this.options = options(unit, password);
        try {
            client = new MqttAsyncClient(brokerUri, unit, new MemoryPersistence());
        } catch (MqttException e) {
            throw new IllegalArgumentException("not a broker's address: " + brokerUri, e);
        }
        client.setCallback(this);
    }

    private static MqttConnectOptions options(String unit, String password) {
        MqttConnectOptions options = new MqttConnectOptions();
        options.setMqttVersion(MqttConnectOptions.MQTT_VERSION_3_1_1);
        options.setCleanSession(false);
        options.setUserName(unit);
        options.setPassword(password.toCharArray());
        options.setKeepAliveInterval(KEEP_ALIVE_SECONDS);
        options.setMaxInflight(MOST_IN_FLIGHT);
        options.setWill(topic(unit, "health"), UnitMessages.will(), 1, true);
        return options;
    }

    private static String topic(String unit, String name) {
        return ROOT + unit + "/" + name;
    }

    @Override
    public void open(Receiver to) {
        receiver = to;
        connect();
    }

    private void connect() {
        if (closed || client.isConnected()) {
            return;
        }
        try {
            client.connect(options, null, whenDone(this::subscribe, this::retry));
        } catch (MqttException e) {
            retry(e);
        }
    }

    private void subscribe() {
        String[] topics = LISTENS.keySet().stream().map(n -> topic(unit, n)).toArray(String[]::new);
        int[] qos = LISTENS.values().stream().mapToInt(Integer::intValue).toArray();
        try {
            client.subscribe(topics, qos, null, whenDone(this::subscribed, this::startOver));
        } catch (MqttException e) {
            startOver(e);
        }
    }

    /** A session that hears nothing is of no use: break it off, so that the retry connects anew. */
    private void startOver(Throwable cause) {
        dropConnection();
        retry(cause);
    }

    private void retry(Throwable cause) {
        if (!closed) {
            LOG.debug("{} has no broker: {}", unit, cause.toString());
            stage.afterRealMillis(retryMillis, this::connect);
            retryMillis = Math.min(LAST_RETRY_REAL_MILLIS, retryMillis * 3 / 2);
        }
    }

    private void subscribed() {
        retryMillis = FIRST_RETRY_REAL_MILLIS;
        stage.soon(receiver::up);
    }

    @Override
    public boolean publish(Message message, Runnable handed) {
        if (!client.isConnected()) {
            return false;
        }
        try {
            client.publish(
                    topic(unit, message.name()),
                    message.payload(),
                    message.qos(),
                    message.retained(),
                    null,
                    whenDone(() -> stage.soon(handed), lost -> {}));
            return true;
        } catch (MqttException e) {
            LOG.debug("{} could not publish: {}", unit, e.toString());
            return false;
        }
    }

    @Override
    public void breakOff() {
        dropConnection();
        lost();
    }

    private void dropConnection() {
        try {
            client.disconnectForcibly(0, 1, false);
        } catch (MqttException e) {
            LOG.debug("{} was not connected: {}", unit, e.toString());
        }
    }

    private void lost() {
        if (!closed) {
            stage.soon(receiver::down);
            stage.afterRealMillis(FIRST_RETRY_REAL_MILLIS, this::connect);
        }
    }

    @Override
    public void close() {
        closed = true;
        try {
            if (client.isConnected()) {
                client.disconnectForcibly(0, 200);
            }
            client.close(true);
        } catch (MqttException e) {
            LOG.debug("{} closed roughly: {}", unit, e.toString());
        }
    }

    @Override
    public void connectionLost(Throwable cause) {
        lost();
    }

    @Override
    public void messageArrived(String topic, MqttMessage message) {
        String prefix = topic(unit, "");
        if (topic.startsWith(prefix)) {
            receiver.arrived(topic.substring(prefix.length()), message.getPayload());
        } else {
            LOG.warn("{} was sent something of another's: {}", unit, topic);
        }
    }

    @Override
    public void deliveryComplete(IMqttDeliveryToken token) {
        // each publish has its own listener
    }

    private static IMqttActionListener whenDone(Runnable done, Consumer<Throwable> failed) {
        return new IMqttActionListener() {
            @Override
            public void onSuccess(IMqttToken token) {
                done.run();
            }

            @Override
            public void onFailure(IMqttToken token, Throwable cause) {
                failed.accept(cause);
            }
        };
    }
}
