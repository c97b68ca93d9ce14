package yardclock.app.records;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class ConformanceTest {
    private static final double LIMIT_SECONDS = 1_800;

    /**
     * Rows and source in the file: JCGM 106:2012, clause 7.3, computed with the standard normal.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/reference/decision.csv", numLinesToSkip = 2)
    void the_probability_is_that_of_the_table(
            double seconds, double uncertainty, double probability, String simple, String rule) {
        assertThat(Conformance.probability(LIMIT_SECONDS - seconds, uncertainty))
                .as("%s ± %s: %s, %s", seconds, uncertainty, simple, rule)
                .isCloseTo(probability, within(0.000_006));
    }

    /** Worked by hand from JCGM 100:2008, 4.3.7: u = w / √12 of each part, added in squares. */
    @Test
    void a_candidates_parts_give_the_uncertainty() {
        // 18.2, 0.8, 1.0 and 280 ms: u = 81.000 ms; 50 ms under 11:40 is 0.6173 u.
        long perMillion = Conformance.perMillion(SampleDay.day().results().get(0), 700_000_000);
        assertThat(perMillion).isBetween(731_000L, 732_000L);
        assertThat(Conformance.perMillion(SampleDay.day().results().get(1), 700_000_000))
                .isEqualTo(-1);
    }
}
