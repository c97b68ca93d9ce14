package yardclock.launcher;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/**
 * The launcher as a person meets it: a real bash, a real exit code. Nothing here installs or
 * builds; a machine that lacks something is played by a PATH on which it is not found.
 */
class LauncherTest {
    /** What the launcher itself may expect of a Debian base system. */
    private static final List<String> BASE =
            List.of("bash", "cat", "dirname", "id", "readlink", "sed", "apt-get", "env", "sudo");

    @TempDir Path folder;

    record Ran(int code, String out, String err) {}

    @Test
    void help_lists_every_command_and_ends_well() throws Exception {
        Ran help = run(Map.of(), "--help");

        assertThat(help.code()).isZero();
        assertThat(help.out())
                .contains(
                        "  demo ",
                        "  simulate ",
                        "  serve ",
                        "  replay ",
                        "  journal ",
                        "  check ",
                        "  verify ");
    }

    @Test
    void without_a_command_it_shows_the_usage_and_says_so_by_its_code() throws Exception {
        Ran bare = run(Map.of());

        assertThat(bare.code()).isEqualTo(2);
        assertThat(bare.err()).startsWith("Usage: ./yardclock COMMAND");
        assertThat(bare.out()).isEmpty();
    }

    @Test
    void an_unknown_command_is_a_usage_mistake() throws Exception {
        Ran unknown = run(Map.of(), "fly");

        assertThat(unknown.code()).isEqualTo(2);
        assertThat(unknown.err()).contains("there is no command 'fly'");
    }

    @Test
    void verify_takes_nothing_it_does_not_know() throws Exception {
        assertThat(run(Map.of(), "verify", "--fast").code()).isEqualTo(2);
        assertThat(run(Map.of(), "verify", "--help").code()).isZero();
    }

    @Test
    void without_a_terminal_it_installs_nothing_and_names_what_is_missing() throws Exception {
        Ran refused = run(Map.of("PATH", pathWithoutMaven(), "CI", ""), "serve");

        assertThat(refused.code()).isEqualTo(1);
        assertThat(refused.err()).contains("these packages are missing: maven", "--yes");
    }

    @Test
    void verify_names_what_the_tests_need_beyond_that() throws Exception {
        Ran refused = run(Map.of("PATH", pathWithoutMaven(), "CI", ""), "verify");

        assertThat(refused.code()).isEqualTo(1);
        assertThat(refused.err()).contains("maven").contains("chromium");
    }

    /** A PATH with the base system on it and nothing else, each tool by way of a small script. */
    private String pathWithoutMaven() throws IOException {
        for (String tool : BASE) {
            Path script = folder.resolve(tool);
            Files.writeString(script, "#!/bin/bash\nexec /usr/bin/" + tool + " \"$@\"\n");
            assertThat(script.toFile().setExecutable(true)).isTrue();
        }
        return folder.toString();
    }

    private static Ran run(Map<String, String> environment, String... arguments)
            throws IOException, InterruptedException {
        List<String> line = new ArrayList<>(List.of("/bin/bash", launcher().toString()));
        line.addAll(List.of(arguments));
        Path out = Files.createTempFile("launcher", ".out");
        Path err = Files.createTempFile("launcher", ".err");
        ProcessBuilder builder =
                new ProcessBuilder(line)
                        .redirectInput(new File("/dev/null"))
                        .redirectOutput(out.toFile())
                        .redirectError(err.toFile());
        builder.environment().putAll(environment);
        Process process = builder.start();
        assertThat(process.waitFor(30, TimeUnit.SECONDS)).isTrue();
        Ran ran =
                new Ran(
                        process.exitValue(),
                        Files.readString(out, StandardCharsets.UTF_8),
                        Files.readString(err, StandardCharsets.UTF_8));
        Files.delete(out);
        Files.delete(err);
        return ran;
    }

    private static Path launcher() {
        Path at = Path.of("").toAbsolutePath();
        while (!Files.isRegularFile(at.resolve("yardclock"))) {
            at = at.getParent();
        }
        return at.resolve("yardclock");
    }
}
