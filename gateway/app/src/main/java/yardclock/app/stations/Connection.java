package yardclock.app.stations;

import org.eclipse.paho.client.mqttv3.IMqttActionListener;
import org.eclipse.paho.client.mqttv3.IMqttDeliveryToken;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttAsyncClient;
import org.eclipse.paho.client.mqttv3.MqttCallback;
import org.eclipse.paho.client.mqttv3.MqttConnectOptions;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.eclipse.paho.client.mqttv3.MqttMessage;
import org.eclipse.paho.client.mqttv3.persist.MemoryPersistence;

import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * One connection to the broker, from its opening to its end; a new connection is a new object.
 *
 * <p>So nothing of an old connection, neither a permit nor a message id, can reach a new one: a
 * receipt that comes late acknowledges on a connection that is gone, and the broker delivers that
 * message again. The session at the broker is persistent and belongs to the client id.
 */
final class Connection implements Wire, AutoCloseable {
    private static final String[] FILTERS = {
        "yc/1/+/edges", "yc/1/+/health", "yc/1/+/climate", "yc/1/+/applied", "yc/1/+/answer"
    };
    private static final int[] QOS = {1, 1, 1, 1, 0};
    private static final int REFUSED_SUBSCRIPTION = 0x80;
    private static final long STUCK_SECONDS = 5;
    private static final long QUIET_MILLIS = 1_000;
    private static final long WAIT_MILLIS =
            TimeUnit.SECONDS.toMillis(2L * LinkSettings.CONNECT_SECONDS);

    private final MqttAsyncClient client;
    private final Semaphore underWay = new Semaphore(LinkSettings.UNDER_WAY);
    private final Object acknowledging = new Object();
    private boolean closed;
    private volatile boolean subscribed;
    private volatile String end;

    /** Takes what arrives, on Paho's thread. */
    interface Arrivals {
        void arrived(Wire wire, String topic, MqttMessage message);
    }

    Connection(LinkSettings settings, Arrivals arrivals) throws MqttException {
        client =
                new MqttAsyncClient(
                        settings.uri(), LinkSettings.CLIENT_ID, new MemoryPersistence());
        client.setManualAcks(true);
        client.setCallback(new Listener(arrivals));
        try {
            client.connect(options(settings)).waitForCompletion(WAIT_MILLIS);
            client.subscribe(FILTERS, QOS, null, new Subscribed());
        } catch (MqttException e) {
            close();
            throw e;
        }
    }

    /** Whether the broker has granted all; a large backlog may come in before it says so. */
    boolean isSubscribed() {
        return subscribed;
    }

    private static MqttConnectOptions options(LinkSettings settings) {
        MqttConnectOptions options = new MqttConnectOptions();
        options.setMqttVersion(MqttConnectOptions.MQTT_VERSION_3_1_1);
        options.setCleanSession(false);
        options.setAutomaticReconnect(false);
        options.setConnectionTimeout(LinkSettings.CONNECT_SECONDS);
        options.setKeepAliveInterval(LinkSettings.KEEP_ALIVE_SECONDS);
        options.setMaxInflight(LinkSettings.PAHO_UNDER_WAY);
        options.setUserName(settings.user());
        options.setPassword(settings.password().toCharArray());
        return options;
    }

    /** Publishes as soon as few enough messages are under way; link thread only. */
    boolean reserve() throws InterruptedException {
        if (underWay.tryAcquire(STUCK_SECONDS, TimeUnit.SECONDS)) {
            return true;
        }
        giveUp("the broker has taken nothing for " + STUCK_SECONDS + " s");
        return false;
    }

    /** Sends what was reserved for. False when the link broke; the message may be lost then. */
    boolean publish(Outgoing message) {
        try {
            client.publish(
                    message.topic(),
                    message.payload(),
                    message.qos(),
                    message.retained(),
                    null,
                    new Release());
            return true;
        } catch (MqttException e) {
            underWay.release();
            giveUp("a message could not be sent: " + words(e));
            return false;
        }
    }

    /**
     * Any thread. False on a connection that is gone: the message will come again.
     *
     * <p>Locked against closing, because Paho takes its client apart without a lock of its own.
     */
    @Override
    public boolean acknowledge(MqttMessage message) {
        synchronized (acknowledging) {
            if (closed) {
                return false;
            }
            try {
                client.messageArrivedComplete(message.getId(), message.getQos());
                return true;
            } catch (MqttException gone) {
                giveUp("an acknowledgement could not be sent: " + words(gone));
                return false;
            }
        }
    }

    /** Takes nothing more: what is not acknowledged is delivered again on the next connection. */
    @Override
    public void giveUp(String why) {
        if (end == null) {
            end = why;
        }
    }

    @Override
    public boolean isOver() {
        return end != null;
    }

    /** Why it ended; null while it has not. */
    String end() {
        return end;
    }

    static String words(MqttException e) {
        String cause = e.getCause() == null ? "" : ", " + e.getCause().getMessage();
        return e.getMessage() + " (" + e.getReasonCode() + cause + ")";
    }

    @Override
    public void close() {
        if (!isOver()) {
            awaitQuiet();
        }
        giveUp("closed");
        synchronized (acknowledging) {
            closed = true;
        }
        try {
            if (client.isConnected()) {
                client.disconnectForcibly(0, 500);
            }
        } catch (MqttException alreadyGone) {
            // Closing is all that is left to do.
        }
        try {
            client.close(true);
        } catch (MqttException stillClosing) {
            // Paho frees its threads when its own shutdown is through.
        }
    }

    /** Lets what is under way arrive, so that the broker is not left with half of it. */
    private void awaitQuiet() {
        try {
            if (!underWay.tryAcquire(LinkSettings.UNDER_WAY, QUIET_MILLIS, TimeUnit.MILLISECONDS)) {
                giveUp("closed with messages under way");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private final class Release implements IMqttActionListener {
        @Override
        public void onSuccess(IMqttToken token) {
            underWay.release();
        }

        @Override
        public void onFailure(IMqttToken token, Throwable why) {
            underWay.release();
        }
    }

    private final class Subscribed implements IMqttActionListener {
        @Override
        public void onSuccess(IMqttToken token) {
            for (int granted : token.getGrantedQos()) {
                if (granted == REFUSED_SUBSCRIPTION) {
                    giveUp("the broker refuses a subscription");
                }
            }
            subscribed = true;
        }

        @Override
        public void onFailure(IMqttToken token, Throwable why) {
            giveUp("the subscriptions failed: " + why.getMessage());
        }
    }

    private final class Listener implements MqttCallback {
        private final Arrivals arrivals;

        Listener(Arrivals arrivals) {
            this.arrivals = arrivals;
        }

        @Override
        public void messageArrived(String topic, MqttMessage message) {
            arrivals.arrived(Connection.this, topic, message);
        }

        @Override
        public void connectionLost(Throwable cause) {
            giveUp("the link broke: " + cause.getMessage());
        }

        @Override
        public void deliveryComplete(IMqttDeliveryToken token) {
            // The permit is released by the listener of each publication.
        }
    }
}
