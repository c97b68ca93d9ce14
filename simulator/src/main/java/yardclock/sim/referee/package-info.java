/**
 * Compares what the gateway concluded with what really happened.
 *
 * <p>The referee reads what any client may read: the timing feed, the results, the journal. It
 * holds the truth book beside it and counts: split errors, wrong assignments, lost edges.
 *
 * <p>Invariant: the truth never flows the other way; nothing here can reach the gateway.
 */
package yardclock.sim.referee;
