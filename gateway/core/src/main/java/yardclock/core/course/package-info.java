/**
 * The exam plan: stations, triggers, checkpoints, criteria and rules, as immutable records.
 *
 * <p>Invariant: the plan of a running exam does not change. All times are microseconds of exam
 * time, all words stand in both languages.
 */
package yardclock.core.course;
