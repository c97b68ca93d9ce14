package yardclock.core.intake;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** A unit over its boots, and its tallies. */
class UnitLedgerTest {
    private final UnitLedger ledger = new UnitLedger();

    @Test
    void a_new_boot_counts_from_zero_and_the_old_one_is_remembered() {
        assertThat(ledger.take("a", 0, edge(500))).isEqualTo(Judgement.FRESH);
        assertThat(ledger.take("a", 1, edge(600))).isEqualTo(Judgement.FRESH);
        assertThat(ledger.take("b", 0, edge(3))).isEqualTo(Judgement.FRESH);
        assertThat(ledger.take("a", 0, edge(500))).isEqualTo(Judgement.DUPLICATE);
        assertThat(ledger.boot("a").contiguous()).isEqualTo(1);
        assertThat(ledger.boot("b").contiguous()).isZero();
    }

    @Test
    void each_judgement_has_its_tally() {
        ledger.take("a", 0, edge(500));
        ledger.take("a", 0, edge(500));
        ledger.take("a", 0, edge(501));
        ledger.take("a", 1, edge(400));
        assertThat(ledger.fresh()).isEqualTo(1);
        assertThat(ledger.duplicates()).isEqualTo(1);
        assertThat(ledger.conflicts()).isEqualTo(1);
        assertThat(ledger.refused()).isEqualTo(1);
        assertThat(ledger.toString()).endsWith("1/1/1/1");
    }

    @Test
    void boots_without_end_do_not_fill_the_memory() {
        for (int boot = 0; boot < 1_000; boot++) {
            ledger.take("boot-" + boot, 0, edge(1));
        }
        assertThat(ledger.toString().split("boot-")).hasSize(UnitLedger.BOOTS_KEPT + 1);
        assertThat(ledger.take("boot-999", 0, edge(1))).isEqualTo(Judgement.DUPLICATE);
    }

    private static RawEdge edge(long tick) {
        return new RawEdge(1, 1, tick);
    }
}
