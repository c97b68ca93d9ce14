package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.Optional;
import java.util.Random;

/** A correction moves an estimate and nothing else; and it counts for its own time and boot. */
class CorrectionTest {
    private static final Correction EARLY = new Correction(-1_500, 1_200, 8_000);
    private static final Correction LATE = new Correction(700, 1_000, 8_000);

    @Test
    void limits_stay_and_the_estimate_stays_within_them_whatever_the_seed() {
        for (long seed = 1; seed <= 10_000; seed++) {
            Random random = new Random(seed);
            long at = random.nextInt(1_000_000);
            Stamp stamp = new Stamp(at, at - random.nextInt(20_000), at + random.nextInt(20_000));
            Correction correction =
                    Correction.of(
                            random.nextInt(60_000) - 30_000L,
                            random.nextInt(2_000),
                            random.nextInt(30_000));
            Stamp applied = correction.applied(stamp);
            assertThat(applied.lowerMicros()).as("seed %d", seed).isEqualTo(stamp.lowerMicros());
            assertThat(applied.upperMicros()).as("seed %d", seed).isEqualTo(stamp.upperMicros());
            Stamp declared = correction.declared(applied);
            assertThat(declared.micros()).as("seed %d", seed).isEqualTo(applied.micros());
            assertThat(declared.lowerMicros())
                    .as("seed %d", seed)
                    .isGreaterThanOrEqualTo(stamp.lowerMicros());
            assertThat(declared.upperMicros())
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(stamp.upperMicros());
        }
    }

    @Test
    void an_estimate_that_may_go_goes_all_the_way() {
        Stamp stamp = new Stamp(100_000, 95_000, 104_000);
        assertThat(EARLY.applied(stamp).micros()).isEqualTo(98_500);
        assertThat(new Correction(9_000, 1, 1).applied(stamp).micros()).isEqualTo(104_000);
    }

    @Test
    void a_declared_interval_grows_with_a_guaranteed_one_that_is_wider_than_usual() {
        assertThat(EARLY.declared(new Stamp(100_000, 96_000, 104_000)).widthMicros())
                .isEqualTo(2_400);
        assertThat(EARLY.declared(new Stamp(100_000, 92_000, 108_000)).widthMicros())
                .isEqualTo(4_800);
    }

    @Test
    void it_counts_for_its_boot_from_its_beginning_to_its_end() {
        Corrections corrections = new Corrections();
        corrections.set(Optional.of(EARLY), "b1", 1_000);
        corrections.set(Optional.empty(), "b2", 5_000);
        assertThat(corrections.of("b1", 999)).isEmpty();
        assertThat(corrections.of("b1", 1_000)).contains(EARLY);
        assertThat(corrections.of("b2", 2_000)).isEmpty();
        assertThat(corrections.of("b1", 4_999)).contains(EARLY);
        assertThat(corrections.of("b1", 5_000)).isEmpty();
        assertThat(corrections.current()).isEmpty();
    }

    @Test
    void a_newer_one_takes_over_where_it_begins() {
        Corrections corrections = new Corrections();
        corrections.set(Optional.of(EARLY), "b1", 1_000);
        corrections.set(Optional.of(EARLY), "b1", 2_000);
        corrections.set(Optional.of(LATE), "b1", 3_000);
        assertThat(corrections.of("b1", 2_999)).contains(EARLY);
        assertThat(corrections.of("b1", 3_000)).contains(LATE);
        assertThat(corrections.current()).contains(LATE);
        String before = corrections.toString();
        corrections.set(Optional.of(LATE), "b1", 9_000);
        assertThat(corrections).hasToString(before);
    }
}
