package yardclock.sim.demo;

import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.sim.stage.Stage;
import yardclock.sim.units.PahoLink;
import yardclock.sim.units.UnitSettings;
import yardclock.sim.units.VirtualUnit;

import java.util.LinkedHashMap;
import java.util.Map;

/** Builds one virtual unit for each of the plan's, wired as the plan says. */
public final class FieldUnits {
    private FieldUnits() {}

    public static Map<String, VirtualUnit> build(
            Stage stage,
            ExamPlan plan,
            String brokerUri,
            Map<String, String> passwords,
            long seed) {
        Map<String, VirtualUnit> units = new LinkedHashMap<>();
        for (FieldUnit planned : plan.fieldUnits()) {
            UnitSettings settings = UnitSettings.of(planned, seed);
            String password = passwords.getOrDefault(planned.id(), "");
            PahoLink link = new PahoLink(stage, brokerUri, planned.id(), password);
            units.put(planned.id(), new VirtualUnit(stage, settings, link));
        }
        return units;
    }
}
