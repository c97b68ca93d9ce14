package yardclock.core.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

import yardclock.core.course.TimingRules.Rounding;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;

class DisplayedTimeTest {
    /** Check values: reference/rounding.csv, whose first line names where they come from. */
    @Test
    void theCheckValuesComeOutAsWritten() throws IOException {
        List<String> rows =
                reference().lines().filter(line -> !line.startsWith("#")).skip(1).toList();
        assertThat(rows).hasSize(8);
        for (String row : rows) {
            String[] cells = row.split(",", -1);
            Rounding rule = Rounding.valueOf(cells[1].replace('-', '_').toUpperCase(Locale.ROOT));
            long stepMicros = Long.parseLong(cells[2]) * 1_000;
            assertThat(DisplayedTime.text(Long.parseLong(cells[0]), rule, stepMicros))
                    .as(row)
                    .isEqualTo(cells[3]);
        }
    }

    /** By definition of the rules; no source needed. */
    @Test
    void theRulesDifferOnlyInsideAStep() {
        for (Rounding rule : Rounding.values()) {
            assertThat(DisplayedTime.rounded(700_000_000, rule, 100_000)).isEqualTo(700_000_000);
        }
        assertThat(DisplayedTime.rounded(700_000_001, Rounding.UP, 100_000)).isEqualTo(700_100_000);
        assertThat(DisplayedTime.rounded(700_099_999, Rounding.TRUNCATE, 100_000))
                .isEqualTo(700_000_000);
    }

    @Test
    void asManyDecimalsAsTheStepNeeds() {
        assertThat(DisplayedTime.text(65_250_000, Rounding.TRUNCATE, 50_000)).isEqualTo("1:05.25");
        assertThat(DisplayedTime.text(65_251_000, Rounding.TRUNCATE, 1_000)).isEqualTo("1:05.251");
        assertThat(DisplayedTime.text(0, Rounding.UP, 1)).isEqualTo("0.000000");
    }

    @Test
    void aNegativeTimeIsAFaultOfOurs() {
        assertThatThrownBy(() -> DisplayedTime.text(-1, Rounding.UP, 100_000))
                .hasMessageContaining("-1");
    }

    private static String reference() throws IOException {
        try (InputStream in =
                DisplayedTimeTest.class.getResourceAsStream("/reference/rounding.csv")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
