package yardclock.app.stations;

import java.time.Duration;

/**
 * Where the broker is and who the gateway is there.
 *
 * @param uri {@code tcp://host:port} or {@code ssl://host:port}
 * @param fullInboxPatience how long a message may wait for room in the inbox before the link is
 *     given up and the broker has to deliver again; real time
 */
public record LinkSettings(String uri, String user, String password, Duration fullInboxPatience) {
    /** One gateway per broker: a second one with this id takes the first one's link over. */
    static final String CLIENT_ID = "gateway";

    static final int CONNECT_SECONDS = 5;
    static final int KEEP_ALIVE_SECONDS = 15;

    /** Below Paho's own limit, so that it never throws 32202. */
    static final int UNDER_WAY = 100;

    static final int PAHO_UNDER_WAY = 200;
    static final Duration FIRST_RETRY = Duration.ofMillis(250);
    static final Duration LONGEST_RETRY = Duration.ofSeconds(10);

    public static LinkSettings of(String uri, String user, String password) {
        return new LinkSettings(uri, user, password, Duration.ofSeconds(3));
    }

    @Override
    public String toString() {
        return user + " at " + uri;
    }
}
