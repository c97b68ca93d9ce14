package yardclock.app.boot;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import picocli.CommandLine;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** {@code yardclock clock} over the recorded runs of the core's reference values. */
class ClockCommandTest {
    private static final Path RUNS =
            Path.of("..", "core", "src", "test", "resources", "reference", "clock");

    @TempDir Path dir;
    private final StringWriter said = new StringWriter();
    private final StringWriter complained = new StringWriter();

    @ParameterizedTest
    @ValueSource(strings = {"live", "final"})
    void every_edge_gets_an_estimate_between_limits_that_hold_the_truth(String mode)
            throws IOException {
        Path edges = RUNS.resolve("bursty-events.csv");
        List<String> out = clock(RUNS.resolve("bursty-exchanges.csv"), edges, mode);
        List<String> in = Files.readAllLines(edges);
        assertThat(out).hasSameSizeAs(in);
        assertThat(out.get(0)).isEqualTo("station,station_us,estimate_us,lower_us,upper_us");
        for (int i = 1; i < in.size(); i++) {
            String[] recorded = in.get(i).split(",");
            String[] dated = out.get(i).split(",");
            assertThat(dated[0]).isEqualTo(recorded[0]);
            assertThat(dated[1]).isEqualTo(recorded[1]);
            long truth = Long.parseLong(recorded[3]);
            assertThat(truth).isBetween(Long.parseLong(dated[3]), Long.parseLong(dated[4]));
            assertThat(Long.parseLong(dated[2]))
                    .isBetween(Long.parseLong(dated[3]), Long.parseLong(dated[4]));
        }
    }

    @Test
    void the_truth_column_is_never_read() throws IOException {
        Path edges = RUNS.resolve("hostile-events.csv");
        Path blind = dir.resolve("edges.csv");
        Files.write(
                blind,
                Files.readAllLines(edges).stream()
                        .map(line -> line.substring(0, line.lastIndexOf(',')))
                        .toList());
        Path exchanges = RUNS.resolve("hostile-exchanges.csv");
        assertThat(clock(exchanges, blind, "live")).isEqualTo(clock(exchanges, edges, "live"));
    }

    @Test
    void live_an_edge_is_dated_without_any_exchange_that_came_back_later() throws IOException {
        Path edges = RUNS.resolve("powersave-events.csv");
        Path exchanges = RUNS.resolve("powersave-exchanges.csv");
        long cut = 1_800_000_000L;
        Path early = dir.resolve("exchanges.csv");
        Files.write(
                early,
                Files.readAllLines(exchanges).stream()
                        .filter(line -> line.startsWith("station") || lastCell(line) < cut)
                        .toList());
        List<String> all = clock(exchanges, edges, "live");
        List<String> cutOff = clock(early, edges, "live");
        List<String> in = Files.readAllLines(edges);
        int compared = 0;
        for (int i = 1; i < in.size(); i++) {
            if (Long.parseLong(in.get(i).split(",")[2]) <= cut) {
                assertThat(cutOff.get(i)).isEqualTo(all.get(i));
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(100);
    }

    @Test
    void an_edge_of_a_station_without_exchanges_has_no_bound() throws IOException {
        Path edges = dir.resolve("edges.csv");
        Files.writeString(edges, "station,station_us,gateway_arrival_us\nS9,5,9\n");
        assertThat(clock(RUNS.resolve("bursty-exchanges.csv"), edges, "live"))
                .containsExactly("station,station_us,estimate_us,lower_us,upper_us", "S9,5,,,");
    }

    @Test
    void a_bad_file_is_refused_with_its_line() throws IOException {
        Path edges = dir.resolve("edges.csv");
        Files.writeString(edges, "station,station_us,gateway_arrival_us\nS1,1.5,9\n");
        assertThat(run(RUNS.resolve("bursty-exchanges.csv"), edges, "live")).isEqualTo(1);
        assertThat(complained.toString()).contains("line 2", "station_us", "'1.5'");
        assertThat(run(dir.resolve("none.csv"), edges, "live")).isEqualTo(1);
        assertThat(complained.toString()).contains("there is no such file");
    }

    private static long lastCell(String line) {
        return Long.parseLong(line.substring(line.lastIndexOf(',') + 1));
    }

    private List<String> clock(Path exchanges, Path edges, String mode) {
        assertThat(run(exchanges, edges, mode)).as(complained.toString()).isZero();
        return said.toString().lines().toList();
    }

    private int run(Path exchanges, Path edges, String mode) {
        said.getBuffer().setLength(0);
        CommandLine command =
                Main.commandLine()
                        .setOut(new PrintWriter(said, true))
                        .setErr(new PrintWriter(complained, true));
        return command.execute(
                "clock",
                "--exchanges",
                exchanges.toString(),
                "--edges",
                edges.toString(),
                "--mode",
                mode);
    }
}
