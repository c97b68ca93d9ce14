package yardclock.app.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import picocli.CommandLine;

import yardclock.app.journal.Excerpt;
import yardclock.app.journal.JournalReader;
import yardclock.app.json.Json;
import yardclock.app.records.dossier.Dossier;
import yardclock.app.records.dossier.Inclusion;
import yardclock.app.records.dossier.Play;
import yardclock.app.records.dossier.Timeline;
import yardclock.core.engine.InputKind;
import yardclock.sim.twin.DayJournals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.SplittableRandom;

/** A dossier of a simulated day's number, made and checked as an appeals reader would. */
class DossierCommandTest {
    private static final long SEED = 7;

    @TempDir static Path directory;
    private static Path journal;
    private static Path dossier;

    private final StringWriter said = new StringWriter();

    @BeforeAll
    static void play() throws Exception {
        journal = DayJournals.write(SEED, 4, directory);
        dossier = directory.resolve("dossier.json");
    }

    private int run(Object... arguments) {
        CommandLine line = Main.commandLine();
        line.setOut(new PrintWriter(said, true)).setErr(new PrintWriter(said, true));
        String[] texts = new String[arguments.length];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = arguments[i].toString();
        }
        return line.execute(texts);
    }

    private JsonNode made() throws Exception {
        assertThat(run("dossier", "--number", 2, "--journal", journal, "--to", dossier))
                .as("%s", said)
                .isZero();
        return Json.mapper().readTree(dossier.toFile());
    }

    private int checked(JsonNode changed) throws Exception {
        Path file = directory.resolve("changed.json");
        Files.write(file, Json.mapper().writeValueAsBytes(changed));
        return run("dossier", "--check", file);
    }

    @Test
    void a_dossier_of_the_day_shows_the_attempt_and_holds() throws Exception {
        JsonNode made = made();
        JsonNode shown = made.path("dossier").path("timeline");
        assertThat(shown.path("turns")).as("%s", said).hasSize(9);
        assertThat(shown.path("standing").path("officialMicros").asLong()).isPositive();
        assertThat(shown.path("edges").size()).isGreaterThan(20);
        assertThat(shown.path("rulings").size()).isGreaterThan(9);
        assertThat(made.path("dossier").path("differences")).isEmpty();
        assertThat(run("dossier", "--check", dossier)).as("%s", said).isZero();
    }

    @Test
    void nobody_elses_rulings_are_in_it() throws Exception {
        for (JsonNode entry : made().path("journal").path("kept")) {
            if (entry.path("kind").asText().equals("ruling")) {
                JsonNode act = Json.mapper().readTree(entry.path("body").asText()).path("act");
                assertThat(act.path("number").asInt(2)).as("%s", entry).isEqualTo(2);
            }
        }
    }

    @Test
    void one_changed_byte_of_any_entry_is_found_and_the_entry_named() throws Exception {
        JsonNode made = made();
        long seed = System.nanoTime();
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 30; i++) {
            JsonNode copy = made.deepCopy();
            ArrayNode kept = (ArrayNode) copy.path("journal").path("kept");
            ObjectNode entry = (ObjectNode) kept.get(random.nextInt(kept.size()));
            StringBuilder body = new StringBuilder(entry.path("body").asText());
            int at = random.nextInt(body.length());
            body.setCharAt(at, body.charAt(at) == 'x' ? 'y' : 'x');
            entry.put("body", body.toString());
            said.getBuffer().setLength(0);
            assertThat(checked(copy)).as("seed %d: %s", seed, said).isEqualTo(1);
            assertThat(said.toString())
                    .as("seed %d", seed)
                    .contains("Entry " + entry.path("entry").asLong() + " was changed");
        }
    }

    @Test
    void a_dropped_a_moved_and_a_swapped_entry_are_found() throws Exception {
        JsonNode made = made();
        long seed = System.nanoTime();
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 10; i++) {
            JsonNode dropped = made.deepCopy();
            ArrayNode kept = (ArrayNode) dropped.path("journal").path("kept");
            int at = random.nextInt(kept.size() - 1);
            kept.remove(at);
            assertThat(checked(dropped)).as("dropped %d, seed %d: %s", at, seed, said).isEqualTo(1);

            JsonNode moved = made.deepCopy();
            kept = (ArrayNode) moved.path("journal").path("kept");
            kept.insert(at, kept.remove(at + 1));
            assertThat(checked(moved)).as("moved %d, seed %d: %s", at, seed, said).isEqualTo(1);

            JsonNode swapped = made.deepCopy();
            kept = (ArrayNode) swapped.path("journal").path("kept");
            String hash = kept.get(at).path("sha256").asText();
            ((ObjectNode) kept.get(at)).set("sha256", kept.get(at + 1).get("sha256"));
            ((ObjectNode) kept.get(at + 1)).put("sha256", hash);
            assertThat(checked(swapped)).as("swapped %d, seed %d: %s", at, seed, said).isEqualTo(1);
        }
    }

    @Test
    void a_hash_of_what_was_left_out_cannot_be_exchanged() throws Exception {
        JsonNode made = made();
        ObjectNode gap = (ObjectNode) made.path("journal").path("leftOut").get(0);
        String contents = gap.path("contents").asText();
        gap.put("contents", (contents.charAt(0) == 'A' ? "B" : "A") + contents.substring(1));
        assertThat(checked(made)).as("%s", said).isEqualTo(1);
        assertThat(said.toString()).contains("The chain does not hold at entry");
    }

    @Test
    void a_time_shown_that_does_not_follow_from_the_entries_is_found() throws Exception {
        JsonNode made = made();
        ObjectNode standing = (ObjectNode) made.path("dossier").path("timeline").path("standing");
        standing.put("officialMicros", standing.path("officialMicros").asLong() - 1);
        assertThat(checked(made)).isEqualTo(1);
        assertThat(said.toString()).contains("\"standing\" is not what follows");
    }

    @Test
    void an_altered_byte_anywhere_in_the_file_is_found() throws Exception {
        made();
        byte[] whole = Files.readAllBytes(dossier);
        long seed = System.nanoTime();
        SplittableRandom random = new SplittableRandom(seed);
        Path file = directory.resolve("altered.json");
        for (int i = 0; i < 40; i++) {
            byte[] altered = whole.clone();
            // Half of them before the entries, where the document is and what nobody can derive.
            int at = random.nextInt(i % 2 == 0 ? 40_000 : whole.length);
            altered[at] = (byte) (altered[at] == '7' ? '8' : '7');
            Files.write(file, altered);
            assertThat(run("dossier", "--check", file))
                    .as("byte %d, seed %d: %s", at, seed, said)
                    .isNotZero();
        }
    }

    @Test
    void a_number_that_the_day_never_had_does_not_pass_as_an_empty_attempt() throws Exception {
        ObjectNode made = (ObjectNode) made();
        made.put("number", 77);
        assertThat(checked(made)).isEqualTo(1);
        assertThat(said.toString()).contains("The day's roster has no number 77.");
    }

    @Test
    void a_dossier_without_the_roster_proves_no_number() throws Exception {
        try (JournalReader reader = JournalReader.open(journal)) {
            Excerpt excerpt = reader.excerpt(entry -> entry.input().kind() == InputKind.PLAN);
            Timeline shown = Play.ofPart(excerpt.entries(), 77);
            Dossier forged = new Dossier(shown, List.of(), List.of());
            Files.write(dossier, DossierFile.of(77, "UTC", forged, excerpt).bytes());
        }
        assertThat(run("dossier", "--check", dossier)).isEqualTo(1);
        assertThat(said.toString()).contains("The day's roster is not among its entries");
    }

    @Test
    void a_file_of_the_first_version_still_holds_and_is_said_to_prove_less() throws Exception {
        ObjectNode old = (ObjectNode) Json.mapper().readTree(ofFirstVersion(2));
        assertThat(checked(old)).as("%s", said).isZero();
        assertThat(said.toString()).contains("nothing shows that the day had this number");
        JsonNode standing = old.path("dossier").path("timeline").path("standing");
        ((ObjectNode) standing).put("told", !standing.path("told").asBoolean());
        assertThat(checked(old)).isEqualTo(1);
    }

    /** As it was written then: no roster, everybody's clocks and health, no further sections. */
    private static byte[] ofFirstVersion(int number) throws Exception {
        try (JournalReader reader = JournalReader.open(journal)) {
            Play whole = new Play(number);
            reader.entries(whole::take);
            Inclusion all = Inclusion.of(whole, Long.MAX_VALUE / 4);
            Excerpt excerpt =
                    reader.excerpt(e -> e.input().kind() != InputKind.ROSTER && all.test(e));
            Timeline shown = Play.ofFirstVersion(excerpt.entries(), number);
            Dossier dossier = new Dossier(shown, List.of(), List.of());
            ObjectNode file =
                    Json.mapper().valueToTree(DossierFile.of(number, "UTC", dossier, excerpt));
            file.put("yardclockDossier", 1).remove(List.of("zone", "fileSha256"));
            ((ObjectNode) file.path("dossier")).remove("stationAlarms");
            ((ObjectNode) file.path("dossier").path("timeline")).remove("further");
            return Json.mapper().writeValueAsBytes(file);
        }
    }

    @Test
    void a_page_to_print_is_made_from_the_journal_or_from_a_file_that_holds() throws Exception {
        made();
        Path direct = directory.resolve("direct.html");
        Path checked = directory.resolve("checked.html");
        assertThat(
                        run(
                                "dossier",
                                "--number",
                                2,
                                "--journal",
                                journal,
                                "--as",
                                "html",
                                "--language",
                                "es",
                                "--to",
                                direct))
                .as("%s", said)
                .isZero();
        assertThat(
                        run(
                                "dossier",
                                "--check",
                                dossier,
                                "--as",
                                "html",
                                "--language",
                                "es",
                                "--to",
                                checked))
                .as("%s", said)
                .isZero();
        assertThat(Files.readString(direct)).contains("Expediente del número 2", "Aprobado");
        assertThat(checked).hasSameTextualContentAs(direct);
    }

    @Test
    void no_page_is_made_of_a_file_that_does_not_hold_or_is_of_the_first_version()
            throws Exception {
        ObjectNode forged = (ObjectNode) made();
        forged.put("number", 3);
        Path file = directory.resolve("forged.json");
        Path page = directory.resolve("forged.html");
        Files.write(file, Json.mapper().writeValueAsBytes(forged));
        assertThat(run("dossier", "--check", file, "--as", "html", "--to", page)).isEqualTo(1);
        Files.write(file, ofFirstVersion(2));
        assertThat(run("dossier", "--check", file, "--as", "html", "--to", page)).isEqualTo(1);
        assertThat(said.toString()).contains("Make it anew from the journal.");
        assertThat(page).doesNotExist();
    }

    @Test
    void on_a_rough_day_every_numbers_timeline_follows_from_its_own_entries(@TempDir Path rough)
            throws Exception {
        Path day = DayJournals.writeRough(SEED, 8, rough);
        for (int number = 1; number <= 8; number++) {
            DossierFile made = new DossierMaker(day, ZoneOffset.UTC).make(number);
            assertThat(made.dossier().differences()).as("number %d", number).isEmpty();
            assertThat(new DossierCheck(made).problems()).as("number %d", number).isEmpty();
            assertThat(made.dossier().timeline().further().units()).isNotEmpty();
        }
    }

    @Test
    void a_dossier_with_a_hole_in_it_is_refused() throws Exception {
        JsonNode made = made();
        for (String field : new String[] {"kind", "body", "contentSha256", "sha256"}) {
            JsonNode copy = made.deepCopy();
            ((ObjectNode) copy.path("journal").path("kept").get(0)).putNull(field);
            assertThat(checked(copy)).as("%s: %s", field, said).isEqualTo(2);
        }
        JsonNode copy = made.deepCopy();
        ((ObjectNode) copy.path("journal").path("leftOut").get(0)).remove("contents");
        assertThat(checked(copy)).as("contents: %s", said).isEqualTo(2);
        ((ObjectNode) made.path("journal")).remove("headSha256");
        assertThat(checked(made)).as("head: %s", said).isEqualTo(2);
    }

    @Test
    void what_is_no_dossier_is_refused() throws Exception {
        Path file = directory.resolve("other");
        for (String text :
                new String[] {"", "[]", "null", "{", "{\"number\":\"x\"}", "{\"journal\":3}"}) {
            Files.writeString(file, text);
            assertThat(run("dossier", "--check", file)).as(text).isEqualTo(2);
        }
        assertThat(run("dossier", "--check", directory.resolve("nowhere"))).isEqualTo(2);
        assertThat(run("dossier")).isEqualTo(2);
        assertThat(run("dossier", "--number", 77, "--journal", journal, "--to", file)).isEqualTo(1);
    }
}
