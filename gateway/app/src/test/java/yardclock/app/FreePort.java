package yardclock.app;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;

/** A port of the loopback that nobody listened on a moment ago. */
public final class FreePort {
    private FreePort() {}

    public static int find() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }
}
