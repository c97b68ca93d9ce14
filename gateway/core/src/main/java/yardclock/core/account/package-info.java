/**
 * What became of every edge the rules took in.
 *
 * <p>An edge that makes no mark is still evidence. So for each one the account has a cause, and
 * each cause is one of four ends: it is in a passage that makes a mark, it is explained otherwise,
 * it is in the tray because it is nobody's, or a ruling struck it. What lies in turns that are
 * still kept is read off them when somebody asks; when a turn is let go, or an edge before that,
 * its cause is written down here.
 *
 * <p>Invariant: an edge has exactly one cause. Where two stations share a sensor, or more is
 * learned later, the one that stands first among the {@linkplain yardclock.core.account.Cause
 * causes} is kept, so the order in which they are learned does not matter.
 */
package yardclock.core.account;
