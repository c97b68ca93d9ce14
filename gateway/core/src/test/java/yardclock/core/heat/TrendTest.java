package yardclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import yardclock.core.course.HeatRules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The trend against its definition (Sen 1968, the median of all pairs' slopes), worked by hand, and
 * the limits of the heat design.
 */
class TrendTest {
    private static final long MINUTE = 60_000_000;
    private static final int WORK_W = 300;

    @Test
    void the_slope_is_the_median_of_all_pairs_slopes() {
        // 0, 10, 20, 30 min: 20, 21, 21, 26 °C. Slopes per hour: 6, 3, 12, 0, 15, 30; median 9.
        List<HeatReading> readings = List.of(air(0, 20), air(10, 21), air(20, 21), air(30, 26));
        Trend.Line line = Trend.Line.through(readings, r -> r.centiCelsius() / 100.0, 99);
        assertThat(line.perHour()).isCloseTo(9, within(1e-9));
        // Left of 9 °C/h: 20, 19.5, 18, 21.5; median 19.75.
        assertThat(line.at(0)).isCloseTo(19.75, within(1e-9));
        assertThat(line.at(60 * MINUTE)).isCloseTo(28.75, within(1e-9));
    }

    @Test
    void one_wild_reading_of_seven_does_not_turn_it() {
        List<HeatReading> readings = new ArrayList<>();
        for (int i = 0; i < 7; i++) {
            readings.add(air(i * 5, i == 4 ? 45 : 24 + 0.25 * i));
        }
        Trend.Line line = Trend.Line.through(readings, r -> r.centiCelsius() / 100.0, 99);
        assertThat(line.perHour()).isCloseTo(3, within(0.01));
    }

    @Test
    void a_steady_rise_is_told_with_its_level_and_about_when() {
        Optional<Trend.Rise> rise = rise(warming(3.6, 9));
        assertThat(rise).isPresent();
        assertThat(rise.get().level()).isEqualTo(1);
        assertThat(rise.get().atMicros() - 40 * MINUTE).isBetween(MINUTE, 30 * MINUTE);
    }

    @Test
    void what_is_steady_or_too_few_or_too_short_tells_nothing() {
        assertThat(rise(warming(0, 9))).isEmpty();
        assertThat(rise(warming(3.6, 9).subList(5, 9))).as("four readings").isEmpty();
        List<HeatReading> close = new ArrayList<>();
        for (int i = 0; i < 9; i++) {
            close.add(air(2 * i, 25 + 0.2 * i));
        }
        assertThat(rise(close)).as("over 16 minutes").isEmpty();
        assertThat(rise(List.of())).isEmpty();
    }

    @Test
    void a_slope_beyond_any_weather_counts_as_the_most_there_is() {
        // 60 °C/h would be at the bound within a minute or two; at 4 °C/h it takes longer.
        List<HeatReading> readings = warming(4, 9);
        assertThat(Trend.Line.through(warming(60, 9), r -> r.centiCelsius() / 100.0, 4).perHour())
                .isEqualTo(4);
        assertThat(rise(readings)).isPresent();
    }

    @Test
    void a_level_that_holds_already_is_not_told_as_coming() {
        assertThat(Trend.rise(warming(3.6, 9), 1, HeatRules.DEFAULTS, WORK_W)).isEmpty();
    }

    /** Nine readings five minutes apart that end at 25.9 °C, at 45 % when it is so. */
    private static List<HeatReading> warming(double perHour, int count) {
        List<HeatReading> readings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            readings.add(air(5 * i, 25.9 + perHour * (i - count + 1) / 12.0));
        }
        return readings;
    }

    private static Optional<Trend.Rise> rise(List<HeatReading> readings) {
        return Trend.rise(readings, 0, HeatRules.DEFAULTS, WORK_W);
    }

    private static HeatReading air(int minute, double celsius) {
        long at = minute * MINUTE;
        int centi = (int) Math.round(celsius * 100);
        HeatReading.From yard = HeatReading.From.sensor("yard");
        return new HeatReading(yard, at, at, 0, centi, 4_500, null, null, null, null);
    }
}
