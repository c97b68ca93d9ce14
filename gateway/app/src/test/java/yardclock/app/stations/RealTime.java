package yardclock.app.stations;

import yardclock.app.clock.GatewayClock;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.WallTime;

/** The machine's own time at a speed. */
record RealTime(int speed) implements GatewayClock {
    @Override
    public GatewayTime now() {
        return new GatewayTime(speed * (System.nanoTime() / 1_000));
    }

    @Override
    public WallTime wall() {
        return new WallTime(1_000 * System.currentTimeMillis());
    }

    @Override
    public long realNanos() {
        return System.nanoTime();
    }
}
