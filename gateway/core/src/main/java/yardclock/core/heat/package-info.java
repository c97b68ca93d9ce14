/**
 * The heat watch, in first form by the heat index alone, and the formulas that reckon one reading
 * through ({@code HeatFigures}). It advises; bounds are the plan's and local medical direction's.
 *
 * <p>Invariant: absence of data is a state, never "normal".
 */
package yardclock.core.heat;
