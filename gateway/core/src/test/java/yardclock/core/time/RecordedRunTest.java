package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import yardclock.core.time.RecordedRun.Judged;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * The recorded runs of reference/clock: splits between two units, 20–300 s apart, against the
 * truth. The targets are those of the prototype that recorded the runs.
 */
class RecordedRunTest {
    private static final long SPLIT_FROM = 20_000_000;
    private static final long SPLIT_TO = 300_000_000;

    private final List<Long> errors = new ArrayList<>();
    private long uncovered;
    private long widths;

    @ParameterizedTest
    @CsvSource({
        "bursty,true,900,14500",
        "powersave,true,1100,18000",
        "hostile,true,1900,18500",
        "bursty,false,700,14500",
        "powersave,false,1100,18000",
        "hostile,false,2400,18500"
    })
    void splits_between_two_units_are_known_within_the_target(
            String run, boolean live, long p99Max, long meanWidthMax) throws Exception {
        Map<String, List<Judged>> judged = RecordedRun.read(run).judge(live);
        for (String from : judged.keySet()) {
            for (String to : judged.keySet()) {
                if (!from.equals(to)) {
                    compare(judged.get(from), judged.get(to));
                }
            }
        }
        Collections.sort(errors);
        assertThat(errors).hasSizeGreaterThan(2_000);
        assertThat(uncovered).isZero();
        assertThat(errors.get(errors.size() * 99 / 100)).isLessThanOrEqualTo(p99Max);
        assertThat(widths / errors.size()).isLessThanOrEqualTo(meanWidthMax);
    }

    private void compare(List<Judged> starts, List<Judged> finishes) {
        for (Judged start : starts) {
            for (Judged finish : finishes) {
                long truth = finish.truth() - start.truth();
                if (truth >= SPLIT_FROM && truth <= SPLIT_TO) {
                    take(start.stamp(), finish.stamp(), truth);
                }
            }
        }
    }

    private void take(Stamp start, Stamp finish, long truth) {
        long lower = finish.lowerMicros() - start.upperMicros();
        long upper = finish.upperMicros() - start.lowerMicros();
        errors.add(Math.abs(finish.micros() - start.micros() - truth));
        widths += upper - lower;
        uncovered += truth < lower || truth > upper ? 1 : 0;
    }
}
