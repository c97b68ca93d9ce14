package yardclock.core.ordering;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.course.SensorRef;
import yardclock.core.passage.TimedEdge;
import yardclock.core.time.Stamp;

/** Whether a turn's evidence is whole, so that it can be judged by other rules. */
class EvidenceTest {
    private final Evidence evidence = new Evidence();

    private static TimedEdge edge(int at) {
        return new TimedEdge(
                new SensorRef("u1", 1), at % 2, Stamp.exactly(at), 0, "boot", at, at, at, 0);
    }

    @Test
    void evidence_is_whole_until_an_edge_finds_no_room() {
        for (int at = 0; at < Evidence.EDGES_MAX; at++) {
            assertThat(evidence.add(edge(at))).isTrue();
        }
        assertThat(evidence.isWhole()).isTrue();
        assertThat(evidence.add(edge(Evidence.EDGES_MAX))).isFalse();
        assertThat(evidence.isWhole()).isFalse();
    }

    @Test
    void what_gave_way_before_a_turn_was_somebodys_is_missed_only_where_it_would_count() {
        for (int at = 0; at < Evidence.EDGES_MAX + 10; at++) {
            evidence.addForgetting(edge(at));
        }
        assertThat(evidence.isWhole()).as("ten gave way").isFalse();
        evidence.forgetBefore(9);
        assertThat(evidence.isWhole()).as("the tenth would count").isFalse();
        evidence.forgetBefore(10);
        assertThat(evidence.isWhole()).as("none of the ten would").isTrue();
    }
}
