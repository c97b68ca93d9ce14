/**
 * The one thread on which everything in the simulated yard happens, and its exam time.
 *
 * <p>Field units, candidates, proctors and crew are plain objects without locks. They live on one
 * stage: it runs their acts one after the other, in the order of the exam time they were planned
 * for. Networks answer on threads of their own and only hand in acts with {@link
 * yardclock.sim.stage.Stage#soon}.
 *
 * <p>Invariant: an act planned for an earlier instant runs before one planned for a later instant,
 * however late the machine is; so what a unit stamps never runs backwards.
 */
package yardclock.sim.stage;
