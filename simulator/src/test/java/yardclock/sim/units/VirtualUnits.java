package yardclock.sim.units;

import yardclock.sim.stage.Stage;

import java.util.List;

/** Units for tests that look at something else. */
public final class VirtualUnits {
    private VirtualUnits() {}

    /** A unit whose link never comes up. */
    public static VirtualUnit mute(Stage stage, String id) {
        List<Integer> atRest = List.of(0, 0, 0, 0, 0, 0, 0, 0);
        return new VirtualUnit(stage, new UnitSettings(id, atRest, 0, 1), new RecordingLink());
    }
}
