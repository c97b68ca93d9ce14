package yardclock.sim.units;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class EdgeBufferTest {
    private static StoredEdge edge(long seq) {
        return new StoredEdge(seq, 1, (int) (seq % 2), seq * 1_000);
    }

    @Test
    void holds_four_hours_at_one_edge_a_second() {
        // Source: the field-unit contract, "ring buffer >= 4 h at one edge a second".
        assertThat(EdgeBuffer.CAPACITY).isGreaterThanOrEqualTo(4 * 3_600);
    }

    @Test
    void a_full_store_gives_up_the_newest_edge_and_says_so() {
        EdgeBuffer buffer = new EdgeBuffer(3);
        for (int seq = 0; seq < 5; seq++) {
            buffer.add(edge(seq));
        }
        assertThat(buffer.overflowed()).isEqualTo(2);
        assertThat(buffer.from(0, 10)).extracting(StoredEdge::seq).containsExactly(0L, 1L, 2L);
    }

    @Test
    void what_is_kept_goes_and_the_rest_stays_in_order() {
        EdgeBuffer buffer = new EdgeBuffer(10);
        for (int seq = 0; seq < 6; seq++) {
            buffer.add(edge(seq));
        }
        buffer.dropUpTo(2);
        assertThat(buffer.from(0, 2)).extracting(StoredEdge::seq).containsExactly(3L, 4L);
        assertThat(buffer.size()).isEqualTo(3);
        buffer.dropUpTo(99);
        assertThat(buffer.size()).isZero();
    }
}
