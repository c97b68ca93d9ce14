/**
 * What is wired to the gateway's own board: one more field unit, without a radio in between.
 *
 * <p>A listener on each pin takes the time first thing, numbers the edge and puts it into a store;
 * one thread hands the store's edges, a sign of life and clock exchanges to the inbox, as a field
 * unit would over MQTT. The unit's ticks are the gateway's own clock since the unit's start, so its
 * exchanges have no round trip.
 *
 * <p>A climate sensor on I²C has a thread that reads it now and then and hands the reading in as a
 * reading of its unit. It reads anew or is silent; it never says again what it said before.
 *
 * <p>Lamps, horn and a dead-man's pulse are switched by what the lane showed last, by a thread of
 * their own. The pulse rises on such a look only.
 *
 * <p>Invariant: an edge leaves the store only after the journal kept it. Where there are no pins,
 * the unit says so and everything else runs on.
 */
package yardclock.app.pins;
