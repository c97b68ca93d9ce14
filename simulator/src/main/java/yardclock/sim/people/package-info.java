/**
 * Candidates: how long each will take is drawn beforehand, then somebody walks the course.
 *
 * <p>A {@link yardclock.sim.people.CandidateRun} is the whole truth of one attempt: times, walks, a
 * fault or a withdrawal. It comes from the day's seed and the number alone. A {@link
 * yardclock.sim.people.Candidate} lives it through on the stage, with a companion beside them.
 *
 * <p>Invariant: what the gateway answers, and when, can shift a run but never change a duration.
 */
package yardclock.sim.people;
