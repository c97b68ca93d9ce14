package yardclock.app.metrics;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.engine.Outcome;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;

class MetersTest {
    private final Meters meters = new Meters();

    private void conclude(FactKind... kinds) {
        List<Fact> facts = Arrays.stream(kinds).map(k -> Fact.aboutUnit(k, "fu-01", "")).toList();
        meters.applied(
                new Entry(1, 0, new Input.Deadline()),
                new Outcome(facts, List.of(), null, OptionalLong.empty()));
    }

    @Test
    void whatHappenedCanBeScraped() {
        conclude(FactKind.EDGE_TAKEN, FactKind.EDGE_TAKEN, FactKind.EDGE_DUPLICATE);
        conclude(FactKind.GAP_OPENED, FactKind.RELEASED);
        meters.committed(12, 3_000_000);
        meters.lost(2);
        meters.drawn(40_000_000);
        meters.drawn(-1);
        meters.laneDepth(() -> 17);
        meters.tablets(() -> 5);
        meters.rejected("not-found");
        assertThat(meters.scrape())
                .contains("yardclock_edges_total 2.0")
                .contains("yardclock_edges_duplicate_total 1.0")
                .contains("yardclock_gaps_opened_total 1.0")
                .contains("yardclock_entries_total 12.0")
                .contains("yardclock_inputs_lost_total 2.0")
                .contains("yardclock_commit_seconds_count 1")
                .contains("yardclock_commit_seconds_sum 0.003")
                .contains("yardclock_edge_to_frame_seconds_count 1")
                .contains("yardclock_lane_depth 17.0")
                .contains("yardclock_tablets 5.0")
                .contains("yardclock_rejections_total{reason=\"not-found\"} 1.0");
    }

    @Test
    void reasonsCannotGrowWithoutEnd() {
        for (int i = 0; i < 1_000; i++) {
            meters.rejected("reason-" + i);
        }
        long lines =
                meters.scrape().lines().filter(l -> l.startsWith("yardclock_rejections")).count();
        assertThat(lines).isLessThanOrEqualTo(101);
        assertThat(meters.scrape()).contains("{reason=\"other\"} 900.0");
    }
}
