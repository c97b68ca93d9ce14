/**
 * The proof run: somebody of the staff walks the course, or one station after a repair, before a
 * candidate does, and presses a tablet at each point.
 *
 * <p>Meanwhile the edges of these stations belong to the proof run and to nobody's turn, judged by
 * the triggers' own rules. Each point is seen, missing or apart: the automatic instant lies within
 * the hand interval of the press, one of the two is not there, or they do not go together. Two
 * persons on two devices sign what they saw, the second one closes it.
 *
 * <p>Invariant: a proof run starts no clock and becomes no result.
 */
package yardclock.core.proof;
