package yardclock.app.settings;

import yardclock.core.course.DayRules;
import yardclock.core.course.DayRules.AfterFault;
import yardclock.core.course.DayRules.ProctorMode;
import yardclock.core.course.DayRules.ProofRule;
import yardclock.core.course.DayRules.StartKind;
import yardclock.core.course.TimingRules;
import yardclock.core.course.TimingRules.Comparison;
import yardclock.core.course.TimingRules.Rounding;
import yardclock.core.course.TimingRules.UndecidedRule;

/** Reads the rules that hold for every candidate and station alike. */
final class RulesReader {
    private static final long SECOND = 1_000_000;

    private RulesReader() {}

    static TimingRules timing(Block block) {
        TimingRules timing =
                new TimingRules(
                        block.time("cutOff", PlanLimits.CUT_OFF),
                        block.word("comparison", Comparison.class).orElse(Comparison.AT_MOST),
                        block.yesNo("comparesDisplayed"),
                        block.word("rounding", Rounding.class).orElse(Rounding.UP),
                        block.time("resolution", PlanLimits.RESOLUTION),
                        block.word("undecided", UndecidedRule.class).orElse(UndecidedRule.REVIEW),
                        block.time("settle", PlanLimits.SETTLE),
                        block.time("boundLimit", PlanLimits.BOUND_LIMIT),
                        block.time("judgedAllowance", PlanLimits.JUDGED_ALLOWANCE));
        checkResolution(block, timing);
        block.close();
        return timing;
    }

    private static void checkResolution(Block block, TimingRules timing) {
        long step = timing.resolutionMicros();
        if (step > 0 && SECOND % step != 0) {
            block.wrong(
                    "resolution", "a second is no whole number of these steps", "100 ms, 10 ms");
        } else if (step > 0 && timing.cutOffMicros() > 0 && timing.cutOffMicros() % step != 0) {
            block.wrong(
                    "cutOff",
                    "the cut-off cannot be shown at this resolution",
                    "whole steps of " + Durations.text(step));
        }
    }

    static DayRules day(Block block) {
        DayRules day =
                new DayRules(
                        block.time("releaseInterval", PlanLimits.RELEASE_INTERVAL),
                        block.word("startKind", StartKind.class).orElse(StartKind.SIGNAL),
                        block.word("proctors", ProctorMode.class).orElse(ProctorMode.MIXED),
                        block.word("afterFault", AfterFault.class).orElse(AfterFault.MAY_FINISH),
                        block.time("maxHoldCreditOne", PlanLimits.HOLD_CREDIT),
                        block.time("maxHoldCreditAll", PlanLimits.HOLD_CREDIT),
                        block.yesNo("timesOnBoard"),
                        block.yesNo("leaderboardPublic"),
                        block.text("startWords", PlanLimits.WORDS),
                        block.text("stopSignal", PlanLimits.WORDS),
                        (int) block.count("workWatts", PlanLimits.WORK_WATTS),
                        block.word("proofRun", ProofRule.class, ProofRule.ADVISED));
        long all = day.maxHoldCreditAllMicros();
        if (all >= 0 && day.maxHoldCreditOneMicros() > all) {
            String allowed = "at most maxHoldCreditAll, which is " + Durations.text(all);
            block.wrong("maxHoldCreditOne", "one hold may not be credited more than all", allowed);
        }
        block.close();
        return day;
    }
}
