/**
 * What a day is set up from: the exam plan (YAML) and the roster (CSV), read, checked and refused
 * with every problem at once.
 *
 * <p>A file is read in one pass. Each value is judged where it stands, so that a refusal can name
 * the line, the key and what would be allowed; the reading goes on after a problem, so that one
 * correction round is enough. Nothing is corrected silently and nothing has a second meaning: a key
 * that is not known is refused, because a misspelt rule must not become a rule that is left out.
 *
 * <p>Invariant: an {@link yardclock.core.course.ExamPlan} that leaves this package breaks no limit
 * of {@link yardclock.app.settings.PlanLimits}. Names of people stay in the {@link
 * yardclock.app.settings.Roster} in memory; only numbers and groups go on.
 *
 * <p>Everything here is stateless or immutable once returned, and may be called from any thread.
 */
package yardclock.app.settings;
