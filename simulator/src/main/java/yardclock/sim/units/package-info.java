/**
 * Virtual field units: what a board in the yard does, spoken over real MQTT.
 *
 * <p>A {@link yardclock.sim.units.VirtualUnit} has a boot id, a counter that runs a little fast or
 * slow, a ring buffer of edges, and a link. It stamps an edge when it happens, sends it when it
 * can, and drops it only when the gateway says {@code kept}.
 *
 * <p>Invariant: an edge leaves the buffer by {@code kept} or, when the ring is full, by a counted
 * overflow; never because a broker acknowledged it.
 */
package yardclock.sim.units;
