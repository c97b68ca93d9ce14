package yardclock.app.records.paper;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Expected texts reckoned by hand from the microseconds beside them. */
class SpansTest {
    private static String plain(String text) {
        return text.replace('\u00A0', ' ');
    }

    @Test
    void a_duration_is_given_to_the_nearest_thousandth_in_minutes_and_seconds() {
        assertThat(plain(Spans.text(41_824_218))).isEqualTo("41.824 s");
        assertThat(plain(Spans.text(572_178_561))).isEqualTo("9 min 32.179 s");
        assertThat(plain(Spans.text(59_999_500))).isEqualTo("1 min 0.000 s");
        assertThat(plain(Spans.text(0))).isEqualTo("0.000 s");
        assertThat(Spans.text(-1)).isEqualTo("–");
    }

    @Test
    void limits_are_rounded_outwards_so_that_the_truth_still_lies_between() {
        assertThat(plain(Spans.between(41_467_999, 41_975_001))).isEqualTo("41.467 s … 41.976 s");
        assertThat(plain(Spans.between(41_467_000, 41_976_000))).isEqualTo("41.467 s … 41.976 s");
        assertThat(plain(Spans.between(-5, 59_999_001))).isEqualTo("0.000 s … 1 min 0.000 s");
    }
}
