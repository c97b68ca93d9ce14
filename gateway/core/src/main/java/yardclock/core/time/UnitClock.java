package yardclock.core.time;

import java.util.Optional;

/**
 * What is known of one boot of one field unit's clock: exchanges go in, ticks come out as gateway
 * time with limits.
 *
 * <p>Owned by the lane's thread, like all state. An instance never sees two boots.
 */
public interface UnitClock {
    /** Takes one exchange into account. Impossible ones are refused and change nothing. */
    boolean accept(Exchange exchange);

    /**
     * Where a tick lies in gateway time, or empty while that can't be said: "no bound yet". Later
     * exchanges may say it.
     *
     * @param arrival when the gateway learned of the tick, which the instant can't be later than
     */
    Optional<Stamp> at(StationTick tick, GatewayTime arrival);

    ClockStatus status(GatewayTime now);
}
