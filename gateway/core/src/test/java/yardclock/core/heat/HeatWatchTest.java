package yardclock.core.heat;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/**
 * Levels over time. At 40 % humidity the index of 26 °C is 79.0 °F, of 28 °C 82.9, of 33 °C 94.9,
 * of 37 °C 107.7 and of 43 °C 133.7 (computed with the function under {@link HeatIndexTest}).
 */
class HeatWatchTest {
    private static final long MINUTE = 60_000_000;
    private static final int COOL = 2_000;
    private static final int CAUTION = 2_800;
    private static final int MORE_REST = 3_300;
    private static final int HOLD = 3_700;
    private static final int STOP = 4_300;

    private final HeatWatch watch = new HeatWatch();

    @Test
    void without_a_reading_the_level_is_unknown() {
        assertLevel(0, -1, "unknown: no reading yet");
        assertThat(watch.newest()).isNull();
    }

    @Test
    void a_rise_shows_at_once_however_far() {
        read(0, COOL);
        assertLevel(0, 0, "normal");
        read(1, CAUTION);
        assertLevel(1, 1, "caution");
        read(2, STOP);
        assertLevel(2, 4, "stop");
    }

    @Test
    void each_bound_belongs_to_the_level_above() {
        read(0, MORE_REST);
        assertLevel(0, 2, "more rest");
        read(1, HOLD);
        assertLevel(1, 3, "hold new releases");
    }

    @Test
    void a_fall_takes_two_low_readings_over_twenty_minutes_and_one_level_at_a_time() {
        read(0, HOLD);
        read(5, COOL);
        assertLevel(5, 3, "hold new releases");
        read(24, COOL);
        assertLevel(24, 3, "hold new releases");
        read(25, COOL);
        assertLevel(25, 2, "more rest");
        read(26, COOL);
        assertLevel(26, 1, "caution");
        read(27, COOL);
        assertLevel(27, 0, "normal");
    }

    @Test
    void a_reading_just_under_the_bound_does_not_lower() {
        int under = 3_090; // less than 3 °F under the bound of 90 °F
        read(0, MORE_REST);
        read(5, under);
        read(30, under);
        assertThat(watch.newest().heatIndexDeci()).isBetween(871, 899);
        assertLevel(30, 2, "more rest");
    }

    @Test
    void one_high_reading_begins_the_twenty_minutes_anew() {
        read(0, MORE_REST);
        read(5, COOL);
        read(20, MORE_REST);
        read(26, COOL);
        assertLevel(26, 2, "more rest");
        read(46, COOL);
        assertLevel(46, 1, "caution");
    }

    @Test
    void a_reading_twice_past_its_due_time_makes_the_level_unknown() {
        read(0, COOL);
        assertLevel(60, 0, "normal");
        assertThat(watch.level(60 * MINUTE + 1)).isEqualTo(-1);
        assertThat(watch.word(60 * MINUTE + 1)).isEqualTo("unknown (was normal)");
        read(61, CAUTION);
        assertThat(watch.level(91 * MINUTE)).isEqualTo(1);
        assertThat(watch.level(91 * MINUTE + 1)).isEqualTo(-1);
        read(92, HOLD);
        assertThat(watch.level(112 * MINUTE)).isEqualTo(3);
        assertThat(watch.word(112 * MINUTE + 1)).isEqualTo("unknown (was hold new releases)");
    }

    @Test
    void nothing_is_read_into_a_gap() {
        read(0, MORE_REST);
        read(5, COOL);
        // Silent for an hour. One low reading after it says nothing about the hour.
        read(65, COOL);
        assertLevel(65, 2, "more rest");
        read(75, COOL);
        assertLevel(75, 2, "more rest");
        read(85, COOL);
        assertLevel(85, 1, "caution");
    }

    @Test
    void impossible_readings_are_refused_and_change_nothing() {
        read(0, CAUTION);
        String before = watch.toString();
        assertThat(watch.accept(MINUTE, -4_001, 4_000)).isFalse();
        assertThat(watch.accept(MINUTE, 6_001, 4_000)).isFalse();
        assertThat(watch.accept(MINUTE, 2_000, 99)).isFalse();
        assertThat(watch.accept(MINUTE, 2_000, 10_001)).isFalse();
        assertThat(watch.toString()).isEqualTo(before);
        assertThat(watch.accept(MINUTE, -4_000, 100)).isTrue();
        assertThat(watch.accept(MINUTE, 6_000, 10_000)).isTrue();
    }

    private void read(long minute, int centiCelsius) {
        assertThat(watch.accept(minute * MINUTE, centiCelsius, 4_000)).isTrue();
    }

    private void assertLevel(long minute, int level, String word) {
        assertThat(watch.level(minute * MINUTE)).isEqualTo(level);
        assertThat(watch.word(minute * MINUTE)).isEqualTo(word);
    }
}
