package yardclock.app.clock;

import yardclock.core.time.GatewayTime;
import yardclock.core.time.WallTime;

/**
 * The gateway's clock. Safe from any thread.
 *
 * <p>At speed N, gateway time is exam time: it runs N times as fast as real time. Links,
 * keep-alives and retries run in real time and must use {@link #realNanos()}.
 */
public interface GatewayClock {
    GatewayTime now();

    WallTime wall();

    int speed();

    /** Real monotonic time, for waits and retries. */
    long realNanos();
}
