/**
 * The embedded MQTT broker: what a gateway uses when no broker of its own stands in the yard.
 *
 * <p>It is Artemis with the MQTT protocol, one acceptor, a persistent journal under the data folder
 * and no management, clustering or web console. Every client is a field unit of the plan or the
 * gateway, with its own password; a unit writes and reads under its own id only.
 *
 * <p>Invariant: nobody connects without a password, and a password file that cannot be read means
 * refusing to start.
 */
package yardclock.app.broker;
