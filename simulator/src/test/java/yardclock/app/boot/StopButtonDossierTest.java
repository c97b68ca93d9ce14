package yardclock.app.boot;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.journal.JournalFile;
import yardclock.app.journal.JournalReader;
import yardclock.app.json.Json;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.Text;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Role;
import yardclock.sim.twin.DayJournals;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A simulated day in the middle of which somebody presses a wired stop button: the dossier of the
 * one on the course then has the press among its entries, and holds without the rest of the day.
 */
class StopButtonDossierTest {
    private static final long SEED = 7;
    private static final String UNIT = "fu-12";
    private static final int BUTTON = 8;
    private static final String SAFETY = "safety-of-this-test";
    private static final long SECOND = 1_000_000;

    @TempDir Path directory;

    private final List<Entry> day = new ArrayList<>();
    private Input.Health health;

    @Test
    void theDossierOfWhoWasStoppedHoldsWithThePressAndWithoutARefusedRestart() throws Exception {
        Path dossier = directory.resolve("dossier.json");
        StringWriter said = new StringWriter();
        assertThat(run(said, "dossier", "--number", 2, "--journal", journal(), "--to", dossier))
                .as("%s", said)
                .isZero();
        JsonNode made = Json.mapper().readTree(dossier.toFile());
        assertThat(made.path("dossier").path("differences")).isEmpty();
        assertThat(words(made)).contains("Stopped by Stop at the tower (fu-12/8)");
        assertThat(acts(made)).filteredOn("restart"::equals).hasSize(1);
        assertThat(run(said, "dossier", "--check", dossier)).as("%s", said).isZero();
    }

    private static List<String> words(JsonNode made) {
        List<String> words = new ArrayList<>();
        made.path("dossier")
                .path("timeline")
                .path("concluded")
                .forEach(fact -> words.add(fact.path("words").asText()));
        return words;
    }

    private static List<String> acts(JsonNode made) throws Exception {
        List<String> acts = new ArrayList<>();
        for (JsonNode entry : made.path("journal").path("kept")) {
            JsonNode body = Json.mapper().readTree(entry.path("body").asText());
            acts.add(body.path("act").path("act").asText());
        }
        return acts;
    }

    /** The same day with a stop button, pressed a minute after number 2 was sent. */
    private Path journal() throws Exception {
        Path quiet = Files.createDirectory(directory.resolve("quiet"));
        long pressAt = Long.MAX_VALUE;
        List<Entry> before = new ArrayList<>();
        try (JournalReader reader = JournalReader.open(DayJournals.write(SEED, 4, quiet))) {
            reader.entries(before::add);
        }
        for (Entry entry : before) {
            if (entry.gatewayMicros() > pressAt) {
                pressAt = Long.MAX_VALUE;
                stopAndRestart(entry.gatewayMicros());
            }
            add(entry.gatewayMicros(), withButton(entry.input()));
            if (entry.input() instanceof Input.Ruling ruling
                    && ruling.act() instanceof Act.Release release
                    && release.number() == 2) {
                pressAt = entry.gatewayMicros() + 60 * SECOND;
            }
        }
        Path stopped = Files.createDirectory(directory.resolve("stopped"));
        try (JournalFile journal = JournalFile.open(stopped, entry -> {})) {
            journal.append(day);
        }
        return stopped.resolve(JournalFile.NAME);
    }

    private void stopAndRestart(long atMicros) {
        add(atMicros, new Input.CodeIssued("code-of-safety", Role.SAFETY, ""));
        add(
                atMicros,
                new Input.Enrolled(SAFETY, "Ines", Role.SAFETY, "code-of-safety", "its-token"));
        add(atMicros, edge(0, 1));
        add(atMicros, restart("while-pressed", atMicros));
        add(atMicros, edge(1, 0));
        add(atMicros, restart("after-release", atMicros));
    }

    private Input edge(long seq, int state) {
        return new Input.Edge(UNIT, health.boot(), seq, BUTTON, state, health.tick() + 1 + seq);
    }

    private Input restart(String key, long atMicros) {
        return new Input.Ruling(key, SAFETY, "", 0, atMicros, -1, new Act.Restart());
    }

    private void add(long atMicros, Input input) {
        day.add(new Entry(day.size() + 1, atMicros, input));
    }

    private Input withButton(Input input) {
        if (input instanceof Input.Health sign && sign.unit().equals(UNIT)) {
            health = sign;
        }
        return input instanceof Input.PlanFrozen frozen
                ? new Input.PlanFrozen(withButton(frozen.plan()), frozen.sha256())
                : input;
    }

    private static ExamPlan withButton(ExamPlan plan) {
        List<FieldUnit> units = new ArrayList<>();
        for (FieldUnit unit : plan.fieldUnits()) {
            List<SensorPlan> sensors = new ArrayList<>(unit.sensors());
            if (unit.id().equals(UNIT)) {
                Text name = new Text("Stop at the tower", "Parada en la torre");
                sensors.add(
                        new SensorPlan(
                                BUTTON, SensorKind.STOP_BUTTON, name, 0, false, true, 2_000));
            }
            units.add(new FieldUnit(unit.id(), unit.place(), sensors));
        }
        return plan.wiredWith(units);
    }

    private static int run(StringWriter said, Object... arguments) {
        PrintWriter out = new PrintWriter(said, true);
        String[] texts = new String[arguments.length];
        for (int i = 0; i < texts.length; i++) {
            texts[i] = arguments[i].toString();
        }
        return Main.commandLine().setOut(out).setErr(out).execute(texts);
    }
}
