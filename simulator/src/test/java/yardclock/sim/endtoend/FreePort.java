package yardclock.sim.endtoend;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;

/** A port nobody listens on at the moment. */
final class FreePort {
    private FreePort() {}

    static int any() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }

    static String address() throws IOException {
        return "127.0.0.1:" + any();
    }
}
