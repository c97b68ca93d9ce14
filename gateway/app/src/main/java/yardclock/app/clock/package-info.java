/**
 * The only place that asks the operating system for the time.
 *
 * <p>Gateway time is the machine's monotonic clock on a time line of our own: each start of the
 * gateway ties the two together in an {@link yardclock.app.clock.Anchor}, which is journalled as an
 * epoch. Started again on the same boot of the same machine, the time line goes on unbroken, as if
 * the gateway had never been away; otherwise a new one begins, never before the old one's end.
 *
 * <p>Invariant: gateway time never runs backwards, and nobody else calls {@code System.nanoTime} or
 * {@code System.currentTimeMillis}.
 */
package yardclock.app.clock;
