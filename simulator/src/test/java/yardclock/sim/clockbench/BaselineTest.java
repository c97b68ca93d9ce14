package yardclock.sim.clockbench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.data.Percentage.withPercentage;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import java.nio.file.Files;
import java.nio.file.Path;

/**
 * The plain filter we say we are better than must be as good as anybody's: an independent script,
 * simulator/baselines/minimum_delay.py, dates the same recorded edges.
 */
class BaselineTest {
    private static final String RECORDED = "gateway/core/src/test/resources/reference/clock";

    /** Figures: what the script printed for this folder, p99_us. */
    @ParameterizedTest
    @CsvSource({"bursty,4417", "powersave,20486", "hostile,13936"})
    void the_minimum_filter_is_as_good_as_the_scripts(String run, long scriptP99Micros)
            throws Exception {
        ClockTable table = new ClockTable(run);
        table.take(RecordedHours.read(folder(), run), 1);
        SplitFigures filter = table.of(Method.MINIMUM_FILTER);
        assertThat(filter.splits()).isGreaterThan(2_000);
        assertThat(filter.errorMicros(0.99)).isCloseTo(scriptP99Micros, withPercentage(15));
        assertThat(table.of(Method.OURS_LIVE).errorMicros(0.99) * 5 / 2)
                .isLessThanOrEqualTo(filter.errorMicros(0.99));
    }

    private static Path folder() {
        Path inModule = Path.of("..").resolve(RECORDED);
        return Files.isDirectory(inModule) ? inModule : Path.of(RECORDED);
    }
}
