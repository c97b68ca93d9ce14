package yardclock.sim.clockbench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.List;

/** A counter that jumps by 20 ms without a reboot must be found out soon. */
class JumpFiguresTest {
    private static final int SEEDS = 120;

    @Test
    void a_jump_on_a_bursty_link_is_found_within_six_answers() {
        JumpFigures figures = after(Weather.BURSTY, SEEDS);
        assertThat(figures.foundWithin(6)).isEqualTo(SEEDS);
        assertThat(figures.medianSeconds()).isLessThanOrEqualTo(5);
        assertThat(figures.mistaken()).isZero();
        assertThat(figures.finalUncovered()).isZero();
    }

    /** It may take longer there; a stamp that is final must be true all the same. */
    @Test
    void no_final_stamp_is_false_for_a_jump_on_a_worse_link() {
        for (Weather weather : List.of(Weather.POWER_SAVE, Weather.HOSTILE)) {
            JumpFigures figures = after(weather, SEEDS / 2);
            assertThat(figures.unseen()).as(weather.name()).isZero();
            assertThat(figures.mistaken()).as(weather.name()).isZero();
            assertThat(figures.finalUncovered()).as(weather.name()).isZero();
        }
    }

    private static JumpFigures after(Weather weather, int hours) {
        JumpFigures figures = new JumpFigures(weather, 0.02);
        for (long seed = 1; seed <= hours; seed++) {
            figures.take(seed);
        }
        return figures;
    }
}
