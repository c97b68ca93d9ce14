package yardclock.core.account;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/** Runs beside a plain map. */
class RunsTest {
    private static final Cause[] SOME = {Cause.MARK, Cause.CROSSING, Cause.RATTLE};

    @Test
    void runs_say_what_a_plain_map_says() {
        for (long seed = 1; seed <= 50; seed++) {
            Random random = new Random(seed);
            Runs runs = new Runs();
            Map<Long, Cause> plain = new TreeMap<>();
            for (int step = 0; step < 300; step++) {
                long seq = random.nextInt(40);
                Cause cause = SOME[random.nextInt(SOME.length)];
                runs.set(seq, cause);
                plain.put(seq, cause);
            }
            for (long seq = -1; seq <= 41; seq++) {
                assertThat(runs.of(seq)).as("seed %d, %d", seed, seq).isEqualTo(plain.get(seq));
            }
        }
    }

    @Test
    void a_sensor_that_rattles_all_day_is_one_run() {
        Runs runs = new Runs();
        for (long seq = 0; seq < 100_000; seq++) {
            runs.set(seq, Cause.RATTLE);
        }
        assertThat(runs.toString()).hasSizeLessThan(60);
    }
}
