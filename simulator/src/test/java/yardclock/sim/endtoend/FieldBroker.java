package yardclock.sim.endtoend;

import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.InetSocketAddress;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * A real mosquitto with the files of {@code deploy/}: only where it listens and where its files lie
 * is the test's, and one more user who may read everything.
 */
final class FieldBroker implements AutoCloseable {
    static final String ONLOOKER = "onlooker";
    static final String ONLOOKER_PASSWORD = "looks-on";

    private static final Path BINARY = Path.of("/usr/sbin/mosquitto");

    private final Path folder;
    private final int port;
    private final Process process;

    FieldBroker(Path folder, Map<String, String> passwords) throws Exception {
        this.folder = folder;
        this.port = FreePort.any();
        Path deploy = deploy();
        String onlooker = "\nuser " + ONLOOKER + "\ntopic read yc/1/#\n";
        Files.writeString(
                folder.resolve("acl"),
                Files.readString(deploy.resolve("mosquitto.acl")) + onlooker);
        Files.writeString(
                folder.resolve("mosquitto.conf"),
                placedHere(Files.readString(deploy.resolve("mosquitto.conf"))));
        writePasswords(passwords);
        process =
                new ProcessBuilder(
                                BINARY.toString(),
                                "-c",
                                folder.resolve("mosquitto.conf").toString())
                        .redirectErrorStream(true)
                        .redirectOutput(folder.resolve("out").toFile())
                        .start();
        await("mosquitto, see " + folder.resolve("log")).until(this::listens);
    }

    private static Path deploy() {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            if (Files.exists(at.resolve("deploy/mosquitto.conf"))) {
                return at.resolve("deploy");
            }
        }
        throw new IllegalStateException("no deploy/mosquitto.conf above the working folder");
    }

    private String placedHere(String text) {
        return replaced(
                        replaced(
                                replaced(text, "listener", port + " 127.0.0.1"),
                                "password_file",
                                folder.resolve("passwords").toString()),
                        "acl_file",
                        folder.resolve("acl").toString())
                + "persistence_location "
                + folder
                + "/\nlog_dest file "
                + folder.resolve("log")
                + "\nuser "
                + System.getProperty("user.name")
                + "\n";
    }

    private static String replaced(String text, String key, String value) {
        String changed = text.replaceFirst("(?m)^" + key + " .*$", key + " " + value);
        if (changed.equals(text)) {
            throw new IllegalStateException("deploy/mosquitto.conf has no line for " + key);
        }
        return changed;
    }

    private void writePasswords(Map<String, String> passwords) throws Exception {
        StringBuilder lines = new StringBuilder(ONLOOKER + ":" + ONLOOKER_PASSWORD + "\n");
        passwords.forEach((user, secret) -> lines.append(user + ":" + secret + "\n"));
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

    private boolean listens() {
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress("127.0.0.1", port), 200);
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    String uri() {
        return "tcp://127.0.0.1:" + port;
    }

    /** Its folder goes too. */
    @Override
    public void close() throws InterruptedException, IOException {
        process.destroyForcibly().waitFor();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
