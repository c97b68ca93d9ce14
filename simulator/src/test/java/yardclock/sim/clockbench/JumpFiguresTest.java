package yardclock.sim.clockbench;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

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

    /**
     * Where the link is worse it may take longer; a stamp that is final must be true all the same.
     */
    @Test
    void no_final_stamp_of_a_hostile_hour_is_false_for_the_jump_in_it() {
        JumpFigures figures = after(Weather.HOSTILE, SEEDS / 2);
        assertThat(figures.unseen()).isZero();
        assertThat(figures.finalUncovered()).isZero();
    }

    private static JumpFigures after(Weather weather, int hours) {
        JumpFigures figures = new JumpFigures(weather, 0.02);
        for (long seed = 1; seed <= hours; seed++) {
            figures.take(seed);
        }
        return figures;
    }
}
