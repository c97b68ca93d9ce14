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

    /** The limits of {@link #at} for half the work; where between them is not said. */
    Optional<Stamp> within(StationTick tick, GatewayTime arrival);

    /**
     * The same as {@link #at} from exchanges on both sides of the tick; better once {@link
     * #isSettled}.
     */
    Optional<Stamp> settled(StationTick tick, GatewayTime arrival);

    /** Whether enough exchanges came after the tick that its stamp will not change any more. */
    boolean isSettled(StationTick tick);

    /** Whether the tick lies where the clock jumped, so that its limits must cover both sides. */
    boolean isDoubtful(StationTick tick);

    /**
     * The gateway time between two ticks, as duration with limits: microseconds plus the rate's
     * uncertainty, not two independent intervals. Empty when a jump lies between, or while the rate
     * is not known.
     */
    Optional<Stamp> elapsed(StationTick start, StationTick finish);

    /** How many exchanges it took in. */
    long exchanges();

    /** How often an exchange contradicted those before it: the counter jumped. */
    long faults();

    /**
     * Where its first exchange lies; empty until a second one agrees with it, so that a single wild
     * answer can't tie time lines.
     */
    Optional<ClockEnd> first();

    /** Where its newest exchange lies. */
    Optional<ClockEnd> last();

    ClockStatus status(GatewayTime now);

    /**
     * The same for half the work, without what only a fitted rate can say: {@link
     * ClockStatus#ratePartsPerBillion} is 0 and {@link ClockStatus#floorRoundTripMicros} −1.
     */
    ClockStatus limits(GatewayTime now);

    /** The clock as a picture; empty lists while there is no bound. */
    ClockTrace trace(GatewayTime now);
}
