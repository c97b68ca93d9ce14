/**
 * Three kinds of time and the way from one to another.
 *
 * <p>A field unit counts microseconds since its own boot ({@link yardclock.core.time.StationTick}),
 * the gateway counts its own monotonic microseconds ({@link yardclock.core.time.GatewayTime}), and
 * people read a wall clock ({@link yardclock.core.time.WallTime}). Exchanges compare the first two;
 * a {@link yardclock.core.time.UnitClock} turns a tick into a gateway instant with limits that
 * hold. Where the gateway's own counting broke off, {@link yardclock.core.time.TimeLines} ties one
 * stretch of it to the next by the counters that ran on.
 *
 * <p>Invariant: arithmetic between kinds of time happens only in this package.
 */
package yardclock.core.time;
