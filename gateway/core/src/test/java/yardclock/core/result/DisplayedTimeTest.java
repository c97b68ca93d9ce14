package yardclock.core.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

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
import java.util.Locale;
import java.util.Random;

/** Times as a plan displays them, against reference/rounding.csv. */
class DisplayedTimeTest {
    static List<Row> rounding() {
        return ReferenceTable.rows("rounding");
    }

    @ParameterizedTest
    @MethodSource("rounding")
    void times_read_as_in_the_reference(Row row) {
        String word = row.text("rule").toUpperCase(Locale.ROOT).replace('-', '_');
        long step = Long.parseLong(row.text("resolution_ms")) * 1_000;
        assertThat(DisplayedTime.text(Long.parseLong(row.text("micros")), timing(word, step)))
                .isEqualTo(row.text("display"));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 100000, 0.0",
        "0, 1000000, 0",
        "59999999, 1000000, 59",
        "60000000, 1000000, 1:00",
        "700000000, 100000, 11:40.0",
        "3599999999, 1000, 59:59.999",
        "3600000000, 10000, 1:00:00.00",
        "123456, 1, 0.123456",
        "400000, 200000, 0.4",
        "65250000, 50000, 1:05.25",
    })
    void the_step_says_how_many_decimals(long micros, long step, String text) {
        assertThat(DisplayedTime.text(micros, timing("TRUNCATE", step))).isEqualTo(text);
    }

    @Test
    void the_three_rules_bracket_every_time() {
        for (long seed = 0; seed < 2_000; seed++) {
            Random random = new Random(seed);
            long micros = random.nextLong(4_000_000_000L);
            long step = new long[] {1, 1_000, 10_000, 100_000, 1_000_000}[random.nextInt(5)];
            long down = DisplayedTime.rounded(micros, Rounding.TRUNCATE, step);
            long half = DisplayedTime.rounded(micros, Rounding.HALF_UP, step);
            long up = DisplayedTime.rounded(micros, Rounding.UP, step);
            assertThat(micros).as("seed %d", seed).isBetween(down, up);
            assertThat(Math.abs(half - micros) * 2).as("seed %d", seed).isLessThanOrEqualTo(step);
            assertThat(up - down).as("seed %d", seed).isIn(0L, step);
            assertThat(half).as("seed %d", seed).isIn(down, up);
        }
    }

    @Test
    void a_negative_time_is_impossible() {
        assertThatThrownBy(() -> DisplayedTime.rounded(-1, Rounding.UP, 100_000))
                .hasMessageContaining("-1");
    }

    static TimingRules timing(String rounding, long stepMicros) {
        return new TimingRules(
                700_000_000,
                Comparison.AT_MOST,
                false,
                Rounding.valueOf(rounding),
                stepMicros,
                UndecidedRule.REVIEW,
                400_000,
                50_000,
                100_000);
    }
}
