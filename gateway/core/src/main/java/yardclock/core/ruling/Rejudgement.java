package yardclock.core.ruling;

import yardclock.core.course.GuardTimes;
import yardclock.core.course.Trigger;
import yardclock.core.course.TriggerSense;
import yardclock.core.run.CourseRun;
import yardclock.core.run.Rejudged;
import yardclock.core.run.Rejudging;
import yardclock.core.run.StationRun;

/**
 * The answer to what other guards would have found today: the sheet, or why there is none. The
 * guards are refused by the same limits as those of {@link Act.AdjustTrigger}; a trigger that is
 * taken can be asked about all the same.
 *
 * @param refusal null when there is a sheet
 * @param found null when it was refused
 */
public record Rejudgement(Refusal refusal, Rejudged found) {
    /** Which trigger, and which guards instead of those in force; each of them, 0 for unused. */
    public record Question(String station, String point, GuardTimes times) {}

    /**
     * @param course null while no plan is loaded
     */
    public static Rejudgement of(CourseRun course, Question question, long nowMicros) {
        Refusal refusal = against(course, question);
        return refusal == null
                ? new Rejudgement(
                        null,
                        Rejudging.ask(
                                course,
                                question.station(),
                                question.point(),
                                question.times(),
                                nowMicros))
                : new Rejudgement(refusal, null);
    }

    private static Refusal against(CourseRun course, Question question) {
        if (course == null) {
            return Refusal.NO_PLAN;
        }
        StationRun run = course.station(question.station()).orElse(null);
        if (run == null) {
            return Refusal.UNKNOWN_STATION;
        }
        Trigger trigger = run.station().trigger(question.point()).orElse(null);
        if (trigger == null) {
            return Refusal.UNKNOWN_POINT;
        }
        boolean isPossible = TriggerSense.admits(trigger, question.times());
        return isPossible ? null : Refusal.GUARDS_IMPOSSIBLE;
    }
}
