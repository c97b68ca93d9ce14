/**
 * The one method that ties the rules together: entry in, outcome out.
 *
 * <p>The engine asks no clock, file, socket or random source. Whoever feeds it the same entries in
 * the same order, in whatever JVM, gets the same facts, effects, frames and digest.
 *
 * <p>Invariant: deterministic across runs; owned by one thread.
 */
package yardclock.core.engine;
