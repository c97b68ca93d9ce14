package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.Random;

/**
 * The short cut past the search for all straight clocks. It is held against that search itself, on
 * links and clocks drawn from seeds; no source outside the project decides here.
 */
class WitnessTest {
    private static final int SEEDS = 200;
    private static final int EXCHANGES = 150;
    private static final long NEVER = Long.MAX_VALUE;

    private int agreed;
    private int asked;
    private int contradicted;

    @Test
    void where_the_witness_agrees_the_search_finds_no_contradiction() {
        for (long seed = 0; seed < SEEDS; seed++) {
            compare(seed, 0);
        }
        assertThat(agreed).as("spared, of %d", asked).isGreaterThan(asked * 3 / 4);
    }

    @Test
    void a_counter_that_jumps_is_never_agreed_with_when_the_search_contradicts() {
        for (long seed = 0; seed < SEEDS; seed++) {
            compare(seed, 30_000 + 1_000 * seed);
        }
        assertThat(contradicted).as("jumps found").isGreaterThan(SEEDS * 9 / 10);
    }

    /** Ends where the search contradicts, as a segment does. */
    private void compare(long seed, long jumpMicros) {
        Link link = new Link(seed, jumpMicros);
        ExchangeHistory history = new ExchangeHistory();
        Witness witness = null;
        for (int i = 0; i < EXCHANGES; i++) {
            history.add(link.next(i));
            ClockEstimator first = estimator(history, history.unitReceived(i));
            ClockEstimator second = estimator(history, history.unitSent(i));
            int from = first.liveFrom();
            boolean agrees =
                    witness != null
                            && ClockEstimator.isUsual(from, history.size())
                            && witness.agrees(history, from, RateRange.ANY);
            boolean isContradicted =
                    first.isContradictory(RateRange.ANY) || second.isContradictory(RateRange.ANY);
            asked++;
            agreed += agrees ? 1 : 0;
            assertThat(agrees && isContradicted).as("seed %d, exchange %d", seed, i).isFalse();
            if (isContradicted) {
                contradicted++;
                return;
            }
            witness = agrees ? witness : second.witness();
        }
    }

    private static ClockEstimator estimator(ExchangeHistory history, long tick) {
        return new ClockEstimator(history, history.size(), tick, NEVER);
    }

    /** A crystal, a radio that is late now and then, and a counter that may jump half way. */
    private static final class Link {
        private final Random random;
        private final double rate;
        private final long jumpMicros;
        private long gatewayMicros = 1_000_000_000;

        Link(long seed, long jumpMicros) {
            random = new Random(seed);
            rate = (random.nextDouble() - 0.5) * 90e-6;
            this.jumpMicros = jumpMicros;
        }

        Exchange next(int i) {
            gatewayMicros += 3_000_000 + random.nextInt(4_000_000);
            long received = gatewayMicros + trip();
            long sent = received + 200 + random.nextInt(2_000);
            long jump = i > EXCHANGES / 2 ? jumpMicros : 0;
            return new Exchange(
                    gatewayMicros, tick(received, jump), tick(sent, jump), sent + trip());
        }

        private long trip() {
            long floor = 1_500L + random.nextInt(1_500);
            return random.nextInt(10) == 0 ? floor + random.nextInt(120_000) : floor;
        }

        private long tick(long micros, long jump) {
            return Math.round(micros * (1 + rate)) - 900_000_000 + jump;
        }
    }
}
