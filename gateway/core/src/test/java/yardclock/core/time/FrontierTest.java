package yardclock.core.time;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.Random;

/** What is dropped is never missed: compared with all limits, in the same arithmetic. */
class FrontierTest {
    private static final int HISTORIES = 300;

    @Test
    void the_envelope_ahead_of_the_exchanges_is_that_of_all_of_them() {
        for (long seed = 0; seed < HISTORIES; seed++) {
            Random random = new Random(seed);
            ExchangeHistory history = new ExchangeHistory();
            double rate = (random.nextDouble() * 2 - 1) * 60e-6;
            long tick = random.nextInt(1_000_000);
            int exchanges = 40 + random.nextInt(2 * ExchangeHistory.KEPT);
            for (int i = 0; i < exchanges; i++) {
                tick += 1_000_000 + random.nextInt(8_000_000);
                history.add(exchange(random, tick, rate));
                if (random.nextInt(200) == 0) {
                    history.cutTo(history.size() - random.nextInt(history.size()));
                }
            }
            long newest = history.unitReceived(history.size() - 1);
            for (double bound : new double[] {50, 65, 500}) {
                for (long at : new long[] {newest, newest + 350, newest + 20_000_000}) {
                    assertThat(HardEnvelope.of(history, history.size(), at, bound))
                            .as("seed %d, bound %s, tick %d", seed, bound, at)
                            .isEqualTo(byAll(history, at, bound));
                }
            }
        }
    }

    private static Exchange exchange(Random random, long tick, double rate) {
        long gateway = tick + 7_000_000_000L + Math.round(tick * rate);
        long down = 1_500 + Math.round(-600 * Math.log(1 - random.nextDouble()));
        long up = 1_500 + Math.round(-600 * Math.log(1 - random.nextDouble()));
        boolean isLate = random.nextInt(20) == 0;
        return new Exchange(
                gateway - down - (isLate ? random.nextInt(120_000) : 0),
                tick,
                tick + 300,
                gateway + 300 + up);
    }

    private static HardEnvelope byAll(ExchangeHistory history, long tick, double ratePpm) {
        double phi = ratePpm * 1e-6;
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int i = 0; i < history.size(); i++) {
            low = Math.max(low, history.down(i) - phi * Math.abs(tick - history.unitReceived(i)));
            high = Math.min(high, history.up(i) + phi * Math.abs(tick - history.unitSent(i)));
        }
        return new HardEnvelope(low, high);
    }
}
