/**
 * Recorded exchanges and edges from CSV files, dated again by the gateway's own clock rules.
 *
 * <p>Invariant: a truth column is never read; in live order no edge is dated with an exchange that
 * came back after the edge had arrived.
 */
package yardclock.app.recorded;
