package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** What repeated occurrences say of two clocks. */
class AgreementTest {
    private static final long SECOND = 1_000_000;

    @Test
    void median_and_spread_of_a_small_set_by_hand() {
        // From memory: 2.1, 2.6, 2.4, 2.5, 2.3, 2.1, 2.3, 2.6, 8.2, 8.3 is the set with which
        // Iglewicz and Hoaglin show modified z-scores: 8.2 and 8.3 are outliers. By hand: median
        // 2.45 and MAD 0.15 of all; median 2.35 and MAD 0.20 of the eight that are kept.
        long[] tenths = {21, 26, 24, 25, 23, 21, 23, 26, 82, 83};
        List<Coincidence> pairs = new ArrayList<>();
        for (int i = 0; i < tenths.length; i++) {
            pairs.add(pair(i * SECOND, tenths[i] * 1_000, 100_000));
        }
        Agreement says = Agreement.of(pairs, 0);
        assertThat(standings(says)).containsExactly("KKKKKKKKOO".split("")).hasSize(10);
        assertThat(says.medianMicros()).isEqualTo(23_500);
        assertThat(says.spreadMicros()).isEqualTo(Math.round(1.4826 * 2_000));
        assertThat(says.uncertaintyMicros())
                .isEqualTo(Math.round(1.2533 * 1.4826 * 2_000 / Math.sqrt(8)));
    }

    @Test
    void twenty_pairs_are_enough_and_nineteen_are_not() {
        assertThat(objection(Agreement.of(pairs(19, 500, 100, 1), 0)))
                .contains(Agreement.Objection.TOO_FEW);
        assertThat(objection(Agreement.of(pairs(20, 500, 10, 1), 0))).isEmpty();
        assertThat(objection(Agreement.of(List.of(), 0))).contains(Agreement.Objection.TOO_FEW);
    }

    @Test
    void a_median_that_is_not_sure_enough_is_too_scattered() {
        Agreement says = Agreement.of(pairs(24, 500, 1_500, 7), 0);
        assertThat(says.uncertaintyMicros()).isGreaterThan(Agreement.UNCERTAINTY_MOST_MICROS);
        assertThat(objection(says)).contains(Agreement.Objection.TOO_SCATTERED);
    }

    @Test
    void when_over_a_quarter_is_rejected_the_rest_is_not_believed() {
        List<Coincidence> pairs = new ArrayList<>(pairs(24, 500, 50, 3));
        for (int i = 0; i < 9; i++) {
            pairs.add(pair((100 + i) * SECOND, 60_000, 20_000));
        }
        Agreement says = Agreement.of(pairs, 0);
        assertThat(says.kept()).isGreaterThanOrEqualTo(20);
        assertThat(objection(says)).contains(Agreement.Objection.TOO_SCATTERED);
    }

    @Test
    void intervals_that_exclude_each_other_were_two_occurrences() {
        List<Coincidence> pairs = new ArrayList<>(pairs(22, 300, 60, 5));
        pairs.add(pair(200 * SECOND, 40_000, 9_000));
        Agreement says = Agreement.of(pairs, 0);
        assertThat(says.pairs().get(22).standing()).isEqualTo(Agreement.Standing.IMPOSSIBLE);
        assertThat(objection(says)).isEmpty();
    }

    @Test
    void a_median_the_guaranteed_limits_do_not_allow_is_contradicted() {
        // The other clock is known to ± 0.2 ms, the reference to ± 7 ms: it is the worse one.
        List<Coincidence> pairs = new ArrayList<>();
        for (int i = 0; i < 24; i++) {
            long at = i * SECOND;
            pairs.add(new Coincidence(stamp(at, 7_000), stamp(at + 900 + i % 5, 200)));
        }
        assertThat(objection(Agreement.of(pairs, 0))).contains(Agreement.Objection.CONTRADICTED);
    }

    @Test
    void outliers_do_not_move_the_median_whatever_the_seed() {
        for (long seed = 1; seed <= 500; seed++) {
            Random random = new Random(seed);
            long truth = random.nextInt(3_000) - 1_500L;
            List<Coincidence> pairs = new ArrayList<>();
            for (int i = 0; i < 26; i++) {
                boolean wild = i % 9 == 4;
                long error = Math.round(random.nextGaussian() * 200);
                long off = wild ? 5_000 + random.nextInt(9_000) : error;
                pairs.add(pair(i * SECOND, truth + off, 20_000));
            }
            Agreement says = Agreement.of(pairs, 0);
            assertThat(objection(says)).as("seed %d", seed).isEmpty();
            assertThat(Math.abs(says.medianMicros() - truth))
                    .as("seed %d: %s", seed, says)
                    .isLessThan(250);
            assertThat(standings(says)).as("seed %d", seed).element(4).isEqualTo("O");
        }
    }

    @Test
    void a_median_that_the_stamps_at_arrival_do_not_bear_out_is_unsettled() {
        Agreement best = Agreement.of(pairs(24, 500, 50, 3), 0);
        assertThat(best.objection(Agreement.of(pairs(24, 1_050, 50, 4), 0))).isEmpty();
        assertThat(best.objection(Agreement.of(pairs(24, 1_200, 50, 4), 0)))
                .contains(Agreement.Objection.UNSETTLED);
    }

    private static Optional<Agreement.Objection> objection(Agreement says) {
        return says.objection(says);
    }

    private static List<String> standings(Agreement says) {
        return says.pairs().stream().map(p -> p.standing().name().substring(0, 1)).toList();
    }

    private static List<Coincidence> pairs(int n, long median, long sigma, long seed) {
        Random random = new Random(seed);
        List<Coincidence> pairs = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            long error = Math.round(random.nextGaussian() * sigma);
            pairs.add(pair(i * SECOND, median + error, 9_000));
        }
        return pairs;
    }

    private static Coincidence pair(long at, long difference, long half) {
        return new Coincidence(stamp(at, half), stamp(at + difference, half));
    }

    private static Stamp stamp(long at, long half) {
        return new Stamp(at, at - half, at + half);
    }
}
