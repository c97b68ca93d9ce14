package yardclock.core.reading;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.time.Stamp;

/** Mean and deviation of a tap: Am. J. Phys. 87(2) 110, 2019. */
class LagTest {
    private static final Stamp PASSAGE = Stamp.exactly(10_000_000);

    @Test
    void the_usual_lag_weighs_most_and_both_sides_alike() {
        assertThat(weight(110_000)).isEqualTo(Weight.CERTAIN);
        assertThat(weight(180_000)).isEqualTo(weight(40_000)).isLessThan(weight(111_000));
        // One deviation is exp(−1/2) on the normal curve.
        assertThat(weight(180_000).milliNats()).isEqualTo(-500);
    }

    @Test
    void no_lag_weighs_less_than_the_least() {
        for (long lag = -600_000_000; lag <= 600_000_000; lag += 7_919) {
            assertThat(weight(lag).milliNats()).isBetween(Weight.LEAST, 0);
        }
    }

    @Test
    void a_proctors_own_crossing_beside_the_candidates_is_outside_the_window() {
        // Crossings lie 0.4 s or more away; a tap for the candidate comes 0.11 s late.
        assertThat(Lag.points(tap(110_000), PASSAGE)).isTrue();
        assertThat(Lag.points(tap(110_000 - 400_000), PASSAGE)).isFalse();
        assertThat(Lag.points(tap(110_000 + 400_000), PASSAGE)).isFalse();
    }

    @Test
    void weights_of_independent_things_add() {
        Weight both = Weight.EDGE_MISSED.plus(Weight.CLOSE_CROSSING);
        assertThat(both).isLessThan(Weight.EDGE_MISSED).isLessThan(Weight.CLOSE_CROSSING);
        assertThat(both.milliNats()).isEqualTo(-4_605 - 1_897);
    }

    private static Weight weight(long lagMicros) {
        return Lag.weight(tap(lagMicros), PASSAGE);
    }

    private static Stamp tap(long lagMicros) {
        return Stamp.exactly(PASSAGE.micros() + lagMicros);
    }
}
