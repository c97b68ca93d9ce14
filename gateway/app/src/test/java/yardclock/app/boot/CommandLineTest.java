package yardclock.app.boot;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import picocli.CommandLine;

import yardclock.app.journal.JournalFile;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

class CommandLineTest {
    @TempDir Path directory;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @ParameterizedTest
    @ValueSource(strings = {"", "serve", "replay", "journal", "check", "rejudge"})
    void explainsItselfWhenAsked(String command) {
        String[] arguments =
                command.isEmpty() ? new String[] {"--help"} : new String[] {command, "--help"};
        assertThat(run(arguments)).isZero();
        assertThat(out.toString()).contains("Usage: yardclock");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "drive",
                "serve --http nowhere",
                "serve --http 127.0.0.1:99999",
                "serve --http ::1:8470",
                "serve --mqtt 127.0.0.1:",
                "serve --pins fu-01:9=17",
                "serve --climate fu-01:address=0x46",
                "serve --climate fu-01 --climate fu-02",
                "serve --climate fu-01 --climate fu-01:address=0x45",
                "serve --outputs run=6",
                "serve --pins fu-01:3=17 --outputs pulse=17",
                "serve --speed 0",
                "serve --speed 61",
                "serve --speed fast",
                "replay",
                "rejudge --journal some.db --station s",
                "rejudge --journal some.db --station s --point start --guard minBlock=soon",
                "journal some.db --as yaml",
                "check"
            })
    void callsWrongUsageWrongUsage(String line) {
        assertThat(run(line.split(" ", -1))).isEqualTo(2);
        assertThat(err.toString()).isNotBlank();
    }

    @Test
    void refusesPagesOnTheNetworkUnlessTold() {
        assertThat(run("serve", "--data", data(), "--http", "0.0.0.0:0")).isEqualTo(1);
        assertThat(err.toString()).contains("--insecure-lan").doesNotContain("Exception");
        assertThat(directory.resolve("day")).doesNotExist();
    }

    @Test
    void refusesABrokerItCanNotReachByItsAddress() {
        assertThat(run("serve", "--data", data(), "--broker", "http://broker")).isEqualTo(1);
        assertThat(err.toString()).contains("tcp://HOST:PORT");
    }

    @Test
    void refusesAPlanOfOnesOwnWithoutItsRoster() {
        assertThat(run("serve", "--data", data(), "--plan", "mine.yaml")).isEqualTo(1);
        assertThat(err.toString()).contains("--roster");
    }

    @ParameterizedTest
    @ValueSource(strings = {"replay", "journal"})
    void refusesAJournalThatIsNotThere(String command) {
        assertThat(run(command, directory.resolve("none.db").toString())).isEqualTo(1);
        assertThat(err.toString()).startsWith("There is no journal at");
    }

    @Test
    void printsAJournalLineByLineAndItsDigest() throws Exception {
        String file = filledJournal();
        assertThat(run("journal", file, "--as", "ndjson")).isZero();
        assertThat(out.toString().lines())
                .containsExactly(
                        "{\"entry\":1,\"kind\":\"unit-down\",\"gatewayMicros\":5,\"unit\":\"a\"}",
                        "{\"entry\":2,\"kind\":\"deadline\",\"gatewayMicros\":6}");
        out.getBuffer().setLength(0);

        assertThat(run("replay", file)).isZero();
        assertThat(out.toString()).matches("\\{\"entries\":2,\"digest\":\"[0-9a-f]{64}\"}\\R");
    }

    @Test
    void derivesTheStateAsItWasAfterSoManyEntries() throws Exception {
        String file = filledJournal();
        assertThat(run("replay", file, "--entries", "1")).isZero();
        String first = out.toString();
        out.getBuffer().setLength(0);
        assertThat(run("replay", file)).isZero();
        assertThat(first).startsWith("{\"entries\":1,").isNotEqualTo(out.toString());

        assertThat(run("replay", file, "--entries", "3")).isEqualTo(1);
        assertThat(err.toString()).contains("The journal has 2 entries only.");
        assertThat(run("replay", file, "--entries", "0")).isEqualTo(1);
    }

    @Test
    void refusesToRejudgeByWhatIsNoGuardOrNoPlan() throws Exception {
        String file = filledJournal();
        assertThat(rejudge(file, "--guard", "patience=5")).isEqualTo(1);
        assertThat(err.toString()).contains("--guard patience=5 is none of lockout, staysFor");
        assertThat(rejudge(file, "--guard", "minBlock=-5")).isEqualTo(1);
        assertThat(err.toString()).contains("--guard minBlock=-5 is no time from 0");
        assertThat(rejudge(file)).isEqualTo(1);
        assertThat(err.toString()).contains("No exam plan is loaded.");
    }

    private int rejudge(String file, String... more) {
        List<String> all = new ArrayList<>(List.of("rejudge", "--journal", file));
        all.addAll(List.of("--station", "mannequin-drag", "--point", "start"));
        all.addAll(List.of(more));
        return run(all.toArray(String[]::new));
    }

    @Test
    void reportsEveryProblemOfPlanAndRosterAtOnce() throws Exception {
        Path plan = Files.writeString(directory.resolve("plan.yaml"), "name: 5\nstations: none\n");
        Path roster =
                Files.writeString(
                        directory.resolve("roster.csv"), "number,name,group\n1,A,1\n1,B,1\n");
        assertThat(run("check", "--plan", plan.toString(), "--roster", roster.toString()))
                .isEqualTo(1);
        assertThat(err.toString())
                .contains("plan.yaml is refused")
                .contains("roster.csv is refused");
    }

    private String filledJournal() throws Exception {
        try (JournalFile journal = JournalFile.open(directory, entry -> {})) {
            journal.append(
                    List.of(
                            new Entry(1, 5, new Input.UnitDown("a")),
                            new Entry(2, 6, new Input.Deadline())));
        }
        return directory.resolve(JournalFile.NAME).toString();
    }

    private String data() {
        return directory.resolve("day").toString();
    }

    private int run(String... arguments) {
        CommandLine line = Main.commandLine();
        return line.setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true))
                .execute(arguments);
    }
}
