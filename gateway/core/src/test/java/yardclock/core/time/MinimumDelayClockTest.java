package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.Optional;
import java.util.Random;

/** The plain clock estimate: what it promises, and what it does when a unit breaks the rules. */
class MinimumDelayClockTest {
    private static final long SECOND = 1_000_000;
    private static final int HISTORIES = 10_000;

    private final MinimumDelayClock clock = new MinimumDelayClock();

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
        String before = clock.toString();
        long g = 110 * SECOND;
        long u = 20 * SECOND;
        assertThat(clock.accept(new Exchange(g, u, u, g - 1))).as("back before sent").isFalse();
        assertThat(clock.accept(new Exchange(g, u, u - 1, g + 9))).as("sent first").isFalse();
        assertThat(clock.accept(new Exchange(g, u, u + 50, g + 49))).as("negative trip").isFalse();
        assertThat(clock.toString()).isEqualTo(before);
        assertThat(clock.status(new GatewayTime(g)).exchanges()).isEqualTo(1);
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
    void of_the_newest_exchanges_the_one_with_the_shortest_trip_gives_the_offset() {
        exchange(100, 0.050, 0.010);
        exchange(105, 0.002, 0.002);
        exchange(110, 0.090, 0.005);
        assertThat(at(20 * SECOND, 200 * SECOND).orElseThrow().micros()).isEqualTo(110 * SECOND);
        assertThat(clock.status(new GatewayTime(110 * SECOND)).floorRoundTripMicros())
                .isEqualTo(4_000);
    }

    @Test
    void nothing_happens_later_than_we_learned_of_it() {
        exchange(100, 0.400, 0.001);
        Stamp stamp = at(10 * SECOND, 100 * SECOND + 5_000).orElseThrow();
        assertThat(stamp.upperMicros()).isLessThanOrEqualTo(100 * SECOND + 5_000);
        assertThat(stamp.micros()).isLessThanOrEqualTo(stamp.upperMicros());
    }

    @Test
    void exchanges_that_contradict_each_other_leave_no_bound_until_the_next_one() {
        exchange(100, 0.004, 0.004);
        long jump = 3 * SECOND;
        clock.accept(exchangeAt(105, 0.004, 0.004, jump));
        assertThat(at(15 * SECOND + jump, 106 * SECOND)).isEmpty();
        clock.accept(exchangeAt(110, 0.004, 0.004, jump));
        assertThat(at(20 * SECOND + jump, 111 * SECOND).orElseThrow().micros())
                .isEqualTo(110 * SECOND);
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
    void the_width_on_the_bench_grows_with_the_age_of_the_newest_exchange() {
        exchange(100, 0.004, 0.004);
        long fresh = clock.status(new GatewayTime(101 * SECOND)).boundWidthMicros();
        long stale = clock.status(new GatewayTime(460 * SECOND)).boundWidthMicros();
        assertThat(fresh).isBetween(8_000L, 9_000L);
        assertThat(stale - fresh).isBetween(71_000L, 73_000L);
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
        private final MinimumDelayClock clock = new MinimumDelayClock();

        History(long seed) {
            this.seed = seed;
            this.random = new Random(seed);
            this.ppm = (random.nextDouble() * 2 - 1) * MinimumDelayClock.RATE_BOUND_PPM;
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
