package yardclock.core.heat.watch;

import static org.assertj.core.api.Assertions.assertThat;

import static yardclock.core.heat.watch.WatchedDay.CAUTION;
import static yardclock.core.heat.watch.WatchedDay.COOL;
import static yardclock.core.heat.watch.WatchedDay.HOLD;
import static yardclock.core.heat.watch.WatchedDay.MORE_REST;
import static yardclock.core.heat.watch.WatchedDay.STOP;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import yardclock.core.course.HeatRules;
import yardclock.core.heat.HeatReading;
import yardclock.core.heat.ReadingLevel;
import yardclock.core.heat.watch.HeatStatus.Freshness;

import java.util.Arrays;

/** Levels over time: rise, fall, staleness. Its times and margins are the heat design's. */
class HeatWatchTest {
    private static final long MINUTE = WatchedDay.MINUTE;

    private final WatchedDay day = new WatchedDay();

    @Test
    void without_a_reading_the_level_is_unknown_and_acted_on_as_caution() {
        HeatStatus status = day.at(0);
        assertThat(status.level()).isEqualTo(-1);
        assertThat(status.floor()).isEqualTo(1);
        assertThat(status.freshness()).isEqualTo(Freshness.NONE);
        assertThat(day.watch.newest()).isNull();
        assertThat(day.shown()).containsExactly("0: unknown, was -1 NONE");
    }

    @Test
    void a_rise_shows_at_once_however_far() {
        day.read(0, COOL);
        assertLevel(0, 0);
        day.read(1, CAUTION);
        assertLevel(1, 1);
        day.read(2, STOP);
        assertLevel(2, 4);
    }

    @Test
    void each_bound_belongs_to_the_level_above() {
        day.read(0, MORE_REST);
        assertLevel(0, 2);
        day.read(1, HOLD);
        assertLevel(1, 3);
    }

    @Test
    void the_level_goes_by_the_value_and_what_the_instruments_may_be_off() {
        // 78.96 °F, and 79.6 at the worst corner of ±0.2 °C and ±2 %: under 80 either way.
        day.read(0, 2_600);
        assertLevel(0, 0);
        // 26.65 °C: by itself 79.7 °F, and over 80 within its tolerance.
        day.read(1, 2_665);
        assertThat(day.watch.figures().indexDeciF()).isLessThan(800);
        assertThat(day.watch.figures().indexHighDeciF()).isGreaterThanOrEqualTo(800);
        assertLevel(1, 1);
    }

    @Test
    void a_fall_takes_two_low_readings_over_twenty_minutes_and_one_level_at_a_time() {
        day.read(0, HOLD).read(5, COOL);
        assertLevel(5, 3);
        day.read(24, COOL);
        assertLevel(24, 3);
        day.read(25, COOL);
        assertLevel(25, 2);
        day.read(26, COOL);
        assertLevel(26, 1);
        day.read(27, COOL);
        assertLevel(27, 0);
    }

    @Test
    void a_reading_just_under_the_bound_does_not_lower() {
        int under = 3_090; // less than 3 °F under the bound of 90 °F
        day.read(0, MORE_REST).read(5, under).read(30, under);
        assertThat(day.watch.figures().indexDeciF()).isBetween(871, 899);
        assertLevel(30, 2);
    }

    @Test
    void one_high_reading_begins_the_twenty_minutes_anew() {
        day.read(0, MORE_REST).read(5, COOL).read(20, MORE_REST).read(26, COOL);
        assertLevel(26, 2);
        day.read(46, COOL);
        assertLevel(46, 1);
    }

    @Test
    void a_reading_twice_past_its_due_time_makes_the_level_unknown() {
        day.read(0, MORE_REST);
        assertThat(day.at(15).freshness()).isEqualTo(Freshness.AGEING);
        assertThat(day.watch.status(15 * MINUTE - 1).freshness()).isEqualTo(Freshness.FRESH);
        assertThat(day.watch.status(30 * MINUTE - 1).level()).isEqualTo(2);
        assertThat(day.at(30).level()).isEqualTo(-1);
        assertThat(day.at(30).was()).isEqualTo(2);
        assertThat(day.at(30).floor()).isEqualTo(2);
        assertThat(day.at(59).freshness()).isEqualTo(Freshness.UNKNOWN);
        assertThat(day.at(60).freshness()).isEqualTo(Freshness.SILENT);
    }

    @ParameterizedTest
    @CsvSource({"2000, 30, 60", "2800, 15, 30", "3300, 15, 30", "3700, 10, 20", "4300, 10, 20"})
    void each_level_has_its_own_time(int centiCelsius, int dueMinutes, int unknownMinutes) {
        // Heat design: due every 30 min at level 0, 15 at 1 and 2, 10 at 3; at 4 every 10.
        day.read(0, centiCelsius);
        int level = day.at(0).level();
        assertThat(day.watch.status(dueMinutes * MINUTE - 1).freshness())
                .isEqualTo(Freshness.FRESH);
        assertThat(day.at(dueMinutes).freshness()).isEqualTo(Freshness.AGEING);
        assertThat(day.watch.status(unknownMinutes * MINUTE - 1).level()).isEqualTo(level);
        assertThat(day.at(unknownMinutes).level()).isEqualTo(-1);
    }

    @Test
    void the_shown_history_is_the_same_however_seldom_time_is_told() {
        WatchedDay other = new WatchedDay();
        day.read(0, HOLD);
        other.read(0, HOLD);
        for (int minute = 0; minute <= 90; minute++) {
            other.pass(minute);
        }
        day.pass(90);
        assertThat(day.shown())
                .isEqualTo(other.shown())
                .containsExactly(
                        "0: unknown, was -1 NONE",
                        "0: 3 FRESH TO_BE_CONFIRMED",
                        "5: 3 FRESH HAND_READING_ASKED",
                        "10: 3 AGEING HAND_READING_ASKED",
                        "20: unknown, was 3 UNKNOWN HAND_READING_ASKED",
                        "60: unknown, was 3 SILENT HAND_READING_ASKED");
    }

    @Test
    void nothing_is_read_into_a_gap() {
        day.read(0, MORE_REST).read(5, COOL);
        // Silent for an hour. One low reading after it says nothing about the hour.
        day.read(65, COOL);
        assertLevel(65, 2);
        day.read(75, COOL);
        assertLevel(75, 2);
        day.read(85, COOL);
        assertLevel(85, 1);
    }

    @Test
    void what_is_known_when_gateway_time_breaks_off_is_known_no_more() {
        day.read(0, MORE_REST).read(5, COOL).read(20, COOL);
        day.watch.flash(21 * MINUTE);
        day.watch.interrupt(22 * MINUTE);
        assertThat(day.at(22).freshness()).isEqualTo(Freshness.UNKNOWN);
        assertThat(day.watch.status(52 * MINUTE - 1).isLightning()).isTrue();
        assertThat(day.at(52).isLightning()).isFalse();
        day.read(26, COOL);
        assertThat(day.at(26).was()).isEqualTo(2);
    }

    @Test
    void impossible_readings_are_refused_and_change_nothing() {
        day.read(0, CAUTION);
        String before = day.watch.toString();
        for (int[] air :
                new int[][] {{-4_001, 4_000}, {6_001, 4_000}, {2_000, 99}, {2_000, 10_001}}) {
            assertThat(day.watch.take(WatchedDay.reading("yard", 1, 1, air[0], air[1]))).hasSize(1);
        }
        assertThat(day.watch.toString()).isEqualTo(before);
        day.read(1, -4_000, 100);
        day.read(2, 6_000, 10_000);
    }

    @Test
    void a_globe_colder_than_the_air_by_more_than_three_degrees_is_refused() {
        assertThat(day.watch.take(globe(2_500, 2_199))).hasSize(1);
        assertThat(day.watch.take(globe(2_500, 2_200))).isEmpty();
    }

    private static HeatReading globe(int centiCelsius, int globeCentiCelsius) {
        HeatReading.From from = HeatReading.From.sensor("yard");
        return new HeatReading(
                from, 0, 0, 0, centiCelsius, 4_000, globeCentiCelsius, null, null, null);
    }

    @Test
    void a_gust_holds_where_people_climb_until_a_weaker_one_is_read() {
        day.read(0, COOL);
        // 20 mph is 8.94 m/s (heat design).
        day.watch.gust(8_940, MINUTE);
        assertLevel(1, 0);
        day.watch.gust(8_941, 2 * MINUTE);
        assertLevel(2, 2);
        day.watch.gust(40_000, 3 * MINUTE);
        assertLevel(3, 2); // The plate's limit is not set: nothing follows from it.
        day.watch.gust(3_000, 4 * MINUTE);
        assertLevel(4, 0);
    }

    @Test
    void what_turnout_gear_adds_never_lowers_a_level_nor_does_harder_work() {
        // The level at a WBGT of 21.7 °C or so in the shade, by what is added to it.
        int before = -1;
        for (Integer added : Arrays.asList(null, 0, 200, 500, 900, 1_200)) {
            WatchedDay inGear = new WatchedDay(withTurnout(added)).read(0, CAUTION);
            assertThat(inGear.at(0).level()).as("+%s", added).isGreaterThanOrEqualTo(before);
            before = inGear.at(0).level();
        }
        assertThat(before).isEqualTo(4);
        HeatReading warm = WatchedDay.reading("yard", 0, 0, 2_900, 5_000);
        int level = 0;
        for (int watts = 115; watts <= 700; watts += 5) {
            int harder = ReadingLevel.of(warm, HeatRules.DEFAULTS, watts).level();
            assertThat(harder).as("%d W", watts).isGreaterThanOrEqualTo(level);
            level = harder;
        }
        assertThat(level).isEqualTo(2);
    }

    private static HeatRules withTurnout(Integer centiC) {
        HeatRules rules = HeatRules.DEFAULTS;
        return new HeatRules(
                "test-1",
                "",
                rules.scheme(),
                rules.indexDeciF(),
                rules.wbgtCentiC(),
                rules.chillDeciF(),
                rules.climbGustMmPerS(),
                10_000,
                centiC,
                null);
    }

    @Test
    void a_gust_over_the_plates_limit_is_stop_also_while_the_heat_is_unknown() {
        HeatWatch watch = new HeatWatch(withTurnout(null), WatchedDay.WORK_W, 0);
        watch.gust(10_000, MINUTE);
        assertThat(watch.status(MINUTE).level()).isEqualTo(-1);
        watch.gust(10_001, 2 * MINUTE);
        assertThat(watch.status(2 * MINUTE).level()).isEqualTo(4);
        assertThat(watch.changes().get(watch.changes().size() - 1).boundsVersion())
                .isEqualTo("test-1");
    }

    @Test
    void what_somebody_has_seen_is_seen_until_it_changes() {
        day.read(0, CAUTION);
        day.watch.acknowledge("Marlow", MINUTE);
        assertThat(day.watch.isAcknowledged()).isTrue();
        day.read(2, CAUTION + 5);
        assertThat(day.watch.isAcknowledged()).isTrue();
        day.read(3, MORE_REST);
        assertThat(day.watch.isAcknowledged()).isFalse();
        assertThat(day.watch.acknowledgements())
                .containsExactly(new HeatChange.Acknowledgement(2, "Marlow", MINUTE));
    }

    private void assertLevel(long minute, int level) {
        assertThat(day.at(minute).level()).isEqualTo(level);
    }
}
