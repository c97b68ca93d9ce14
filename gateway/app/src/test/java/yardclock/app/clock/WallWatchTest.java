package yardclock.app.clock;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

class WallWatchTest {
    private static final long SECOND = 1_000_000;

    private final WallByHand wall = new WallByHand();
    private long monotonicMicros = 77 * SECOND;
    private long slowness;
    private final Machine machine =
            new Machine("boot-a", () -> (monotonicMicros += slowness) * 1_000, wall);
    private final Anchor anchor = Anchor.first(machine, 10);
    private final WallWatch watch =
            new WallWatch(machine, new SystemGatewayClock(machine, anchor), anchor);

    @Test
    void says_nothing_while_both_clocks_run_alike() {
        for (int i = 0; i < 100; i++) {
            pass(SECOND);
            wall.micros += i % 2 == 0 ? 300 : -300;
            assertThat(watch.look()).isEmpty();
        }
    }

    @Test
    void tells_a_step_with_its_size_until_it_is_noted() {
        pass(3 * SECOND);
        wall.micros -= 3_600 * SECOND;
        WallWatch.Step step = watch.look().orElseThrow();
        assertThat(step.stepMicros()).isEqualTo(-3_600 * SECOND);
        assertThat(step.wallMicros()).isEqualTo(wall.micros);
        assertThat(step.gatewayMicros()).as("exam time at speed 10").isEqualTo(30 * SECOND);
        assertThat(watch.look()).contains(step);
        watch.noted(step);
        assertThat(watch.look()).isEmpty();
    }

    @Test
    void tells_neither_a_slow_drift_below_the_limit_nor_a_busy_machine_as_a_step() {
        wall.micros += WallWatch.STEP_MICROS;
        assertThat(watch.look()).isEmpty();
        wall.micros += 1;
        assertThat(watch.look()).isPresent();
        slowness = WallWatch.APART_MICROS;
        assertThat(watch.look()).as("the readings were far apart").isEmpty();
    }

    private void pass(long micros) {
        monotonicMicros += micros;
        wall.micros += micros;
    }

    private static final class WallByHand extends Clock {
        private long micros = 1_700_000_000L * SECOND;

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }

        @Override
        public Instant instant() {
            return Instant.EPOCH.plusNanos(micros * 1_000);
        }
    }
}
