package yardclock.app.records;

import yardclock.app.settings.DemoPlan;
import yardclock.core.board.HeatView;
import yardclock.core.board.ProofView.SignedView;
import yardclock.core.course.Condition;
import yardclock.core.engine.Input;
import yardclock.core.proof.ProofWhy;
import yardclock.core.result.Result;
import yardclock.core.result.Result.CallLine;
import yardclock.core.result.Result.SplitLine;
import yardclock.core.run.Elapsed;

import java.util.List;

/** A day with one candidate who is done, with text that must be escaped, and one who is not. */
final class SampleDay {
    static final String TRICKY = "=1+2, \"so\" <b>&'";

    private SampleDay() {}

    static DaySheet day() {
        var plan = new Input.PlanFrozen(DemoPlan.plan().plan(), DemoPlan.plan().sha256());
        HeatView heat = new HeatView(1, "caution", 846, 2_790, 6_100, 4_000_000, "heat index");
        List<SignedView> proofs =
                List.of(
                        proof("hydrant-walk", ProofWhy.AFTER_REPAIR, 2, TRICKY),
                        proof("", ProofWhy.START_OF_DAY, 21, ""));
        return new DaySheet(plan, List.of(done(), open()), heat, proofs, 1_790_000_000_000_000L);
    }

    private static SignedView proof(String station, ProofWhy why, int seen, String words) {
        int points = station.isEmpty() ? seen : seen + 1;
        return new SignedView(
                station,
                why,
                900_000_000,
                1_789_990_000_000_000L,
                seen,
                points,
                -118_400L,
                "Ada Example",
                "Ben Example",
                words);
    }

    private static Result done() {
        SplitLine split =
                new SplitLine(
                        "hydrant-walk",
                        "by-hand",
                        1_000_000,
                        58_050_000,
                        57_050_000,
                        56_950_000,
                        57_150_000,
                        57_050_000,
                        57_310_000,
                        TRICKY,
                        List.of(Condition.WET, Condition.GLARE));
        CallLine call = new CallLine("hydrant-walk", "running", true, 5_000_000, "Hazel Example");
        return new Result(
                12,
                1,
                1,
                "failed-criterion",
                TRICKY,
                699_950_001,
                699_900_000,
                700_200_000,
                new Elapsed.Parts(18_200, 800, 1_000, 280_000, 0),
                new Result.Settled(699_949_800, 699_899_900, 700_199_000, "undecided"),
                "11:40.0",
                "undecided",
                "review",
                0,
                true,
                List.of(split),
                List.of(call));
    }

    private static Result open() {
        return new Result(
                13, 1, 1, "", "", -1, -1, -1, null, null, "", "", "", 0, false, List.of(),
                List.of());
    }
}
