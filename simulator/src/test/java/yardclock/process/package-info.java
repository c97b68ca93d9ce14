/**
 * The gateway as a process of its own: killed, stopped, started again, and replayed in another one.
 *
 * <p>Invariant of these tests: nothing is shared with the gateway but its files, its ports and its
 * output.
 */
package yardclock.process;
