package yardclock.core.ruling;

import yardclock.core.course.GuardTimes;
import yardclock.core.course.Trigger;
import yardclock.core.course.TriggerSense;
import yardclock.core.run.CourseRun;
import yardclock.core.run.StationRun;

import java.util.EnumSet;
import java.util.Set;

/** What speaks against adjusting a trigger now. Changes nothing. */
final class TriggerAdmission {
    private TriggerAdmission() {}

    static Set<Refusal> against(Act.AdjustTrigger act, CourseRun course) {
        Set<Refusal> against = EnumSet.noneOf(Refusal.class);
        String words = act.words() == null ? "" : act.words();
        add(against, words.length() > Admission.WORDS_MAX, Refusal.WORDS_TOO_LONG);
        add(against, words.isBlank(), Refusal.NO_WORDS);
        StationRun run = course.station(act.station()).orElse(null);
        add(against, run == null, Refusal.UNKNOWN_STATION);
        if (run == null) {
            return against;
        }
        Trigger trigger = run.station().trigger(act.point()).orElse(null);
        add(against, trigger == null, Refusal.UNKNOWN_POINT);
        if (trigger != null) {
            add(against, act.adjustment() != trigger.adjustment(), Refusal.OUT_OF_DATE);
            boolean isPossible = TriggerSense.admits(trigger, times(act));
            add(against, !isPossible, Refusal.GUARDS_IMPOSSIBLE);
            add(against, course.whereabouts().isTaken(run), Refusal.STATION_TAKEN);
        }
        return against;
    }

    /** The guards an act gives. */
    static GuardTimes times(Act.AdjustTrigger act) {
        return new GuardTimes(
                act.lockoutMicros(),
                act.staysForMicros(),
                act.clearForMicros(),
                act.stoodForMicros(),
                act.minBlockMicros(),
                act.mergeGapMicros(),
                act.withinMicros(),
                act.spacingMicros());
    }

    private static void add(Set<Refusal> to, boolean holds, Refusal refusal) {
        if (holds) {
            to.add(refusal);
        }
    }
}
