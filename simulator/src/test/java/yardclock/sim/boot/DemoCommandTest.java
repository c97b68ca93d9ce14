package yardclock.sim.boot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import picocli.CommandLine;

import yardclock.app.json.Json;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

/**
 * The demo as its caller meets it: options, exit codes, the last line, and what is left running.
 */
class DemoCommandTest {
    @TempDir Path folder;

    private final StringWriter errors = new StringWriter();
    private final List<Process> started = new ArrayList<>();

    @AfterEach
    void leaveNothingRunning() {
        for (Process process : started) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
        }
    }

    private int here(String... arguments) {
        CommandLine command = Main.commandLine();
        return command.setErr(new PrintWriter(errors, true)).execute(arguments);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "--speed=0",
                "--speed=61",
                "--candidates=0",
                "--candidates=97",
                "--http=nowhere",
                "--mqtt=127.0.0.1:70000",
                "--unheard-of"
            })
    void a_wrong_option_is_wrong_usage(String option) {
        assertThat(here("demo", option)).isEqualTo(2);
        assertThat(errors.toString()).contains(option.split("=")[0]);
    }

    @Test
    void a_folder_that_holds_a_day_is_refused_with_a_sentence() throws IOException {
        Files.writeString(folder.resolve("journal.db"), "");
        assertThat(here("demo", "--data", folder.toString())).isEqualTo(1);
        assertThat(errors.toString()).contains("holds a day already");
    }

    @Test
    void a_day_until_finished_ends_with_one_line_and_leaves_nothing_running() throws Exception {
        Process demo = demo("--until-finished", "--candidates", "1", "--speed", "60");
        Optional<ProcessHandle> gateway = gatewayOf(demo);
        assertThat(demo.waitFor(100, TimeUnit.SECONDS)).isTrue();
        String errorText = Files.readString(folder.resolve("err"));
        assertThat(demo.exitValue()).as(errorText).isZero();
        List<String> lines = Files.readAllLines(folder.resolve("out"));
        assertThat(lines).hasSize(1);
        JsonNode figures = Json.mapper().readTree(lines.get(0));
        List<String> keys = new ArrayList<>();
        figures.fieldNames().forEachRemaining(keys::add);
        assertThat(keys)
                .containsExactly(
                        "candidates",
                        "passed",
                        "failed",
                        "undecided",
                        "edges",
                        "splitErrorMsP99",
                        "splitErrorRealMsP99",
                        "lostEdges",
                        "wrongAssignments",
                        "digest");
        assertThat(figures.get("candidates").asInt()).isEqualTo(1);
        assertThat(figures.get("lostEdges").asInt()).isZero();
        assertThat(errorText).contains("/enrol#").contains("coordinator").contains("exam time");
        assertThat(gateway).isPresent();
        assertThat(gateway.get().isAlive()).isFalse();
    }

    @Test
    void a_signal_ends_the_gateway_too() throws Exception {
        Process demo = demo("--candidates", "1");
        ProcessHandle gateway = gatewayOf(demo).orElseThrow();
        awaitRunning();
        demo.destroy();
        assertThat(demo.waitFor(20, TimeUnit.SECONDS)).isTrue();
        await().atMost(Duration.ofSeconds(10)).until(() -> !gateway.isAlive());
    }

    @Test
    void a_gateway_that_dies_ends_the_demo_with_a_sentence() throws Exception {
        Process demo = demo("--candidates", "1");
        ProcessHandle gateway = gatewayOf(demo).orElseThrow();
        awaitRunning();
        gateway.destroyForcibly();
        assertThat(demo.waitFor(20, TimeUnit.SECONDS)).isTrue();
        assertThat(demo.exitValue()).isEqualTo(1);
        assertThat(Files.readString(folder.resolve("err"))).contains("ended by itself");
    }

    private Process demo(String... options) throws IOException {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        command.addAll(List.of("-Xmx160m", "-cp", System.getProperty("java.class.path")));
        command.addAll(List.of(Main.class.getName(), "demo"));
        command.addAll(List.of("--http", freeAddress(), "--mqtt", freeAddress()));
        command.addAll(List.of("--data", folder.resolve("day").toString()));
        command.addAll(List.of(options));
        Process demo =
                new ProcessBuilder(command)
                        .redirectOutput(folder.resolve("out").toFile())
                        .redirectError(folder.resolve("err").toFile())
                        .start();
        started.add(demo);
        return demo;
    }

    private static String freeAddress() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return "127.0.0.1:" + socket.getLocalPort();
        }
    }

    private static Optional<ProcessHandle> gatewayOf(Process demo) {
        await().atMost(Duration.ofSeconds(30)).until(() -> demo.children().findAny().isPresent());
        return demo.children().findAny();
    }

    private void awaitRunning() {
        await().atMost(Duration.ofSeconds(60))
                .until(() -> Files.readString(folder.resolve("err")).contains("Ctrl-C ends it"));
    }
}
