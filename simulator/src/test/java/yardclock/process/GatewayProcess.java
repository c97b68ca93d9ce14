package yardclock.process;

import yardclock.app.boot.Main;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** The gateway's main program in a JVM of its own. */
final class GatewayProcess implements AutoCloseable {
    private static final long SECONDS_MAX = 30;

    private final Process process;
    private final BufferedReader output;

    private GatewayProcess(Process process) {
        this.process = process;
        this.output = process.inputReader();
    }

    /** Starts {@code serve} and returns once its pages can be reached. */
    static GatewayProcess serve(Path data, String http, String mqtt) throws IOException {
        GatewayProcess gateway =
                start("serve", "--data", data.toString(), "--http", http, "--mqtt", mqtt);
        String line = gateway.output.readLine();
        while (line != null && !line.startsWith("One-time codes") && !line.startsWith("First")) {
            line = gateway.output.readLine();
        }
        if (line == null) {
            throw new IllegalStateException("the gateway ended before it ran");
        }
        return gateway;
    }

    /** Runs another command to its end and returns what it printed. */
    static String print(String... arguments) throws Exception {
        try (GatewayProcess gateway = start(arguments)) {
            String all = String.join("\n", gateway.output.lines().toList());
            gateway.exitCode();
            return all;
        }
    }

    private static GatewayProcess start(String... arguments) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-Xmx256m", "-cp", System.getProperty("java.class.path")));
        command.add(Main.class.getName());
        command.addAll(List.of(arguments));
        return new GatewayProcess(
                new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.INHERIT).start());
    }

    /** As {@code kill -9}: no hook runs, no buffer is written. */
    void kill() throws InterruptedException {
        process.toHandle().destroyForcibly();
        process.waitFor();
    }

    /** As {@code kill}: the gateway may close in order. */
    int stop() throws InterruptedException {
        process.toHandle().destroy();
        return exitCode();
    }

    private int exitCode() throws InterruptedException {
        if (!process.waitFor(SECONDS_MAX, TimeUnit.SECONDS)) {
            throw new IllegalStateException("still running after " + SECONDS_MAX + " s");
        }
        return process.exitValue();
    }

    @Override
    public void close() throws InterruptedException {
        kill();
    }
}
