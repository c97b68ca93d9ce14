package yardclock.sim.twin;

import yardclock.app.clock.GatewayClock;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.WallTime;
import yardclock.sim.stage.Stage;

import java.util.concurrent.TimeUnit;

/** The gateway's clock on a stage: gateway time is the stage's own. */
final class TwinClock implements GatewayClock {
    /** 2026-09-21 06:00 UTC, the morning of the invented day. */
    static final long MORNING_MICROS = 1_789_970_400_000_000L;

    private final Stage stage;

    TwinClock(Stage stage) {
        this.stage = stage;
    }

    @Override
    public GatewayTime now() {
        return new GatewayTime(stage.nowMicros());
    }

    @Override
    public WallTime wall() {
        return new WallTime(MORNING_MICROS + stage.nowMicros());
    }

    @Override
    public int speed() {
        return 1;
    }

    @Override
    public long realNanos() {
        return TimeUnit.MICROSECONDS.toNanos(stage.nowMicros());
    }
}
