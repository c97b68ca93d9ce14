package yardclock.app.clock;

import yardclock.core.time.GatewayTime;
import yardclock.core.time.WallTime;

/**
 * Gateway time read off the machine's monotonic clock from one anchor on; at speed N it runs N
 * times as fast. Setting the wall clock does not touch it. Safe from any thread.
 */
public final class SystemGatewayClock implements GatewayClock {
    private final Machine machine;
    private final Anchor anchor;

    public SystemGatewayClock(Machine machine, Anchor anchor) {
        this.machine = machine;
        this.anchor = anchor;
    }

    @Override
    public GatewayTime now() {
        long nanos = machine.monotonicNanos().getAsLong() - anchor.monotonicMicros() * 1_000;
        return new GatewayTime(
                anchor.gatewayMicros() + Math.floorDiv(nanos * anchor.speed(), 1_000L));
    }

    @Override
    public WallTime wall() {
        return new WallTime(machine.wallMicros());
    }

    @Override
    public int speed() {
        return anchor.speed();
    }

    @Override
    public long realNanos() {
        return machine.monotonicNanos().getAsLong();
    }
}
