/**
 * Frames: complete, numbered pictures of the state, one type per audience.
 *
 * <p>Invariant: each audience's type simply lacks what that audience must not see. A proctor's
 * frame has no running total and no cut-off; a board's has no outcome that was not told.
 */
package yardclock.core.board;
