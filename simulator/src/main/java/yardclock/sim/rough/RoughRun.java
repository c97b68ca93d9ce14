package yardclock.sim.rough;

import yardclock.core.course.ExamPlan;
import yardclock.sim.people.CandidateRun;
import yardclock.sim.yard.Script;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Draws a candidate's run for a rough day: a kind one first, then what goes on around it. */
public final class RoughRun {
    private RoughRun() {}

    public static CandidateRun draw(long seed, int number, ExamPlan plan) {
        double pace = pace(seed, number);
        CandidateRun kind = CandidateRun.draw(seed, number, plan.stations(), pace);
        List<Script> scripts = new ArrayList<>();
        for (int i = 0; i < kind.scripts().size(); i++) {
            SplittableRandom random = source(seed, number, i);
            RoughScript rough = new RoughScript(plan, plan.stations().get(i), random);
            scripts.add(rough.of(kind.scripts().get(i)));
        }
        return kind.with(scripts);
    }

    private static SplittableRandom source(long seed, int number, int station) {
        return new SplittableRandom(seed * 7_368_787 + number * 2_003L + station).split();
    }

    /** In every group of ten a slow one goes before a fast one. */
    static double pace(long seed, int number) {
        int group = (number - 1) / Rates.PAIR_IN;
        int slow = new SplittableRandom(seed * 31 + group).nextInt(1, Rates.PAIR_IN / 2);
        int place = 1 + (number - 1) % Rates.PAIR_IN;
        if (place == slow) {
            return Rates.SLOW;
        }
        return place == slow + 1 ? Rates.FAST : 1.0;
    }
}
