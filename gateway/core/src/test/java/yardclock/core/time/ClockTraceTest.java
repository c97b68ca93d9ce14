package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Random;

/** The clock's picture: legs on their own sides of the line, limits around it, steadiness. */
class ClockTraceTest {
    private static final long SECOND = 1_000_000;
    private static final long SEED = 31;
    private final ExchangeClock clock = new ExchangeClock();
    private final Random random = new Random(SEED);
    private long newestMicros;

    @Test
    void a_clock_never_compared_gives_an_empty_picture() {
        assertThat(clock.trace(new GatewayTime(SECOND))).isEqualTo(ClockTrace.empty());
    }

    @Test
    void one_exchange_already_has_its_limits() {
        exchanges(1, 0);
        ClockTrace trace = trace(0);
        assertThat(trace.exchanges()).containsExactly(new ClockTrace.Residual(0, -2_000, 2_000));
        assertThat(trace.envelope()).isNotEmpty();
        assertThat(trace.steadiness()).isEmpty();
    }

    @Test
    void each_leg_lies_on_its_side_and_the_envelope_between_the_closest_of_both() {
        exchanges(60, 20_000);
        ClockTrace trace = trace(2 * SECOND);
        assertThat(trace.exchanges()).as("seed %d", SEED).hasSize(60);
        assertThat(trace.exchanges())
                .isSortedAccordingTo((a, b) -> Long.compare(b.ageMicros(), a.ageMicros()));
        assertThat(trace.exchanges()).allMatch(x -> x.downMicros() < 0 && x.upMicros() > 0);
        assertThat(trace.envelope()).hasSize(25);
        assertThat(trace.envelope())
                .allMatch(limit -> limit.lowerMicros() < 0 && limit.upperMicros() > 0);
        long closest =
                trace.exchanges().stream().mapToLong(ClockTrace.Residual::upMicros).min().orElse(0);
        assertThat(trace.envelope().get(12).upperMicros()).isLessThan(closest + 1_000);
    }

    @Test
    void the_limits_open_towards_now_when_no_exchange_came_for_long() {
        exchanges(40, 5_000);
        List<ClockTrace.Limits> soon = trace(SECOND).envelope();
        List<ClockTrace.Limits> late = trace(200 * SECOND).envelope();
        assertThat(width(late.get(24))).isGreaterThan(width(soon.get(24)) + 10_000);
        assertThat(late.get(24).ageMicros()).isZero();
    }

    @Test
    void what_is_shown_is_bounded_however_often_the_unit_answered() {
        for (int i = 0; i < 1_000; i++) {
            exchange(100 * SECOND + i * SECOND / 10, 3_000);
        }
        assertThat(trace(0).exchanges()).hasSize(ClockTracer.EXCHANGES_MAX);
    }

    @Test
    void the_networks_noise_falls_with_the_span() {
        exchanges(400, 4_000);
        List<ClockTrace.Steadiness> steadiness = trace(0).steadiness();
        assertThat(steadiness)
                .extracting(ClockTrace.Steadiness::spanMicros)
                .containsExactly(
                        30 * SECOND, 60 * SECOND, 120 * SECOND, 240 * SECOND, 480 * SECOND);
        assertThat(steadiness)
                .as("seed %d", SEED)
                .isSortedAccordingTo(
                        (a, b) -> Long.compare(b.partsPerBillion(), a.partsPerBillion()));
    }

    @Test
    void an_outage_begins_the_steadiness_anew() {
        exchanges(60, 4_000);
        assertThat(trace(0).steadiness()).hasSize(2);
        newestMicros += 600 * SECOND;
        exchanges(30, 4_000);
        assertThat(trace(0).steadiness()).hasSize(1);
    }

    private static long width(ClockTrace.Limits limits) {
        return limits.upperMicros() - limits.lowerMicros();
    }

    private ClockTrace trace(long laterMicros) {
        return clock.trace(new GatewayTime(newestMicros + laterMicros));
    }

    private void exchanges(int count, int waitMicros) {
        for (int i = 0; i < count; i++) {
            exchange(Math.max(newestMicros, 100 * SECOND) + 5 * SECOND, waitMicros);
        }
    }

    /** The unit runs 20 ppm fast and 90 s behind; each leg takes 2 ms and up to the wait more. */
    private void exchange(long sent, int waitMicros) {
        long there = sent + 2_000 + random.nextInt(waitMicros + 1);
        long tick = there - 90 * SECOND + there / 50_000;
        newestMicros = there + 2_000 + random.nextInt(waitMicros + 1);
        assertThat(clock.accept(new Exchange(sent, tick, tick, newestMicros))).isTrue();
    }
}
