package yardclock.sim.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.broker.UnitPasswords;
import yardclock.app.settings.DemoPlan;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.sim.demo.DayFolder;
import yardclock.sim.demo.DemoSettings;
import yardclock.sim.people.CandidateRun;
import yardclock.sim.people.Mishap;
import yardclock.sim.referee.Figures;
import yardclock.sim.referee.JournalEdges;
import yardclock.sim.units.UnitCounts;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;

/** Four candidates at sixty times real time, through a real mosquitto, with somebody looking on. */
class FieldBrokerDayTest {
    private static final long SEED = 11;

    @TempDir Path temporary;

    @Test
    void an_onlooker_at_a_real_broker_counts_the_edges_the_journal_holds() throws Exception {
        DayFolder folder = DayFolder.forNewDay(temporary.resolve("day"));
        Path brokers = brokersFolder();
        try (FieldBroker broker = new FieldBroker(brokers, passwords(folder.path()));
                Onlooker onlooker = new Onlooker(broker.uri());
                RunningDay running = new RunningDay(settings(broker.uri()), folder)) {
            running.awaitFinished(100);
            List<UnitCounts> counts = running.awaitAllKept();
            JournalEdges journal = running.gateway.journalEdges();
            await().atMost(Duration.ofSeconds(10))
                    .until(() -> onlooker.edges().size() >= journal.distinct());
            assertThat(onlooker.broken()).isEmpty();
            assertThat(onlooker.edges())
                    .allMatch(e -> journal.holds(e.unit(), e.boot(), e.seq()))
                    .hasSize(Math.toIntExact(journal.distinct()));
            String digest = running.day.state().path("digest").asText();
            Figures figures = running.day.figures(journal, counts, digest);
            assertThat(figures.lostEdges()).as("seed %d: %s", SEED, figures).isZero();
            assertThat(figures.wrongAssignments()).as("seed %d: %s", SEED, figures).isZero();
            assertThat(figures.candidates()).isEqualTo(4);
            assertThat(figures.passed()).as("%s", figures).isEqualTo(whoPassInTruth());
            assertThat(figures.failed()).as("%s", figures).isEqualTo(4 - whoPassInTruth());
            assertThat(running.day.repeats(counts) * 10).isGreaterThan(figures.edges());
        }
    }

    /** Nobody of these four withdraws or is near the cut-off. */
    private static int whoPassInTruth() {
        ExamPlan plan = DemoPlan.plan().plan();
        return (int)
                IntStream.rangeClosed(1, 4)
                        .mapToObj(number -> CandidateRun.draw(SEED, number, plan.stations()))
                        .filter(run -> run.mishap().kind() == Mishap.Kind.NONE)
                        .filter(run -> run.courseMicros() <= plan.timing().cutOffMicros())
                        .count();
    }

    /**
     * In memory where there is such a place: this broker saves at every change, and sixty times the
     * traffic of a yard asks more of a disk than other tests leave of it.
     */
    private Path brokersFolder() throws IOException {
        Path memory = Path.of("/dev/shm");
        if (!Files.isWritable(memory)) {
            return Files.createDirectory(temporary.resolve("broker"));
        }
        return Files.createTempDirectory(memory, "yardclock-broker-");
    }

    private static DemoSettings settings(String brokerUri) throws Exception {
        return new DemoSettings(
                60, SEED, 4, FreePort.address(), "127.0.0.1:1", brokerUri, null, true);
    }

    /** Made before the gateway's first start, so that both brokers' sides know them. */
    private static Map<String, String> passwords(Path folder) throws Exception {
        List<String> units =
                DemoPlan.plan().plan().fieldUnits().stream().map(FieldUnit::id).toList();
        UnitPasswords made = UnitPasswords.in(folder, units);
        Map<String, String> passwords = new TreeMap<>();
        passwords.put(UnitPasswords.GATEWAY, made.of(UnitPasswords.GATEWAY));
        units.forEach(unit -> passwords.put(unit, made.of(unit)));
        return passwords;
    }
}
