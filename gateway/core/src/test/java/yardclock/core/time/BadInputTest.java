package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;

import static yardclock.core.time.TestLink.SECOND;
import static yardclock.core.time.TestLink.jumping;
import static yardclock.core.time.TestLink.steady;

import org.junit.jupiter.api.Test;

import java.util.Optional;
import java.util.function.LongUnaryOperator;

/**
 * What a broken or confused unit may send: every stamp that comes of it has limits that hold, and
 * where none can be given there is none.
 */
class BadInputTest {
    private static final int SEEDS = 100;
    private static final int FEW_SEEDS = 30;
    private static final long HOUR = 3_600 * SECOND;
    private static final long JUMP_AT = 1_000 * SECOND;

    private final ExchangeClock clock = new ExchangeClock();

    @Test
    void a_jump_without_a_reboot_leaves_no_false_limit_on_either_side() {
        for (long seed = 0; seed < SEEDS; seed++) {
            jumpBy(seed, seed % 2 == 0 ? 20_000 : -20_000, 95);
        }
    }

    @Test
    void a_counter_set_back_by_a_minute_leaves_no_false_limit() {
        for (long seed = 0; seed < FEW_SEEDS; seed++) {
            jumpBy(seed, -60 * SECOND, 90);
        }
    }

    @Test
    void a_counter_begun_again_under_its_old_boot_leaves_no_false_limit() {
        for (long seed = 0; seed < FEW_SEEDS; seed++) {
            jumpBy(seed, -JUMP_AT + 1, 90);
        }
    }

    private static void jumpBy(long seed, long byMicros, int percentStampedMin) {
        ExchangeClock clock = new ExchangeClock();
        LongUnaryOperator counter = jumping(steady((double) (seed % 60 - 30)), JUMP_AT, byMicros);
        TestLink link = new TestLink(seed, counter);
        link.exchange(clock, SECOND, 2_000 * SECOND);
        String why = "seed " + seed + ", jump " + byMicros;
        assertThat(clock.status(new GatewayTime(HOUR)).faults()).as(why).isEqualTo(1);
        int stamped = link.checkAll(why, clock, SECOND, 2_000 * SECOND);
        assertThat(stamped * 100 / 2_856).as(why).isGreaterThanOrEqualTo(percentStampedMin);
    }

    /** No crystal is this far off: from memory, four times what a data sheet allows. */
    @Test
    void a_clock_200_ppm_off_is_covered() {
        for (long seed = 0; seed < FEW_SEEDS; seed++) {
            ExchangeClock fast = new ExchangeClock();
            TestLink link = new TestLink(seed, steady(seed % 2 == 0 ? 200 : -200));
            long until = (20 + seed * 10) * SECOND;
            link.exchange(fast, SECOND, until);
            assertThat(link.checkAll("seed " + seed, fast, SECOND, until + 60 * SECOND))
                    .isPositive();
            assertThat(fast.status(new GatewayTime(until)).faults()).isZero();
        }
    }

    @Test
    void edges_long_before_the_first_exchange_have_wide_limits_that_hold() {
        TestLink link = new TestLink(6, steady(-40));
        assertThat(link.checkAll("none yet", clock, SECOND, 900 * SECOND)).isZero();
        link.exchange(clock, 900 * SECOND, 902 * SECOND);
        assertThat(link.checkAll("one", clock, SECOND, 900 * SECOND)).isPositive();
        link.exchange(clock, 905 * SECOND, 1_200 * SECOND);
        assertThat(link.checkAll("many", clock, SECOND, 1_200 * SECOND)).isEqualTo(1_713);
    }

    @Test
    void the_same_answer_come_twice_counts_once() {
        TestLink link = new TestLink(1, steady(10));
        Exchange answer = link.exchangeAt(5 * SECOND);
        Exchange again =
                new Exchange(
                        answer.gatewaySentMicros(),
                        answer.unitReceivedTick(),
                        answer.unitSentTick(),
                        answer.gatewayReceivedMicros() + 800);
        assertThat(clock.accept(answer)).isTrue();
        Optional<Stamp> before = link.stamp(clock, 6 * SECOND);
        assertThat(clock.accept(answer)).isFalse();
        assertThat(clock.accept(again)).isFalse();
        assertThat(link.stamp(clock, 6 * SECOND).map(Stamp::lowerMicros))
                .isEqualTo(before.map(Stamp::lowerMicros));
        assertThat(clock.status(new GatewayTime(HOUR)).exchanges()).isEqualTo(1);
        assertThat(clock.status(new GatewayTime(HOUR)).impossible()).isZero();
    }

    @Test
    void a_stopped_counter_gives_no_false_limit() {
        TestLink link = new TestLink(3, micros -> Math.min(micros, 500 * SECOND));
        link.exchange(clock, SECOND, 600 * SECOND);
        link.checkAll("stopped", clock, SECOND, 499 * SECOND);
        Optional<Stamp> stuck =
                clock.at(new StationTick(500 * SECOND), new GatewayTime(600 * SECOND));
        assertThat(stuck.map(s -> s.lowerMicros() <= 500 * SECOND)).isIn(yes(), Optional.empty());
        assertThat(clock.status(new GatewayTime(HOUR)).faults()).isPositive();
    }

    private static Optional<Boolean> yes() {
        return Optional.of(true);
    }

    @Test
    void what_segments_no_longer_kept_held_has_no_bound() {
        LongUnaryOperator counter = steady(5);
        for (int jump = 1; jump <= 20; jump++) {
            counter = jumping(counter, jump * 100L * SECOND, 1_000_000);
        }
        TestLink link = new TestLink(7, counter);
        link.exchange(clock, SECOND, 2_100 * SECOND);
        assertThat(clock.status(new GatewayTime(HOUR)).faults()).isEqualTo(20);
        assertThat(link.stamp(clock, 50 * SECOND)).isEmpty();
        link.checkAll("many jumps", clock, SECOND, 2_100 * SECOND);
    }

    @Test
    void a_jump_with_a_new_boot_id_loses_nothing() {
        ExchangeClock before = new ExchangeClock();
        ExchangeClock after = new ExchangeClock();
        TestLink first = new TestLink(4, steady(30));
        TestLink second = new TestLink(5, micros -> micros - JUMP_AT - 20_000);
        first.exchange(before, SECOND, JUMP_AT);
        second.exchange(after, JUMP_AT + SECOND, 2 * JUMP_AT);
        assertThat(first.checkAll("before", before, SECOND, JUMP_AT)).isEqualTo(1_428);
        assertThat(second.checkAll("after", after, JUMP_AT, 2 * JUMP_AT)).isEqualTo(1_429);
    }

    @Test
    void half_a_day_with_jumps_stays_within_its_memory() {
        LongUnaryOperator counter = steady(-20);
        for (int jump = 1; jump <= 11; jump++) {
            counter = jumping(counter, jump * HOUR, 50_000);
        }
        TestLink link = new TestLink(8, counter);
        link.exchange(clock, SECOND, 12 * HOUR);
        assertThat(clock.segments()).isEqualTo(ExchangeClock.SEGMENTS_KEPT);
        assertThat(clock.exchangesKept())
                .isLessThanOrEqualTo(ExchangeClock.SEGMENTS_KEPT * ExchangeHistory.KEPT);
    }
}
