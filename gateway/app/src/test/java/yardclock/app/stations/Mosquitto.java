package yardclock.app.stations;

import static org.awaitility.Awaitility.await;

import yardclock.app.FreePort;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * A real mosquitto with the very files of {@code deploy/}; only the address and the paths are the
 * test's.
 */
final class Mosquitto implements AutoCloseable {
    private static final Path BINARY = Path.of("/usr/sbin/mosquitto");
    private static final Path DEPLOY = Vector.SPEC.resolveSibling("deploy");

    private final Path folder;
    private final int port;
    private Process process;

    Mosquitto(Path folder, List<String> users) throws Exception {
        if (!Files.isExecutable(BINARY)) {
            throw new IOException(
                    "mosquitto is missing: the tests need " + BINARY + " (apt install mosquitto)");
        }
        this.folder = folder;
        this.port = FreePort.find();
        Files.copy(DEPLOY.resolve("mosquitto.acl"), folder.resolve("acl"));
        Files.writeString(folder.resolve("mosquitto.conf"), placedHere());
        writePasswords(users);
        start();
    }

    private String placedHere() throws IOException {
        String text = Files.readString(DEPLOY.resolve("mosquitto.conf"));
        text = replaced(text, "listener", port + " 127.0.0.1");
        text = replaced(text, "password_file", folder.resolve("passwords").toString());
        text = replaced(text, "acl_file", folder.resolve("acl").toString());
        return text
                + "persistence_location "
                + folder
                + "/\nlog_dest file "
                + folder.resolve("log")
                + "\nuser "
                + System.getProperty("user.name")
                + "\n";
    }

    private static String replaced(String text, String key, String value) throws IOException {
        String changed = text.replaceFirst("(?m)^" + key + " .*$", key + " " + value);
        if (changed.equals(text)) {
            throw new IOException("deploy/mosquitto.conf has no line for " + key);
        }
        return changed;
    }

    private void writePasswords(List<String> users) throws Exception {
        StringBuilder lines = new StringBuilder();
        users.forEach(user -> lines.append(user).append(':').append(password(user)).append('\n'));
        Path file = folder.resolve("passwords");
        Files.writeString(file, lines);
        Process hashing =
                new ProcessBuilder("/usr/bin/mosquitto_passwd", "-U", file.toString())
                        .inheritIO()
                        .start();
        if (!hashing.waitFor(10, TimeUnit.SECONDS) || hashing.exitValue() != 0) {
            throw new IOException("mosquitto_passwd failed");
        }
    }

    static String password(String user) {
        return "pass-of-" + user;
    }

    void start() throws IOException {
        process =
                new ProcessBuilder(
                                BINARY.toString(),
                                "-c",
                                folder.resolve("mosquitto.conf").toString())
                        .redirectErrorStream(true)
                        .redirectOutput(folder.resolve("out").toFile())
                        .start();
        await("mosquitto, see " + folder.resolve("log"))
                .ignoreExceptions()
                .until(
                        () -> {
                            try (Socket socket = new Socket()) {
                                socket.connect(new InetSocketAddress("127.0.0.1", port), 200);
                                return true;
                            }
                        });
    }

    /** As by a power cut: no last save. */
    void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    /** Whether its file on disk holds this text. */
    boolean hasSaved(String text) throws IOException {
        Path file = folder.resolve("mosquitto.db");
        return Files.exists(file)
                && Files.readString(file, StandardCharsets.ISO_8859_1).contains(text);
    }

    String uri() {
        return "tcp://127.0.0.1:" + port;
    }

    @Override
    public void close() throws InterruptedException {
        kill();
    }
}
