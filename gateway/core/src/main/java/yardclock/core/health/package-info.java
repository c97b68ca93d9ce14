/**
 * Each field unit's status, since when, and in words.
 *
 * <p>Invariant: a silent sensor is visible within its deadline.
 */
package yardclock.core.health;
