/**
 * From edges to passages: which raw edge a trigger means.
 *
 * <p>Judging is a pure function of the edges of one turn in time order. It is done anew whenever an
 * edge is added, so the order in which edges arrived does not matter.
 *
 * <p>Invariant: filtering never moves a time stamp; a passage's stamp is a raw edge's own.
 */
package yardclock.core.passage;
