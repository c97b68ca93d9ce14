package yardclock.core.ruling;

import yardclock.core.readiness.Surfaces;

import java.util.ArrayList;
import java.util.List;

/** What people note of the ground and the weather, judged and carried out. */
final class SurfaceActs {
    private SurfaceActs() {}

    static List<Refusal> against(Act.NoteSurface act, Surfaces surfaces) {
        List<Refusal> against = new ArrayList<>();
        if (act.words() != null && act.words().length() > Admission.WORDS_MAX) {
            against.add(Refusal.WORDS_TOO_LONG);
        }
        if (!surfaces.knows(act.where())) {
            against.add(Refusal.UNKNOWN_STATION);
        }
        return against;
    }

    static void carryOut(
            Act.NoteSurface act, Devices.Holder who, Surfaces surfaces, long nowMicros) {
        String words = act.words() == null ? "" : act.words().strip();
        surfaces.note(
                new Surfaces.Said(act.where(), act.ground(), act.glare(), act.gust(), words),
                who.person(),
                nowMicros);
    }
}
