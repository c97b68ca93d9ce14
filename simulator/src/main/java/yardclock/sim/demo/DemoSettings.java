package yardclock.sim.demo;

import java.nio.file.Path;

/**
 * What a demo is started with.
 *
 * @param speed exam time per real time, 1–60
 * @param seed from which every candidate's day is drawn
 * @param candidates how many of the demo roster come, from its top
 * @param http HOST:PORT of the pages
 * @param mqtt HOST:PORT of the embedded broker
 * @param broker {@code embedded}, or the address of a broker that runs already
 * @param data the day's directory, or null for a temporary one
 * @param untilFinished whether to end, with one line of figures, when every candidate is done
 */
public record DemoSettings(
        int speed,
        long seed,
        int candidates,
        String http,
        String mqtt,
        String broker,
        Path data,
        boolean untilFinished) {
    public static final int SPEED_MAX = 60;
    public static final String EMBEDDED = "embedded";

    boolean hasEmbeddedBroker() {
        return broker.equals(EMBEDDED);
    }

    /** Where field units find the broker. */
    String brokerUri() {
        return hasEmbeddedBroker() ? "tcp://" + mqtt : broker;
    }
}
