/**
 * Comparing two units' clocks by occurrences that both of them saw.
 *
 * <p>An exchange bounds a clock, but can't tell a slow way there from a slow way back. One contact
 * wired to two units can: what the same instant is called by both differs by exactly that. At a
 * {@link yardclock.core.calibration.Sitting} the technician trips two sensors together twenty times
 * or more; accepted, the median is a {@link yardclock.core.calibration.Calibration}, and the other
 * unit's estimates are moved by it from then on. Calibrations form chains from unit to unit; {@link
 * yardclock.core.calibration.Calibrations} keeps them, and ends one when a unit's boot, access
 * point or contract changes.
 *
 * <p>Invariant: a calibration moves estimates only, never a guaranteed limit, and never an edge
 * that was stamped before it.
 */
package yardclock.core.calibration;
