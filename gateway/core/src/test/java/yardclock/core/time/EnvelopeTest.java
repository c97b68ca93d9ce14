package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import yardclock.core.ReferenceTable;
import yardclock.core.ReferenceTable.Row;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.UnaryOperator;

/** The envelope: exact against reference/envelope.csv, and true whenever its assumption holds. */
class EnvelopeTest {
    private static final int HISTORIES = 10_000;
    private static final double BOUND_PPM = 50;

    @Test
    void the_limits_are_those_computed_exactly() {
        ExchangeHistory history = new ExchangeHistory();
        List<Row> rows = ReferenceTable.rows("envelope");
        for (Row row : rows) {
            history.add(
                    new Exchange(
                            row.micros("g1"),
                            row.micros("s2"),
                            row.micros("s3"),
                            row.micros("g4")));
            long tick = 10_000_000;
            HardEnvelope hard = HardEnvelope.of(history, history.size(), tick, BOUND_PPM);
            assertThat(tick + hard.lower()).isCloseTo(row.number("lower") * 1e6, within(0.001));
            assertThat(tick + hard.upper()).isCloseTo(row.number("upper") * 1e6, within(0.001));
        }
        assertThat(rows).hasSize(2);
    }

    @Test
    void the_truth_lies_inside_whenever_the_rate_keeps_its_bound() {
        for (long seed = 0; seed < HISTORIES; seed++) {
            RandomLife life = new RandomLife(seed);
            life.exchange(1 + life.random.nextInt(40));
            long happened = life.someTime();
            HardEnvelope hard = life.envelope(happened);
            assertThat(happened - life.tick(happened) * 1.0)
                    .as("seed %d", seed)
                    .isBetween(hard.lower() - 1, hard.upper() + 1);
        }
    }

    @Test
    void one_exchange_more_never_widens_it() {
        for (long seed = 0; seed < HISTORIES; seed++) {
            RandomLife life = new RandomLife(seed);
            life.exchange(1 + life.random.nextInt(20));
            long happened = life.someTime();
            HardEnvelope before = life.envelope(happened);
            life.exchange(1);
            HardEnvelope after = life.envelope(happened);
            assertThat(after.lower()).as("seed %d", seed).isGreaterThanOrEqualTo(before.lower());
            assertThat(after.upper()).as("seed %d", seed).isLessThanOrEqualTo(before.upper());
        }
    }

    @Test
    void shifting_the_gateways_stamps_shifts_the_answer_and_nothing_else() {
        for (long seed = 0; seed < HISTORIES; seed++) {
            RandomLife life = new RandomLife(seed);
            life.exchange(4 + life.random.nextInt(30));
            long tick = life.tick(life.someTime());
            long shift = (life.random.nextLong() >> 24);
            Stamp plain = life.stamp(tick, e -> e);
            Stamp shifted =
                    life.stamp(
                            tick,
                            e ->
                                    new Exchange(
                                            e.gatewaySentMicros() + shift,
                                            e.unitReceivedTick(),
                                            e.unitSentTick(),
                                            e.gatewayReceivedMicros() + shift));
            assertThat(Math.abs(shifted.micros() - plain.micros() - shift))
                    .as("seed %d, shift %d", seed, shift)
                    .isLessThanOrEqualTo(1);
            assertThat(shifted.widthMicros()).isCloseTo(plain.widthMicros(), within(2L));
        }
    }

    /** Running time backwards turns downlink into uplink, and so turns the error round. */
    @Test
    void swapping_the_legs_mirrors_the_error() {
        for (long seed = 0; seed < HISTORIES; seed++) {
            RandomLife life = new RandomLife(seed);
            life.exchange(4 + life.random.nextInt(30));
            long tick = life.tick(life.someTime());
            Stamp plain = life.stamp(tick, e -> e);
            Stamp mirrored =
                    life.stamp(
                            -tick,
                            e ->
                                    new Exchange(
                                            -e.gatewayReceivedMicros(),
                                            -e.unitSentTick(),
                                            -e.unitReceivedTick(),
                                            -e.gatewaySentMicros()));
            assertThat(Math.abs(plain.micros() + mirrored.micros()))
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(2);
        }
    }

    /** The short way that every exchange takes, and the long one that an estimate takes. */
    @Test
    void a_contradiction_is_one_whether_a_line_is_fitted_or_not() {
        int contradictions = 0;
        for (long seed = 0; seed < HISTORIES; seed++) {
            RandomLife life = new RandomLife(seed);
            life.exchange(1 + life.random.nextInt(30));
            long jump = seed % 2 == 0 ? 0 : 12_000;
            ExchangeHistory history = life.history(e -> e);
            long tick = life.tick(life.now) + jump;
            history.add(
                    new Exchange(
                            life.now + 5_000_000,
                            tick + 5_003_000,
                            tick + 5_003_100,
                            life.now + 5_006_000));
            int count = history.size();
            boolean shortWay =
                    new ClockEstimator(history, count, tick, Long.MAX_VALUE)
                            .isContradictory(RateRange.ANY);
            boolean longWay =
                    new ClockEstimator(history, count, tick, Long.MAX_VALUE).live().contradiction();
            assertThat(shortWay).as("seed %d", seed).isEqualTo(longWay);
            contradictions += shortWay ? 1 : 0;
        }
        assertThat(contradictions).isBetween(HISTORIES / 20, HISTORIES * 19 / 20);
    }

    @Test
    void the_bench_example_of_a_band_with_no_room_is_a_contradiction() {
        ExchangeHistory history = new ExchangeHistory();
        for (int i = 0; i < 10; i++) {
            long jump = i < 5 ? 0 : 30_000;
            long at = i * 5_000_000L;
            history.add(new Exchange(at, at + 1_000 + jump, at + 1_100 + jump, at + 2_100));
        }
        ClockEstimator.Answer answer =
                new ClockEstimator(history, 10, 45_000_000, Long.MAX_VALUE).live();
        assertThat(answer.contradiction()).isTrue();
        assertThat(answer.stamp()).isNull();
    }

    /** One unit's random hour: any rate within the bound, unfair delays. */
    private static final class RandomLife {
        final Random random;
        private final double ppm;
        private final long boot;
        private final List<Exchange> exchanges = new ArrayList<>();
        private long now = 1_000_000;

        RandomLife(long seed) {
            random = new Random(seed);
            ppm = (random.nextDouble() * 2 - 1) * BOUND_PPM;
            boot = (long) (random.nextDouble() * 1e9);
        }

        long tick(long trueMicros) {
            return Math.round((trueMicros + boot) * (1 + ppm / 1e6));
        }

        long someTime() {
            return (long) (now * random.nextDouble() * 1.2);
        }

        void exchange(int count) {
            for (int i = 0; i < count; i++) {
                now += 3_000_000 + random.nextInt(4_000_000);
                long there = now + delay();
                long left = there + random.nextInt(1_000);
                exchanges.add(new Exchange(now, tick(there), tick(left), left + delay()));
            }
        }

        private long delay() {
            return 1_500 + (long) (-Math.log(1 - random.nextDouble()) * 4_000);
        }

        HardEnvelope envelope(long trueMicros) {
            ExchangeHistory history = history(e -> e);
            return HardEnvelope.of(history, history.size(), tick(trueMicros), BOUND_PPM);
        }

        Stamp stamp(long tick, UnaryOperator<Exchange> change) {
            ExchangeHistory history = history(change);
            return new ClockEstimator(history, history.size(), tick, Long.MAX_VALUE)
                    .settledOver(0, history.size())
                    .stamp();
        }

        ExchangeHistory history(UnaryOperator<Exchange> change) {
            ExchangeHistory history = new ExchangeHistory();
            exchanges.forEach(e -> history.add(change.apply(e)));
            return history;
        }
    }
}
