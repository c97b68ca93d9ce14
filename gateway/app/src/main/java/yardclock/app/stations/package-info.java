/**
 * The field units' side of the gateway: MQTT messages in, inputs to the lane; effects out.
 *
 * <p>A message takes one way only. The MQTT callback stamps it, {@link
 * yardclock.app.stations.UnitMessages} turns it into inputs or a refusal, the inputs are offered to
 * the inbox, and the receipt that comes back after the journal's commit acknowledges it to the
 * broker. The other way, effects wait in an outbox that one thread empties; what is retained keeps
 * only its newest value, so a broker that was away learns the present state and no history.
 *
 * <p>Invariant: a message is acknowledged to the broker only after its commit or its counted
 * refusal; one that could be neither is delivered again, in order, on the next connection.
 */
package yardclock.app.stations;
