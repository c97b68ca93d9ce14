package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.Arrays;
import java.util.List;

/** Which trips of two sensors were one occurrence. */
class TripsTest {
    @Test
    void each_trip_is_paired_with_the_nearest_within_the_window() {
        assertThat(differences(millis(1_000, 3_000, 5_000), millis(1_002, 2_997, 5_001)))
                .containsExactly(2_000L, -3_000L, 1_000L);
    }

    @Test
    void a_trip_without_a_partner_is_left_out() {
        assertThat(differences(millis(1_000, 3_000, 5_000), millis(1_001, 5_002)))
                .containsExactly(1_000L, 2_000L);
        assertThat(differences(millis(1_000), millis(1_201))).isEmpty();
        assertThat(differences(millis(1_000), millis(1_200))).containsExactly(200_000L);
        assertThat(differences(millis(), millis(1))).isEmpty();
    }

    @Test
    void of_a_chattering_contact_the_first_counts() {
        assertThat(differences(millis(1_000, 1_004, 1_300), millis(1_001, 1_003, 1_006)))
                .containsExactly(1_000L);
    }

    @Test
    void the_order_of_arrival_does_not_matter() {
        assertThat(differences(millis(5_000, 1_000), millis(1_002, 5_003)))
                .containsExactly(2_000L, 3_000L);
    }

    private static List<Long> differences(List<Stamp> reference, List<Stamp> other) {
        return Trips.pairs(reference, other).stream().map(Coincidence::differenceMicros).toList();
    }

    private static List<Stamp> millis(long... at) {
        return Arrays.stream(at)
                .mapToObj(m -> new Stamp(m * 1_000, m * 1_000 - 9_000, m * 1_000 + 9_000))
                .toList();
    }
}
