package yardclock.core.ruling;

import yardclock.core.heat.watch.HeatWatch;
import yardclock.core.proof.Proofs;
import yardclock.core.run.CourseRun;

import java.util.ArrayList;
import java.util.List;

/**
 * What holds new releases whoever is next, beside the course's own hold and stop. Those who move go
 * on: it is for people to let them finish or to stop them. Pure, a look at the state.
 */
public final class ReleaseHolds {
    private ReleaseHolds() {}

    /** All that hold now, in the order in which they are given as a refusal. */
    public static List<Refusal> now(
            CourseRun course, HeatWatch heat, Proofs proofs, long nowMicros) {
        List<Refusal> holds = new ArrayList<>();
        if (!course.checklist().open().isEmpty()) {
            holds.add(Refusal.CHECKLIST_OPEN);
        }
        if (!course.standBy().holding().isEmpty()) {
            holds.add(Refusal.TEAM_AWAY);
        }
        HeatAdmission.againstReleases(heat, nowMicros).ifPresent(holds::add);
        if (course.surfaces().holdsAny()) {
            holds.add(Refusal.SURFACE_HOLDS);
        }
        if (proofs.underWay().isPresent()) {
            holds.add(Refusal.PROOF_RUN_UNDER_WAY);
        }
        if (proofs.isMissing()) {
            holds.add(Refusal.PROOF_RUN_MISSING);
        }
        return holds;
    }
}
