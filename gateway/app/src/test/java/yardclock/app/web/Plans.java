package yardclock.app.web;

import yardclock.core.course.DayRules;
import yardclock.core.course.ExamPlan;

/** Variations of the demo plan for tests. */
final class Plans {
    private Plans() {}

    static ExamPlan withPublicLeaderboard(ExamPlan plan) {
        DayRules day = plan.day();
        DayRules open =
                new DayRules(
                        day.releaseIntervalMicros(),
                        day.startKind(),
                        day.proctors(),
                        day.afterFault(),
                        day.maxHoldCreditOneMicros(),
                        day.maxHoldCreditAllMicros(),
                        day.timesOnBoard(),
                        true,
                        day.startWords(),
                        day.stopSignal(),
                        day.workWatts(),
                        day.proofRun());
        return new ExamPlan(plan.name(), plan.timing(), open, plan.stations(), plan.fieldUnits());
    }
}
