package yardclock.app.boot;

import yardclock.app.pins.BoardWiring;

import java.nio.file.Path;

/**
 * What a gateway is started with.
 *
 * @param data the day's directory: journal, passwords, first codes, the embedded broker's store
 * @param http where pages and tablets' requests come in
 * @param mqtt where the embedded broker listens
 * @param broker {@code embedded}, or the address of another broker
 * @param tls what pages are encrypted with, or null for plain HTTP
 * @param insecureLan whether pages may be served over the network without encryption
 * @param plan the exam plan's file, or null for the bundled one or the one already frozen
 * @param roster the roster's file, or null likewise
 * @param speed exam time per real time; 1 on a real day
 * @param board what is wired to this very board
 */
public record ServeSettings(
        Path data,
        HostPort http,
        HostPort mqtt,
        String broker,
        TlsFiles tls,
        boolean insecureLan,
        Path plan,
        Path roster,
        int speed,
        BoardWiring board) {
    /** The word that stands for the broker inside the gateway's own process. */
    public static final String EMBEDDED = "embedded";

    boolean hasOwnBroker() {
        return broker.equals(EMBEDDED);
    }

    /** Refuses what would be unsafe, before anything is opened. */
    void check() throws RefusedException {
        if (tls == null && !http.isLoopback() && !insecureLan) {
            throw new RefusedException(
                    "Pages at "
                            + http
                            + " would go over the network unencrypted. Give --tls-keystore, serve"
                            + " them at 127.0.0.1, or add --insecure-lan on a network of your"
                            + " own.");
        }
        if (!hasOwnBroker() && !broker.startsWith("tcp://") && !broker.startsWith("ssl://")) {
            throw new RefusedException(
                    "The broker is 'embedded' or an address as tcp://HOST:PORT or ssl://HOST:PORT,"
                            + " not '"
                            + broker
                            + "'.");
        }
    }
}
