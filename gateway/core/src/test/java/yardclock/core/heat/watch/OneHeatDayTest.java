package yardclock.core.heat.watch;

import static org.assertj.core.api.Assertions.assertThat;

import static yardclock.core.heat.watch.WatchedDay.CAUTION;
import static yardclock.core.heat.watch.WatchedDay.COOL;
import static yardclock.core.heat.watch.WatchedDay.HOLD;
import static yardclock.core.heat.watch.WatchedDay.MINUTE;
import static yardclock.core.heat.watch.WatchedDay.MORE_REST;
import static yardclock.core.heat.watch.WatchedDay.STOP;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import yardclock.core.heat.HeatReading;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/**
 * A day with gaps, a sensor in the sun, a jump, a late buffer and a thunderstorm: each step of the
 * shown history as the heat design demands it, and one measured history whatever the order.
 */
class OneHeatDayTest {
    /** Dew point 6 °C or so at either temperature: the vapour of the air did not change. */
    private static final int[] SHADE = {2_000, 4_000};

    private static final int[] SUN = {2_500, 2_950};

    @Test
    void each_step_of_the_day_is_shown_as_it_must_be() {
        WatchedDay day = new WatchedDay();
        theMorning(day);
        assertThat(day.shown())
                .containsExactly(
                        "0: unknown, was -1 NONE",
                        // The first reading.
                        "10: 0 FRESH",
                        // No reading for half an hour, then for an hour; then one comes.
                        "40: 0 AGEING",
                        "70: unknown, was 0 SILENT",
                        "75: 0 FRESH",
                        // 5 °C in 5 minutes at a steady dew point: the sensor is in the sun. It
                        // stays under suspicion until it is back in the shade.
                        "80: 0 FRESH IN_THE_SUN",
                        "95: 0 FRESH",
                        // One reading far over all: shown at once, and a second one is wanted.
                        "100: 4 FRESH TO_BE_CONFIRMED",
                        "105: 4 FRESH HAND_READING_ASKED",
                        // The hand reading is lower. Nothing falls so soon.
                        "107: 4 FRESH");
        theAfternoon(day);
        assertThat(day.shown().subList(10, day.shown().size()))
                .containsExactly(
                        // Low since 107: 20 minutes later one level, and one at each reading.
                        "117: 4 AGEING",
                        "118: 4 FRESH",
                        "127: 3 FRESH",
                        "128: 2 FRESH",
                        "140: 1 FRESH",
                        // Off-line from 140 to 172: ageing after 15, unknown after 30 minutes.
                        "155: 1 AGEING",
                        "170: unknown, was 1 UNKNOWN",
                        // The buffer comes in order. Its old readings raise nobody's hopes: what
                        // is past due is history. One says 2, so 2 was reached and is shown, as
                        // soon as the sensor speaks of now.
                        "172: unknown, was 2 UNKNOWN",
                        "173: 2 FRESH",
                        // Thunder at 180 and 190: 30 minutes from the last one, not from the first.
                        "180: 4 FRESH LIGHTNING",
                        "188: 4 AGEING LIGHTNING",
                        "195: 4 FRESH LIGHTNING",
                        "210: 4 AGEING LIGHTNING",
                        "215: 4 FRESH LIGHTNING",
                        // Meanwhile the heat fell, a level at 195 and a level at 215.
                        "220: 0 FRESH");
    }

    private static void theMorning(WatchedDay day) {
        day.read(10, COOL).read(75, SHADE[0], SHADE[1]);
        day.read(80, SUN[0], SUN[1]).read(85, SUN[0] + 20, SUN[1] - 30);
        day.read(95, SHADE[0] + 10, SHADE[1]);
        day.read(100, STOP).pass(106).readByHand(107, COOL);
    }

    private static void theAfternoon(WatchedDay day) {
        day.read(118, COOL + 30).read(127, COOL + 20).read(128, COOL + 10).read(140, COOL);
        day.pass(171);
        day.readLate(145, 172, MORE_REST).readLate(150, 172, CAUTION).read(173, CAUTION);
        day.watch.flash(180 * MINUTE);
        day.watch.flash(190 * MINUTE);
        day.read(195, COOL).read(215, COOL + 10).pass(221);
    }

    @Test
    void a_late_old_reading_never_lowers_the_shown_level() {
        WatchedDay day = new WatchedDay().read(0, MORE_REST).read(30, MORE_REST);
        for (int minute = 1; minute < 29; minute++) {
            day.readLate(minute, 31, COOL - minute);
            assertThat(day.at(31).level()).isEqualTo(2);
        }
        // What was so is another matter: low readings over 20 minutes, then high again.
        assertThat(day.watch.measured().steps())
                .extracting(MeasuredHistory.Step::level)
                .containsExactly(2, 1, 0, 2);
    }

    @Test
    void a_steep_rise_is_confirmed_by_a_second_reading_as_high() {
        WatchedDay day = new WatchedDay().read(0, COOL).read(1, HOLD).read(3, HOLD + 10).pass(9);
        assertThat(day.shown())
                .containsExactly(
                        "0: unknown, was -1 NONE",
                        "0: 0 FRESH",
                        "1: 3 FRESH TO_BE_CONFIRMED",
                        "3: 3 FRESH");
    }

    @Test
    void two_levels_at_once_are_not_steep() {
        WatchedDay day = new WatchedDay().read(0, COOL).read(1, MORE_REST);
        assertThat(day.shown()).endsWith("1: 2 FRESH");
    }

    @Test
    void ten_times_the_very_same_values_are_no_reading() {
        WatchedDay day = new WatchedDay();
        for (int minute = 0; minute < 9; minute++) {
            day.read(minute, COOL);
        }
        assertThat(day.at(8).suspicions()).isEmpty();
        day.read(9, COOL);
        assertThat(day.at(9).suspicions()).containsExactly(Suspicion.STUCK);
        for (int minute = 10; minute < 70; minute++) {
            day.read(minute, COOL);
        }
        // The last one that was believed came at minute 8.
        assertThat(day.shown()).endsWith("38: 0 AGEING STUCK", "68: unknown, was 0 SILENT STUCK");
        assertThat(day.read(70, COOL + 1).at(70).level()).isZero();
    }

    @Test
    void a_dew_point_over_32_degrees_is_suspect() {
        // Saturated air at 32.1 °C has its dew point there, by the words' meaning.
        WatchedDay day = new WatchedDay().read(0, 3_190, 10_000);
        assertThat(day.at(0).suspicions()).isEmpty();
        assertThat(day.read(1, 3_210, 10_000).at(1).suspicions())
                .containsExactly(Suspicion.DEW_POINT);
    }

    @Test
    void warming_with_its_vapour_or_slowly_is_weather() {
        WatchedDay moist = new WatchedDay().read(0, 2_000, 4_000).read(5, 2_500, 4_000);
        assertThat(moist.at(5).suspicions()).isEmpty();
        WatchedDay slow = new WatchedDay();
        for (int minute = 0; minute <= 60; minute++) {
            slow.read(minute, 2_000 + minute * 8, 4_000 - minute * 17);
        }
        assertThat(slow.at(60).suspicions()).isEmpty();
    }

    /** A day's readings: two sources, gaps, steps, doubles and suspects. */
    private static List<HeatReading> readings(Random random) {
        List<HeatReading> readings = new ArrayList<>();
        int air = COOL;
        for (int minute = 0; minute < 900; minute += 1 + random.nextInt(12)) {
            minute += random.nextInt(30) == 0 ? 70 : 0;
            air = Math.max(1_500, Math.min(4_400, air + random.nextInt(1_300) - 620));
            String source = random.nextInt(4) == 0 ? "care" : "yard";
            int percent = 3_500 + random.nextInt(2_000);
            readings.add(WatchedDay.reading(source, minute, minute, air, percent));
        }
        return readings;
    }

    @Test
    void a_thousand_shuffles_give_one_measured_history() {
        long seed = 20_240_715;
        Random random = new Random(seed);
        List<HeatReading> readings = readings(random);
        WatchedDay ordered = new WatchedDay();
        readings.forEach(ordered::take);
        List<MeasuredHistory.Step> steps = ordered.watch.measured().steps();
        assertThat(steps).as("seed %d", seed).hasSizeGreaterThan(10);
        assertThat(steps).extracting(MeasuredHistory.Step::level).contains(-1, 0, 1, 2, 3, 4);
        for (int i = 0; i < 1_000; i++) {
            List<HeatReading> shuffled = new ArrayList<>(readings);
            Collections.shuffle(shuffled, random);
            WatchedDay day = new WatchedDay();
            shuffled.forEach(r -> day.take(arriving(r, 1_000)));
            shuffled.subList(0, 5).forEach(r -> day.take(arriving(r, 1_001)));
            assertThat(day.watch.measured().steps())
                    .as("seed %d, shuffle %d", seed, i)
                    .isEqualTo(steps);
        }
    }

    @Test
    void too_many_readings_give_one_measured_history_too() {
        int count = MeasuredHistory.READINGS_KEPT + 100;
        List<HeatReading> readings =
                new ArrayList<>(
                        IntStream.range(0, count)
                                .mapToObj(
                                        i -> WatchedDay.reading("yard", i, i, COOL + i % 17, 4_000))
                                .toList());
        WatchedDay ordered = new WatchedDay();
        readings.forEach(ordered::take);
        Collections.reverse(readings);
        WatchedDay reversed = new WatchedDay();
        readings.forEach(r -> reversed.take(arriving(r, count)));
        assertThat(reversed.watch.measured().readings())
                .hasSize(MeasuredHistory.READINGS_KEPT)
                .extracting(e -> e.getKey().measuredMicros())
                .isEqualTo(
                        ordered.watch.measured().readings().stream()
                                .map(e -> e.getKey().measuredMicros())
                                .toList());
        assertThat(reversed.watch.measured().steps()).isEqualTo(ordered.watch.measured().steps());
    }

    private static HeatReading arriving(HeatReading r, long minute) {
        return new HeatReading(
                r.from(),
                minute * MINUTE,
                r.measuredMicros(),
                r.epochSecond(),
                r.centiCelsius(),
                r.centiPercent(),
                r.globeCentiCelsius(),
                r.windMmPerS(),
                r.solarWm2(),
                r.sky());
    }

    @ParameterizedTest
    @ValueSource(ints = {COOL, CAUTION, MORE_REST, HOLD, STOP})
    void a_sensor_killed_at_any_minute_makes_the_level_unknown_on_time(int air) {
        for (int killed = 0; killed < 120; killed++) {
            WatchedDay day = new WatchedDay();
            for (int minute = 0; minute <= killed; minute++) {
                day.read(minute, air + minute % 7);
            }
            int level = day.at(killed).level();
            // Twice 30, 15 or 10 minutes, by the heat design.
            long unknown = (killed + (level == 0 ? 60 : level < 3 ? 30 : 20)) * MINUTE;
            day.watch.passTime(unknown - 1);
            assertThat(day.watch.status(unknown - 1).level())
                    .as("killed %d", killed)
                    .isEqualTo(level);
            assertThat(day.watch.nextDeadlineMicros()).isEqualTo(unknown);
            day.watch.passTime(unknown);
            HeatChange last = day.watch.changes().get(day.watch.changes().size() - 1);
            assertThat(last.atMicros()).as("killed %d", killed).isEqualTo(unknown);
            assertThat(last.status().level()).isEqualTo(-1);
        }
    }
}
