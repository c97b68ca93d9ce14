package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.Optional;
import java.util.Random;

/**
 * The clock of one boot by its exchanges: what it promises, and what it does when a unit breaks the
 * rules.
 */
class ExchangeClockTest {
    private static final long SECOND = 1_000_000;
    private static final int HISTORIES = 10_000;

    private final ExchangeClock clock = new ExchangeClock();

    @Test
    void without_an_exchange_there_is_no_bound() {
        assertThat(at(5 * SECOND, 6 * SECOND)).isEmpty();
        assertThat(clock.status(new GatewayTime(0)).boundWidthMicros()).isEqualTo(-1);
    }

    @Test
    void the_truth_lies_within_the_limits_of_every_history() {
        for (long seed = 0; seed < HISTORIES; seed++) {
            new History(seed).check();
        }
    }

    @Test
    void impossible_exchanges_are_refused_and_change_nothing() {
        clock.accept(new Exchange(100 * SECOND, 10 * SECOND, 10 * SECOND, 100 * SECOND + 20_000));
        Optional<Stamp> before = at(12 * SECOND, 200 * SECOND);
        long g = 110 * SECOND;
        long u = 20 * SECOND;
        assertThat(clock.accept(new Exchange(g, u, u, g - 1))).as("back before sent").isFalse();
        assertThat(clock.accept(new Exchange(g, u, u - 1, g + 9))).as("sent first").isFalse();
        assertThat(clock.accept(new Exchange(g, u, u + 50, g + 49))).as("negative trip").isFalse();
        assertThat(at(12 * SECOND, 200 * SECOND)).isEqualTo(before);
        assertThat(clock.status(new GatewayTime(g)).exchanges()).isEqualTo(1);
        assertThat(clock.status(new GatewayTime(g)).impossible()).isEqualTo(3);
    }

    @Test
    void an_answer_that_was_overtaken_is_refused_and_moves_nothing() {
        exchange(100, 0.004, 0.004);
        exchange(105, 0.004, 0.004);
        Optional<Stamp> before = at(20 * SECOND, 120 * SECOND);
        assertThat(clock.accept(exchangeAt(103, 0.001, 0.001, 0))).isFalse();
        assertThat(at(20 * SECOND, 120 * SECOND)).isEqualTo(before);
    }

    @Test
    void nothing_happens_later_than_we_learned_of_it() {
        exchange(100, 0.400, 0.001);
        Stamp stamp = at(10 * SECOND, 100 * SECOND + 5_000).orElseThrow();
        assertThat(stamp.upperMicros()).isLessThanOrEqualTo(100 * SECOND + 5_000);
        assertThat(stamp.micros()).isLessThanOrEqualTo(stamp.upperMicros());
    }

    @Test
    void a_jump_ends_the_segment_and_a_tick_beside_it_is_covered_on_both_sides() {
        for (int i = 0; i < 8; i++) {
            exchange(100 + 5 * i, 0.004, 0.004);
        }
        long jump = 20_000;
        clock.accept(exchangeAt(145, 0.004, 0.004, jump));
        assertThat(clock.status(new GatewayTime(146 * SECOND)).faults()).isEqualTo(1);
        Stamp between = at(52 * SECOND, 147 * SECOND).orElseThrow();
        assertThat(clock.isDoubtful(new StationTick(52 * SECOND))).isTrue();
        assertThat(between.lowerMicros()).isLessThan(142 * SECOND - jump);
        assertThat(between.upperMicros()).isGreaterThan(142 * SECOND);
        assertThat(clock.isDoubtful(new StationTick(30 * SECOND))).isFalse();
    }

    @Test
    void the_limits_alone_are_those_that_come_with_an_estimate() {
        for (int i = 0; i < 30; i++) {
            exchange(100 + 5 * i, 0.003 + 0.001 * (i % 5), 0.002 + 0.003 * (i % 3));
            GatewayTime now = new GatewayTime((101 + 5 * i) * SECOND);
            ClockStatus whole = clock.status(now);
            ClockStatus limits = clock.limits(now);
            assertThat(limits.boundWidthMicros()).isEqualTo(whole.boundWidthMicros());
            assertThat(limits.rateLowPartsPerBillion()).isEqualTo(whole.rateLowPartsPerBillion());
            assertThat(limits.rateHighPartsPerBillion()).isEqualTo(whole.rateHighPartsPerBillion());
            StationTick tick = new StationTick((9 + 5 * i) * SECOND);
            Stamp at = clock.at(tick, now).orElseThrow();
            Stamp within = clock.within(tick, now).orElseThrow();
            assertThat(within.lowerMicros()).isEqualTo(at.lowerMicros());
            assertThat(within.upperMicros()).isEqualTo(at.upperMicros());
        }
    }

    @Test
    void a_tick_from_the_future_has_no_bound_and_spoils_nothing() {
        for (int i = 0; i < 6; i++) {
            exchange(100 + 5 * i, 0.004 + 0.002 * i, 0.004);
        }
        Stamp before = at(30 * SECOND, 130 * SECOND).orElseThrow();
        assertThat(at(3_600 * SECOND, 130 * SECOND)).isEmpty();
        assertThat(at(30 * SECOND, 130 * SECOND)).contains(before);
    }

    @Test
    void one_wild_answer_does_not_shut_out_all_that_follow() {
        exchange(100, 0.004, 0.004);
        long wild = 1_000_000 * SECOND;
        assertThat(clock.accept(new Exchange(105 * SECOND, wild, wild, 105 * SECOND + 9))).isTrue();
        int refused = 0;
        while (!clock.accept(exchangeAt(110 + refused, 0.004, 0.004, 0))) {
            refused++;
        }
        assertThat(refused).isLessThan(5);
        assertThat(at(30 * SECOND, 130 * SECOND).orElseThrow().micros()).isEqualTo(120 * SECOND);
    }

    @Test
    void a_wild_answer_before_all_others_is_forgotten_once_they_overrule_it() {
        long wild = 1_000_000 * SECOND;
        clock.accept(new Exchange(95 * SECOND, wild, wild, 95 * SECOND + 9));
        for (int i = 0; i < 8; i++) {
            clock.accept(exchangeAt(100 + 5 * i, 0.004, 0.004, 0));
        }
        assertThat(at(30 * SECOND, 150 * SECOND).orElseThrow().micros()).isEqualTo(120 * SECOND);
        assertThat(clock.first().orElseThrow().stamp().micros()).isEqualTo(115 * SECOND + 4_000);
    }

    /** The unit's tick is gateway time − 90 s. */
    private void exchange(double gatewaySeconds, double downSeconds, double upSeconds) {
        assertThat(clock.accept(exchangeAt(gatewaySeconds, downSeconds, upSeconds, 0))).isTrue();
    }

    private static Exchange exchangeAt(double gateway, double down, double up, long jumpMicros) {
        long sent = Math.round(gateway * SECOND);
        long there = sent + Math.round(down * SECOND);
        long tick = there - 90 * SECOND + jumpMicros;
        return new Exchange(sent, tick, tick, there + Math.round(up * SECOND));
    }

    private Optional<Stamp> at(long tick, long arrivalMicros) {
        return clock.at(new StationTick(tick), new GatewayTime(arrivalMicros));
    }

    /** A random life of one unit: rate within 100 ppm, unfair links, stamps read a little late. */
    private static final class History {
        private final long seed;
        private final Random random;
        private final double ppm;
        private final long bootMicros;
        private final ExchangeClock clock = new ExchangeClock();

        History(long seed) {
            this.seed = seed;
            this.random = new Random(seed);
            this.ppm = (random.nextDouble() * 2 - 1) * 80;
            this.bootMicros = -(long) (random.nextDouble() * 1e10);
        }

        void check() {
            long now = SECOND;
            int exchanges = 1 + random.nextInt(40);
            for (int i = 0; i < exchanges; i++) {
                now += (long) (5e6 * (0.6 + 0.8 * random.nextDouble()));
                exchange(now);
                long happened = now + (long) ((random.nextDouble() - 0.7) * 30e6);
                long arrival = Math.max(now, happened) + delay();
                Stamp stamp =
                        clock.at(new StationTick(tick(happened)), new GatewayTime(arrival))
                                .orElseThrow(() -> new AssertionError("no bound, seed " + seed));
                assertThat(happened)
                        .as("seed %d, %.3f ppm, exchange %d", seed, ppm, i)
                        .isBetween(stamp.lowerMicros(), stamp.upperMicros());
                assertThat(stamp.upperMicros()).isLessThanOrEqualTo(arrival);
            }
        }

        private void exchange(long now) {
            long there = now + delay();
            long left = there + (long) (random.nextDouble() * 2_000);
            long received = tick(there) + random.nextInt(100);
            long sent = Math.max(received, tick(left));
            clock.accept(new Exchange(now, received, sent, left + 100 + delay()));
        }

        private long tick(long trueMicros) {
            return (long) Math.floor((trueMicros - bootMicros) * (1 + ppm / 1e6));
        }

        /** Mostly quick, sometimes the best part of a second. */
        private long delay() {
            return (long)
                    (-Math.log(1 - random.nextDouble()) * (random.nextInt(8) == 0 ? 2e5 : 4e3));
        }
    }
}
