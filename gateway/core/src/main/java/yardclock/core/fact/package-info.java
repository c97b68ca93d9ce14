/**
 * What the rules conclude and what they ask for: facts in the past tense, effects as requests.
 *
 * <p>Invariant: a fact is never taken back; a later fact may say that something changed.
 */
package yardclock.core.fact;
