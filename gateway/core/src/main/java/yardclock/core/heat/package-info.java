/**
 * What follows from one reading of heat: the formulas, each with its source and error ({@code
 * HeatFigures}), and the level it reaches by the plan's bounds ({@code ReadingLevel}). It advises;
 * bounds are the plan's and local medical direction's.
 *
 * <p>Invariant: the method goes with its value; nothing falls back in silence.
 */
package yardclock.core.heat;
