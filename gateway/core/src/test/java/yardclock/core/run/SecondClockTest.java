package yardclock.core.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Drawn taps: late by 0.11 s with a standard deviation of 0.07 s (Am. J. Phys. 87(2) 110, 2019).
 * The widths allowed are three standard errors of a median and of a scaled median distance of 88
 * draws, from memory.
 */
class SecondClockTest {
    private static final SecondClock.About LINE = new SecondClock.About("drag", "finish", "");
    private static final long SEED = 20_190_201;

    private static List<Long> taps(int count, long driftMicrosEach) {
        Random random = new Random(SEED);
        List<Long> taps = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            taps.add(Math.round(110_000 + 70_000 * random.nextGaussian()) + i * driftMicrosEach);
        }
        return taps;
    }

    @Test
    void taps_as_the_paper_has_them_give_its_lateness_and_spread_back() {
        SecondClock clock = SecondClock.of(LINE, taps(88, 0));
        assertThat(clock.count()).isEqualTo(88);
        assertThat(clock.biasMicros()).as("seed " + SEED).isCloseTo(110_000, within(28_000L));
        assertThat(clock.spreadMicros()).as("seed " + SEED).isCloseTo(70_000, within(27_000L));
        assertThat(clock.drifts()).isFalse();
    }

    @Test
    void a_trigger_that_comes_ever_later_shows() {
        SecondClock clock = SecondClock.of(LINE, taps(88, -4_000));
        assertThat(clock.drifts()).as("seed " + SEED).isTrue();
        assertThat(clock.newestMicros()).isLessThan(-100_000);
    }

    @Test
    void one_wild_tap_moves_neither_bias_nor_spread() {
        SecondClock clock = SecondClock.of(LINE, List.of(100L, 110L, 120L, 130L, 1_900_000L));
        assertThat(clock.biasMicros()).isEqualTo(120);
        assertThat(clock.spreadMicros()).isEqualTo(14);
        assertThat(clock.newestMicros()).isEqualTo(120);
    }
}
