package yardclock.core.result;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import yardclock.core.ReferenceTable;
import yardclock.core.ReferenceTable.Row;
import yardclock.core.course.TimingRules;
import yardclock.core.course.TimingRules.Comparison;
import yardclock.core.course.TimingRules.Rounding;
import yardclock.core.course.TimingRules.UndecidedRule;

import java.util.List;

/** An interval against the cut-off; the interval rule's column of reference/decision.csv. */
class DecisionTest {
    private static final long LIMIT = 1_800_000_000;

    static List<Row> decisions() {
        return ReferenceTable.rows("decision");
    }

    @ParameterizedTest
    @MethodSource("decisions")
    void the_interval_decides_as_in_the_reference(Row row) {
        long y = row.micros("y_s");
        long u = row.micros("u_s");
        TimingRules timing = timing(Comparison.AT_MOST, false, Rounding.UP);
        Decision decision = Decision.of(y - 2 * u, y + 2 * u, timing);
        if (y + 2 * u == LIMIT) {
            // The table calls an upper end exactly on the limit undecided. Our limits are included
            // in the interval, and "at most" includes the limit: every time in it is within.
            assertThat(row.text("interval_rule")).isEqualTo("undecided");
            assertThat(decision).isEqualTo(Decision.WITHIN);
        } else {
            assertThat(decision.word()).isEqualTo(row.text("interval_rule"));
        }
        assertThat(Decision.of(y, y, timing).word())
                .as("known exactly")
                .isEqualTo(row.text("simple"));
    }

    @ParameterizedTest
    @CsvSource({"AT_MOST, 0, WITHIN", "AT_MOST, 1, OVER", "BELOW, 0, OVER", "BELOW, -1, WITHIN"})
    void on_the_cut_off_the_plans_comparison_decides(
            Comparison comparison, long past, Decision decision) {
        long micros = LIMIT + past;
        assertThat(Decision.of(micros, micros, timing(comparison, false, Rounding.UP)))
                .isEqualTo(decision);
    }

    @Test
    void a_displayed_comparison_rounds_first() {
        long micros = LIMIT + 40_000;
        assertThat(Decision.of(micros, micros, timing(Comparison.AT_MOST, true, Rounding.TRUNCATE)))
                .isEqualTo(Decision.WITHIN);
        assertThat(Decision.of(micros, micros, timing(Comparison.AT_MOST, true, Rounding.UP)))
                .isEqualTo(Decision.OVER);
        assertThat(Decision.of(micros, micros, timing(Comparison.AT_MOST, false, Rounding.UP)))
                .isEqualTo(Decision.OVER);
    }

    @Test
    void an_interval_that_reaches_below_nothing_is_compared_all_the_same() {
        assertThat(Decision.of(-5, 5, timing(Comparison.AT_MOST, true, Rounding.UP)))
                .isEqualTo(Decision.WITHIN);
    }

    private static TimingRules timing(Comparison comparison, boolean displayed, Rounding rounding) {
        return new TimingRules(
                LIMIT,
                comparison,
                displayed,
                rounding,
                100_000,
                UndecidedRule.REVIEW,
                400_000,
                50_000,
                100_000);
    }
}
