/**
 * The main program: sub-commands, composition by hand, the order of starting and stopping.
 *
 * <p>Everything else knows only its neighbours' ports; here, and only here, all of it is put
 * together ({@link yardclock.app.boot.Gateway}). The journal is read before anything is reachable
 * from outside, the lane runs before the broker's backlog comes in, and at the end the tablets'
 * streams close first and the journal last.
 *
 * <p>Invariant: what can't be started safely is refused with one sentence and exit code 1; nothing
 * half-started is left running.
 */
package yardclock.app.boot;
