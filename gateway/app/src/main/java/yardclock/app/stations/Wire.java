package yardclock.app.stations;

import org.eclipse.paho.client.mqttv3.MqttMessage;

/** What a message came in by, and how it is done with there. Safe from any thread. */
interface Wire {
    /** False on a wire that is gone: the message will come again. */
    boolean acknowledge(MqttMessage message);

    /** Takes nothing more: what is not acknowledged is delivered again on the next wire. */
    void giveUp(String why);

    boolean isOver();
}
