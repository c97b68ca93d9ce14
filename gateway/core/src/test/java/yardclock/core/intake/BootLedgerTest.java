package yardclock.core.intake;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;

/** What an edge turns out to be, and what is missing. */
class BootLedgerTest {
    private final BootLedger ledger = new BootLedger();

    @Test
    void edges_in_order_are_fresh_and_leave_no_gap() {
        for (long seq = 0; seq < 100; seq++) {
            assertThat(take(seq)).isEqualTo(Judgement.FRESH);
            assertThat(ledger.contiguous()).isEqualTo(seq);
        }
        assertThat(ledger.gaps()).isEmpty();
    }

    @Test
    void the_same_again_is_a_duplicate_and_other_content_a_conflict_that_changes_nothing() {
        take(0);
        take(1);
        assertThat(take(1)).isEqualTo(Judgement.DUPLICATE);
        assertThat(ledger.take(1, new RawEdge(2, 1, 1_000))).isEqualTo(Judgement.CONFLICTING);
        assertThat(ledger.take(1, new RawEdge(1, 0, 1_000))).isEqualTo(Judgement.CONFLICTING);
        assertThat(ledger.take(1, new RawEdge(1, 1, 1_001))).isEqualTo(Judgement.CONFLICTING);
        assertThat(take(1)).as("the first stands").isEqualTo(Judgement.DUPLICATE);
        assertThat(ledger.contiguous()).isEqualTo(1);
    }

    @Test
    void a_gap_is_known_as_soon_as_something_later_came_or_was_announced() {
        take(0);
        take(3);
        assertThat(ledger.gaps()).containsExactly(new BootLedger.Range(1, 2));
        ledger.announce(6);
        assertThat(ledger.gaps().toString()).isEqualTo("[1–2, 4–5]");
        ledger.announce(2);
        assertThat(ledger.announcedNext()).as("never goes back").isEqualTo(6);
        take(2);
        take(1);
        assertThat(ledger.contiguous()).isEqualTo(3);
        assertThat(ledger.gaps().toString()).isEqualTo("[4–5]");
        take(5);
        assertThat(ledger.gaps().toString()).isEqualTo("[4]");
        take(4);
        assertThat(ledger.gaps()).isEmpty();
        assertThat(ledger.contiguous()).isEqualTo(5);
    }

    @Test
    void a_tick_that_runs_backwards_is_no_evidence_and_leaves_no_gap() {
        take(0);
        take(1);
        assertThat(ledger.take(2, new RawEdge(1, 1, 999))).isEqualTo(Judgement.BACKWARDS);
        assertThat(ledger.contiguous()).isEqualTo(2);
        assertThat(take(3)).isEqualTo(Judgement.FRESH);
        take(6);
        assertThat(ledger.take(5, new RawEdge(1, 1, 7_000)))
                .as("later than the one after it")
                .isEqualTo(Judgement.BACKWARDS);
        assertThat(take(4)).isEqualTo(Judgement.FRESH);
    }

    @Test
    void equal_ticks_are_possible() {
        ledger.take(0, new RawEdge(1, 1, 5));
        assertThat(ledger.take(1, new RawEdge(2, 1, 5))).isEqualTo(Judgement.FRESH);
    }

    @Test
    void one_wild_tick_spoils_its_neighbour_at_most() {
        take(0);
        assertThat(ledger.take(1, new RawEdge(1, 0, 1L << 50))).isEqualTo(Judgement.FRESH);
        assertThat(take(2)).isEqualTo(Judgement.BACKWARDS);
        assertThat(take(3)).isEqualTo(Judgement.FRESH);
        assertThat(take(4)).isEqualTo(Judgement.FRESH);
    }

    @Test
    void history_beyond_what_is_compared_is_still_known_by_number() {
        for (long seq = 0; seq < BootLedger.EDGES_COMPARED + 10L; seq++) {
            take(seq);
        }
        assertThat(ledger.take(3, new RawEdge(8, 0, 42))).isEqualTo(Judgement.DUPLICATE);
        long kept = BootLedger.EDGES_COMPARED + 5L;
        assertThat(ledger.take(kept, new RawEdge(8, 0, 42))).isEqualTo(Judgement.CONFLICTING);
        assertThat(ledger.contiguous()).isEqualTo(BootLedger.EDGES_COMPARED + 9L);
    }

    @Test
    void a_beginning_that_never_comes_costs_neither_memory_nor_time() {
        for (long seq = 1_000_000; seq < 1_060_000; seq++) {
            take(seq);
            ledger.gaps();
        }
        assertThat(ledger.contiguous()).isEqualTo(-1);
        assertThat(ledger.gaps()).containsExactly(new BootLedger.Range(0, 999_999));
        assertThat(take(1_000_001)).isEqualTo(Judgement.DUPLICATE);
    }

    @Test
    void any_order_of_arrival_ends_in_the_same_knowledge() {
        for (long seed = 0; seed < 300; seed++) {
            Random random = new Random(seed);
            List<Long> arriving = new ArrayList<>();
            TreeSet<Long> came = new TreeSet<>();
            for (long seq = 0; seq < 60; seq++) {
                if (random.nextInt(5) > 0) {
                    came.add(seq);
                    arriving.add(seq);
                    arriving.add(seq);
                }
            }
            Collections.shuffle(arriving, random);
            BootLedger any = new BootLedger();
            long fresh =
                    arriving.stream().filter(s -> any.take(s, at(s)) == Judgement.FRESH).count();
            assertThat(fresh).as("seed %d", seed).isEqualTo(came.size());
            long contiguous = -1;
            while (came.contains(contiguous + 1)) {
                contiguous++;
            }
            assertThat(any.contiguous()).as("seed %d", seed).isEqualTo(contiguous);
            for (BootLedger.Range gap : any.gaps()) {
                assertThat(came.subSet(gap.from(), gap.to() + 1)).as("seed %d", seed).isEmpty();
                assertThat(came).as("seed %d", seed).contains(gap.to() + 1);
            }
        }
    }

    @Test
    void of_very_many_gaps_the_oldest_are_told() {
        for (long seq = 1; seq < 200; seq += 2) {
            take(seq);
        }
        assertThat(ledger.gaps()).hasSize(BootLedger.GAPS_SHOWN);
        assertThat(ledger.gaps().get(0)).isEqualTo(new BootLedger.Range(0, 0));
    }

    private Judgement take(long seq) {
        return ledger.take(seq, at(seq));
    }

    private static RawEdge at(long seq) {
        return new RawEdge(1, 1, seq * 1_000);
    }
}
