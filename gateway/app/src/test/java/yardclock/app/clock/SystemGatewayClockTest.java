package yardclock.app.clock;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.concurrent.atomic.AtomicLong;

class SystemGatewayClockTest {
    private static final long SECOND = 1_000_000;

    private final AtomicLong monotonicMicros = new AtomicLong(77 * SECOND);
    private final AtomicLong wallMicros = new AtomicLong(1_700_000_000L * SECOND);

    @Test
    void beginsAtZeroAndRunsAtItsSpeed() {
        SystemGatewayClock clock = clock(Anchor.first(machine("boot-a"), 10));
        assertThat(clock.now().micros()).isZero();
        pass(2 * SECOND);
        assertThat(clock.now().micros()).isEqualTo(20 * SECOND);
    }

    @Test
    void isNotMovedBySettingTheWallClock() {
        SystemGatewayClock clock = clock(Anchor.first(machine("boot-a"), 1));
        wallMicros.addAndGet(-3_600 * SECOND);
        pass(SECOND);
        assertThat(clock.now().micros()).isEqualTo(SECOND);
    }

    @Test
    void goesOnUnbrokenOverARestartOnTheSameBoot() {
        Anchor first = Anchor.first(machine("boot-a"), 10);
        pass(5 * SECOND);
        // The wall clock was set meanwhile; on the same boot nobody asks it.
        wallMicros.addAndGet(-999 * SECOND);
        Anchor second = Anchor.after(first, 30 * SECOND, machine("boot-a"));

        assertThat(second.continuous()).isTrue();
        assertThat(clock(second).now()).isEqualTo(clock(first).now());
        pass(SECOND + 1);
        assertThat(clock(second).now()).isEqualTo(clock(first).now());
    }

    @Test
    void beginsANewTimeLineByTheWallClockAfterAReboot() {
        Anchor first = Anchor.first(machine("boot-a"), 10);
        pass(60 * SECOND);
        monotonicMicros.set(3 * SECOND);
        Anchor second = Anchor.after(first, 400 * SECOND, machine("boot-b"));

        assertThat(second.continuous()).isFalse();
        // The newest entry was 40 s after the anchor in real time, so it was away for 20 s.
        assertThat(second.gatewayMicros()).isEqualTo((400 + 200) * SECOND);
    }

    @Test
    void neverRunsBackwardsWhenTheWallClockWasSetBackOverAReboot() {
        Anchor first = Anchor.first(machine("boot-a"), 1);
        wallMicros.addAndGet(-86_400 * SECOND);
        Anchor second = Anchor.after(first, 400 * SECOND, machine("boot-b"));
        assertThat(second.gatewayMicros()).isEqualTo(400 * SECOND);
        assertThat(second.continuous()).isFalse();
    }

    @Test
    void doesNotTrustASameBootWhoseMonotonicClockIsBehind() {
        Anchor first = Anchor.first(machine("boot-a"), 1);
        monotonicMicros.addAndGet(-SECOND);
        Anchor second = Anchor.after(first, 5 * SECOND, machine("boot-a"));
        assertThat(second.continuous()).isFalse();
        assertThat(second.gatewayMicros()).isGreaterThanOrEqualTo(5 * SECOND);
    }

    @Test
    void sharesItsMonotonicClockAndBootWithOtherReadingsOfThisMachine() {
        Machine one = Machine.here();
        Machine other = Machine.here();
        assertThat(one.monotonicMicros()).isLessThanOrEqualTo(other.monotonicMicros());
        assertThat(one.boot()).isNotBlank();
    }

    private void pass(long micros) {
        monotonicMicros.addAndGet(micros);
        wallMicros.addAndGet(micros);
    }

    private SystemGatewayClock clock(Anchor anchor) {
        return new SystemGatewayClock(machine(anchor.machineBoot()), anchor);
    }

    private Machine machine(String boot) {
        return new Machine(boot, () -> monotonicMicros.get() * 1_000, new WallByHand());
    }

    private final class WallByHand extends Clock {
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
            return Instant.EPOCH.plusNanos(wallMicros.get() * 1_000);
        }
    }
}
