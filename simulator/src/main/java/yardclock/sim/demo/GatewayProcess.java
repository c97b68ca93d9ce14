package yardclock.sim.demo;

import yardclock.sim.referee.JournalEdges;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;

/**
 * A gateway in a process of its own, started from the same Java and the same libraries. Used from
 * one thread; {@link #stop} may come from any, also from a shutdown hook.
 */
public final class GatewayProcess {
    private static final String MAIN = "yardclock.app.boot.Main";
    private static final int STOP_SECONDS = 10;
    private static final int LAST_LINES = 6;

    private final DemoSettings settings;
    private final DayFolder folder;
    private volatile Process process;
    private volatile boolean stopping;

    public GatewayProcess(DemoSettings settings, DayFolder folder) {
        this.settings = settings;
        this.folder = folder;
    }

    /** Starts it; also again after it was killed. Does not wait until it is up. */
    public synchronized void start() throws DemoFailedException {
        List<String> command =
                command(
                        "-Xmx192m",
                        "serve",
                        "--data",
                        folder.path().toString(),
                        "--http",
                        settings.http(),
                        "--mqtt",
                        settings.mqtt(),
                        "--broker",
                        settings.broker(),
                        "--roster",
                        folder.rosterFile().toString(),
                        "--speed",
                        String.valueOf(settings.speed()));
        try {
            process =
                    new ProcessBuilder(command)
                            .redirectErrorStream(true)
                            .redirectOutput(
                                    ProcessBuilder.Redirect.appendTo(folder.gatewayLog().toFile()))
                            .start();
            process.getOutputStream().close();
        } catch (IOException e) {
            throw new DemoFailedException("The gateway cannot be started: " + e.getMessage(), e);
        }
    }

    /** One of the gateway's commands, on the same Java, with a small heap as on a board. */
    public static List<String> command(String heap, String... arguments) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.add(heap);
        // One collector thread and the quick compiler: less to fight over on two cores.
        command.add("-XX:+UseSerialGC");
        command.add("-XX:TieredStopAtLevel=1");
        command.add("-cp");
        command.add(System.getProperty("java.class.path"));
        command.add(MAIN);
        command.addAll(List.of(arguments));
        return command;
    }

    public boolean isAlive() {
        Process started = process;
        return started != null && started.isAlive();
    }

    /** Completes with the exit code when it ended without having been asked to. */
    public CompletableFuture<Integer> death() {
        CompletableFuture<Integer> death = new CompletableFuture<>();
        CompletableFuture<Void> ignored =
                process.onExit()
                        .thenAccept(
                                ended -> {
                                    if (!stopping) {
                                        death.complete(ended.exitValue());
                                    }
                                });
        return death;
    }

    /** The end of what it printed, for whoever wants to know why it is gone. */
    public String lastWords() {
        try {
            List<String> lines = Files.readAllLines(folder.gatewayLog(), StandardCharsets.UTF_8);
            int from = Math.max(0, lines.size() - LAST_LINES);
            return String.join(System.lineSeparator(), lines.subList(from, lines.size()));
        } catch (IOException e) {
            return "";
        }
    }

    /** As a power cut. */
    public void kill() throws InterruptedException {
        process.destroyForcibly().waitFor();
    }

    public void stop() {
        stopping = true;
        Process started = process;
        if (started == null) {
            return;
        }
        started.destroy();
        try {
            if (!started.waitFor(STOP_SECONDS, TimeUnit.SECONDS)) {
                started.destroyForcibly();
            }
        } catch (InterruptedException e) {
            started.destroyForcibly();
            Thread.currentThread().interrupt();
        }
    }

    /** Reads the day's journal with the gateway's own command, in another process. */
    public JournalEdges journalEdges() throws DemoFailedException {
        List<String> command =
                command("-Xmx96m", "journal", folder.journal().toString(), "--as", "ndjson");
        try {
            Process reading =
                    new ProcessBuilder(command)
                            .redirectError(
                                    ProcessBuilder.Redirect.appendTo(folder.gatewayLog().toFile()))
                            .start();
            try (BufferedReader lines =
                    new BufferedReader(
                            new InputStreamReader(
                                    reading.getInputStream(), StandardCharsets.UTF_8))) {
                return JournalEdges.read(lines);
            } finally {
                reading.destroy();
            }
        } catch (IOException e) {
            throw new DemoFailedException("The journal cannot be read: " + e.getMessage(), e);
        }
    }
}
