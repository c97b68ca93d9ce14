package yardclock.sim.endtoend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.sim.demo.DayFolder;
import yardclock.sim.demo.Demo;
import yardclock.sim.demo.DemoSettings;
import yardclock.sim.referee.Figures;
import yardclock.sim.referee.JournalEdges;
import yardclock.sim.units.UnitCounts;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;

/** The gateway loses its power in the middle of the day; the yard does not notice. */
class KilledGatewayTest {
    private static final long SEED = 5;
    private static final int EDGES_BEFORE = 120;

    @TempDir Path temporary;

    @Test
    void nothing_acknowledged_is_missing_after_a_kill_and_the_day_goes_on() throws Exception {
        DayFolder folder = DayFolder.forNewDay(temporary.resolve("day"));
        DemoSettings settings =
                new DemoSettings(
                        30,
                        SEED,
                        2,
                        FreePort.address(),
                        FreePort.address(),
                        DemoSettings.EMBEDDED,
                        null,
                        true);
        try (RunningDay running = new RunningDay(settings, folder)) {
            await().atMost(Duration.ofSeconds(60)).until(() -> edges(running) > EDGES_BEFORE);
            running.gateway.kill();
            List<UnitCounts> atTheKill = running.day.unitCounts();
            assertThat(atTheKill).anyMatch(unit -> unit.kept() > 0);
            assertAcknowledgedAreKept(running.gateway.journalEdges(), atTheKill);
            running.gateway.start();
            Demo.awaitUp(settings.http(), running.gateway);
            running.awaitFinished(100);
            Figures figures = running.figures();
            assertThat(figures.lostEdges()).as("seed %d: %s", SEED, figures).isZero();
            assertThat(figures.candidates()).isEqualTo(2);
            running.day.close();
            awaitSameDigest(running);
        }
    }

    private static long edges(RunningDay running) throws Exception {
        return running.day.unitCounts().stream().mapToLong(UnitCounts::edges).sum();
    }

    private static void assertAcknowledgedAreKept(JournalEdges journal, List<UnitCounts> units) {
        for (UnitCounts unit : units) {
            for (int seq = 0; seq <= unit.kept(); seq++) {
                assertThat(journal.holds(unit.unit(), unit.boot(), seq))
                        .as("%s edge %d of %s", unit.unit(), seq, unit.boot())
                        .isTrue();
            }
        }
    }

    /** The gateway may still note that units fell silent; then its journal has grown since. */
    private static void awaitSameDigest(RunningDay running) {
        await().atMost(Duration.ofSeconds(30))
                .untilAsserted(
                        () -> {
                            JsonNode live = running.state();
                            JsonNode replayed = running.replayed();
                            assertThat(replayed.get("entries")).isEqualTo(live.get("entries"));
                            assertThat(replayed.get("digest")).isEqualTo(live.get("digest"));
                        });
    }
}
