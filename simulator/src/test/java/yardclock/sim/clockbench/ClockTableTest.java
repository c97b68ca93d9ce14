package yardclock.sim.clockbench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The design's targets for simulated hours, on fewer of them than the bench takes: errors at p99,
 * every interval true, and well ahead of the plain filter on the same exchanges.
 */
class ClockTableTest {
    private static final int HOURS = 6;

    @ParameterizedTest
    @CsvSource({
        "bursty,5,40,1800",
        "power save,5,40,1800",
        "hostile,5,40,1900",
        "bursty,70,80,1800",
        "power save,70,80,1800",
        "hostile,70,80,1900",
        "bursty,195,205,1800"
    })
    void splits_keep_the_targets(String weather, double slowest, double fastest, long p99Max) {
        ClockTable table = new ClockTable(weather);
        for (long seed = 1; seed <= HOURS; seed++) {
            table.take(SimulatedHour.of(named(weather), seed, slowest, fastest), seed);
        }
        SplitFigures live = table.of(Method.OURS_LIVE);
        SplitFigures settled = table.of(Method.OURS_FINAL);
        assertThat(live.splits()).isGreaterThan(2_000);
        assertThat(live.uncovered()).isZero();
        assertThat(settled.uncovered()).isZero();
        assertThat(live.errorMicros(0.99)).isLessThanOrEqualTo(p99Max);
        assertThat(settled.errorMicros(0.99)).isLessThanOrEqualTo(1_700);
        assertThat(table.of(Method.MINIMUM_FILTER).errorMicros(0.99))
                .isGreaterThan(live.errorMicros(0.99) * 5 / 2);
    }

    private static Weather named(String name) {
        return switch (name) {
            case "bursty" -> Weather.BURSTY;
            case "power save" -> Weather.POWER_SAVE;
            default -> Weather.HOSTILE;
        };
    }
}
