package yardclock.app.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import picocli.CommandLine;

import yardclock.app.json.Json;
import yardclock.sim.twin.DayJournals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;

/** A simulated day's journal asked what other guards would have found. */
class RejudgeCommandTest {
    private static final long SEED = 7;
    private static final int CANDIDATES = 4;

    @TempDir static Path directory;
    private static Path journal;

    private final StringWriter said = new StringWriter();

    @BeforeAll
    static void play() throws Exception {
        journal = DayJournals.write(SEED, CANDIDATES, directory);
    }

    private int run(String... arguments) {
        said.getBuffer().setLength(0);
        CommandLine line = Main.commandLine();
        line.setOut(new PrintWriter(said, true)).setErr(new PrintWriter(said, true));
        return line.execute(arguments);
    }

    private JsonNode rejudged(String station, String point, String... guard) throws Exception {
        String[] all = new String[7 + guard.length];
        String[] first = {
            "rejudge", "--journal", journal.toString(), "--station", station, "--point", point
        };
        System.arraycopy(first, 0, all, 0, first.length);
        System.arraycopy(guard, 0, all, first.length, guard.length);
        assertThat(run(all)).as("%s", said).isZero();
        return Json.mapper().readTree(said.toString());
    }

    @Test
    void the_guards_in_force_would_have_found_what_was_found() throws Exception {
        JsonNode found = rejudged("mannequin-drag", "turned-post");
        assertThat(found.path("judged").asInt()).as("%s", found).isPositive();
        assertThat(found.path("unchanged")).isEqualTo(found.path("judged"));
        assertThat(found.path("judged").asInt() + found.path("silent").size())
                .as("everybody who was there, %s", found)
                .isLessThanOrEqualTo(CANDIDATES);
    }

    @Test
    void a_guard_that_nobody_passes_takes_the_mark_away_and_the_journal_stays_as_it_is()
            throws Exception {
        assertThat(run("replay", journal.toString())).isZero();
        String before = said.toString();
        JsonNode found = rejudged("mannequin-drag", "turned-post", "--guard", "minBlock=5000");
        assertThat(found.path("changed")).as("%s", found).isNotEmpty();
        for (JsonNode line : found.path("changed")) {
            assertThat(line.at("/after/why/en").asText()).contains("not seen: Post turned");
            if (line.path("state").asText().equals("confirmed")) {
                assertThat(line.at("/before/splitMicros")).isEqualTo(line.path("standsMicros"));
            }
        }
        assertThat(run("replay", journal.toString())).isZero();
        assertThat(said.toString()).isEqualTo(before);
    }

    @Test
    void values_beyond_the_limits_are_refused_with_the_gateways_own_words() {
        assertThat(
                        run(
                                "rejudge",
                                "--journal",
                                journal.toString(),
                                "--station",
                                "mannequin-drag",
                                "--point",
                                "turned-post",
                                "--guard",
                                "minBlock=5001"))
                .isEqualTo(1);
        assertThat(said.toString()).contains("outside their limits");
    }
}
