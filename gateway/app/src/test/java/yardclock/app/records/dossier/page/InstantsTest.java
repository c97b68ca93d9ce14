package yardclock.app.records.dossier.page;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.app.records.dossier.Further.WallLine;

import java.time.ZoneId;
import java.util.List;

/** 2026-11-01T06:59:58Z is 1 793 516 398 s after 1970; Denver leaves summer time at 08:00Z. */
class InstantsTest {
    private static final long WALL = 1_793_516_398_000_000L;

    private static Instants denver(WallLine... walls) {
        return new Instants(List.of(walls), ZoneId.of("America/Denver"));
    }

    private static String plain(String text) {
        return text.replace('\u00A0', ' ');
    }

    @Test
    void a_time_of_day_stands_with_its_distance_from_utc_also_over_the_change_of_the_clocks() {
        Instants day = denver(new WallLine(1, 0, WALL, 1));
        assertThat(plain(day.at(1_500))).isEqualTo("00:59:58.002 UTC−06:00");
        long later = 2L * 3_600 * 1_000_000;
        assertThat(plain(day.at(later))).isEqualTo("01:59:58.000 UTC−07:00");
        assertThat(day.day(0)).isEqualTo("2026-11-01");
        assertThat(day.at(-1)).isEqualTo("–");
    }

    @Test
    void limits_are_rounded_outwards() {
        Instants day = denver(new WallLine(1, 0, WALL, 1));
        assertThat(day.between(1_999, 2_001)).isEqualTo("00:59:58.001 … 00:59:58.003");
    }

    @Test
    void after_the_wall_clock_was_set_later_instants_follow_it_and_earlier_ones_do_not() {
        Instants day =
                denver(
                        new WallLine(1, 0, WALL, 1),
                        new WallLine(9, 10_000_000, WALL + 3_610_000_000L, 1));
        assertThat(plain(day.at(9_000_000))).isEqualTo("01:00:07.000 UTC−06:00");
        assertThat(plain(day.at(11_000_000))).startsWith("01:00:09.000 UTC−07:00");
    }

    @Test
    void a_demonstrations_time_of_day_passes_more_slowly_than_its_own_time() {
        Instants day = denver(new WallLine(1, 0, WALL, 10));
        assertThat(plain(day.at(20_000_000))).isEqualTo("01:00:00.000 UTC−06:00");
    }
}
