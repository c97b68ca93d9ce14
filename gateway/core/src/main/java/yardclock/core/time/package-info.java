/**
 * Three kinds of time and the way from one to another.
 *
 * <p>A field unit counts microseconds since its own boot ({@link yardclock.core.time.StationTick}),
 * the gateway counts its own monotonic microseconds ({@link yardclock.core.time.GatewayTime}), and
 * people read a wall clock ({@link yardclock.core.time.WallTime}). Exchanges compare the first two;
 * a {@link yardclock.core.time.UnitClock} turns a tick into a gateway instant with limits that
 * hold.
 *
 * <p>Invariant: arithmetic between kinds of time happens only in this package.
 */
package yardclock.core.time;
