package yardclock.app.boot;

import java.net.InetAddress;
import java.net.UnknownHostException;

/**
 * An address to listen on, as {@code 127.0.0.1:8470} or {@code [::1]:8470}; port 0 takes any free
 * one.
 */
public record HostPort(String host, int port) {
    private static final int PORT_MAX = 65_535;

    public HostPort {
        if (host.isEmpty() || port < 0 || port > PORT_MAX) {
            throw new IllegalArgumentException("not an address as 127.0.0.1:8470");
        }
    }

    /** Throws {@link IllegalArgumentException} with words for the operator. */
    public static HostPort parse(String text) {
        int colon = text.lastIndexOf(':');
        if (colon < 1) {
            throw new IllegalArgumentException("'" + text + "' is no HOST:PORT as 127.0.0.1:8470");
        }
        String host = text.substring(0, colon);
        boolean bracketed = host.startsWith("[") && host.endsWith("]");
        if (!bracketed && host.indexOf(':') >= 0) {
            throw new IllegalArgumentException("put an IPv6 address in brackets, as [::1]:8470");
        }
        try {
            return new HostPort(
                    bracketed ? host.substring(1, host.length() - 1) : host,
                    Integer.parseInt(text.substring(colon + 1)));
        } catch (NumberFormatException e) {
            throw new IllegalArgumentException(
                    "the port in '" + text + "' must be a number from 0 to " + PORT_MAX, e);
        }
    }

    /** Whether only this machine itself can reach it; false for a name nobody knows. */
    boolean isLoopback() {
        try {
            return InetAddress.getByName(host).isLoopbackAddress();
        } catch (UnknownHostException e) {
            return false;
        }
    }

    @Override
    public String toString() {
        return (host.indexOf(':') >= 0 ? "[" + host + "]" : host) + ":" + port;
    }
}
