package yardclock.sim.referee;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.account.Cause;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

class EdgeCountTest {
    private static List<Entry> journal() {
        List<Entry> journal = new ArrayList<>();
        for (int seq : new int[] {0, 1, 2, 1}) {
            Input.Edge edge = new Input.Edge("u1", "b", seq, 1, seq % 2, 1_000L * seq);
            journal.add(new Entry(journal.size() + 1L, journal.size(), edge));
        }
        return journal;
    }

    @Test
    void each_edge_of_the_journal_is_looked_up_once_however_often_it_came() {
        EdgeCount count = EdgeCount.of(journal(), key -> Optional.of(Cause.CROSSING));
        assertThat(count.edges()).isEqualTo(3);
        assertThat(count.by()).containsExactly(Map.entry("explained: crossing", 3L));
        assertThat(count.unaccounted()).isZero();
    }

    @Test
    void an_edge_of_which_nobody_knows_is_found() {
        EdgeCount count =
                EdgeCount.of(
                        journal(),
                        key -> key.seq() == 2 ? Optional.empty() : Optional.of(Cause.MARK));
        assertThat(count.unaccounted()).isEqualTo(1);
        assertThat(count.by()).containsEntry("mark", 2L);
    }
}
