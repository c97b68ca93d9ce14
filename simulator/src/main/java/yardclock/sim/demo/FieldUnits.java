package yardclock.sim.demo;

import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorPlan;
import yardclock.sim.stage.Stage;
import yardclock.sim.units.PahoLink;
import yardclock.sim.units.UnitSettings;
import yardclock.sim.units.VirtualUnit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Builds one virtual unit for each of the plan's, wired as the plan says. */
public final class FieldUnits {
    private static final int SENSORS = 8;
    private static final long SLOWEST_PARTS_PER_BILLION = 10_000;
    private static final long FASTEST_PARTS_PER_BILLION = 40_000;

    private FieldUnits() {}

    public static Map<String, VirtualUnit> build(
            Stage stage,
            ExamPlan plan,
            String brokerUri,
            Map<String, String> passwords,
            long seed) {
        Map<String, VirtualUnit> units = new LinkedHashMap<>();
        for (FieldUnit planned : plan.fieldUnits()) {
            SplittableRandom random = new SplittableRandom(seed + planned.id().hashCode());
            long rate =
                    random.nextLong(SLOWEST_PARTS_PER_BILLION, FASTEST_PARTS_PER_BILLION)
                            * (random.nextBoolean() ? 1 : -1);
            UnitSettings settings =
                    new UnitSettings(planned.id(), atRest(planned), rate, random.nextLong());
            String password = passwords.getOrDefault(planned.id(), "");
            PahoLink link = new PahoLink(stage, brokerUri, planned.id(), password);
            units.put(planned.id(), new VirtualUnit(stage, settings, link));
        }
        return units;
    }

    private static List<Integer> atRest(FieldUnit planned) {
        List<Integer> states = new ArrayList<>();
        for (int number = 1; number <= SENSORS; number++) {
            int sensor = number;
            states.add(
                    planned.sensors().stream()
                            .filter(wired -> wired.number() == sensor)
                            .mapToInt(SensorPlan::restState)
                            .findFirst()
                            .orElse(-1));
        }
        return states;
    }
}
