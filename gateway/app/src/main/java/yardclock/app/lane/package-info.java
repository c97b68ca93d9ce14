/**
 * The one thread that owns the state: a bounded inbox, a batch, one commit, then the engine.
 *
 * <p>Invariant: nothing is applied, answered or acknowledged before its journal commit.
 */
package yardclock.app.lane;
