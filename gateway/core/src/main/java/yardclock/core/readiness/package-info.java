/**
 * Who stands by for the course, what was signed for before it opens, and what the ground and the
 * weather are like: the states that go with people's word, not with the clock.
 *
 * <p>Invariant: only a person's word changes a state; nobody's absence or presence is guessed.
 */
package yardclock.core.readiness;
