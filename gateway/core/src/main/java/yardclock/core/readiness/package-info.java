/**
 * Who stands by for the course and what was signed for before it opens: the states that go with
 * people, not with the clock.
 *
 * <p>Invariant: only a person's word changes a state; nobody's absence or presence is guessed.
 */
package yardclock.core.readiness;
