package yardclock.app.boot;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import picocli.CommandLine;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/** The systemd unit of deploy/ starts what there is, with options that exist. */
class DeployedServiceTest {
    @Test
    void theServiceStartsThisProgramWithOptionsItKnows() throws IOException {
        String service =
                Files.readString(deploy().resolve("yardclock.service")).replace("\\\n", " ");
        String command = line(service, "ExecStart=");
        assertThat(command).contains(" " + Main.class.getName() + " ");
        String options = line(Files.readString(deploy().resolve("options")), "YARDCLOCK_OPTIONS=");
        String whole = command.replace("$YARDCLOCK_OPTIONS", options);
        List<String> arguments =
                Arrays.asList(whole.substring(whole.indexOf(" serve ")).strip().split(" +"));

        CommandLine.ParseResult parsed =
                Main.commandLine().parseArgs(arguments.toArray(String[]::new));
        CommandLine.ParseResult serve = parsed.subcommand();
        assertThat(serve.commandSpec().name()).isEqualTo("serve");
        assertThat(serve.matchedOptionValue("--data", Path.of("")))
                .isEqualTo(Path.of("/var/lib/yardclock/day"));
        assertThat(serve.matchedOptionValue("--insecure-lan", false)).isTrue();
    }

    /**
     * systemd.service(5): else the whole unit is stopped when the kernel ends one process of it.
     */
    @Test
    void theGatewayGoesOnWhenADossiersProcessIsEnded() throws IOException {
        String service = Files.readString(deploy().resolve("yardclock.service"));
        assertThat(line(service, "OOMPolicy=")).isEqualTo("continue");
    }

    private static String line(String text, String key) {
        return text.lines()
                .filter(line -> line.startsWith(key))
                .findFirst()
                .orElseThrow()
                .substring(key.length());
    }

    private static Path deploy() {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            if (Files.isDirectory(at.resolve("deploy"))) {
                return at.resolve("deploy");
            }
        }
        throw new IllegalStateException("no deploy/ above the working folder");
    }
}
