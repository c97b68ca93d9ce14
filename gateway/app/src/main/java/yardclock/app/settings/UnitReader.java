package yardclock.app.settings;

import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the field units and what is wired to them, and notes it for the triggers. */
final class UnitReader {
    private final Wiring wiring;

    UnitReader(Wiring wiring) {
        this.wiring = wiring;
    }

    List<FieldUnit> read(Block plan) {
        UniqueNames ids = new UniqueNames();
        List<FieldUnit> units = new ArrayList<>();
        for (Block block : plan.blocks("fieldUnits", "fieldUnit", PlanLimits.FIELD_UNITS)) {
            FieldUnit unit = unit(block);
            ids.add(block, "id", unit.id());
            units.add(unit);
        }
        return units;
    }

    private FieldUnit unit(Block block) {
        String id = block.id("id");
        UniqueNames numbers = new UniqueNames();
        List<SensorPlan> sensors = new ArrayList<>();
        for (Block inside : block.blocks("sensors", "sensor", PlanLimits.SENSORS)) {
            SensorPlan sensor = sensor(inside, id);
            numbers.add(inside, "number", Integer.toString(sensor.number()));
            sensors.add(sensor);
        }
        FieldUnit unit = new FieldUnit(id, block.text("place", PlanLimits.NAME), sensors);
        block.close();
        return unit;
    }

    private SensorPlan sensor(Block block, String unit) {
        int number = (int) block.count("number", PlanLimits.SENSOR_NUMBER);
        Optional<SensorKind> kind = block.word("kind", SensorKind.class);
        SensorPlan sensor =
                new SensorPlan(
                        number,
                        kind.orElse(SensorKind.CONTACT),
                        block.text("name", PlanLimits.NAME),
                        block.state("rest", 0),
                        block.yesNo("inverted", false),
                        block.yesNo("pullUp", true),
                        block.time("response", PlanLimits.RESPONSE));
        block.close();
        if (number > 0) {
            SensorRef ref = new SensorRef(unit, number);
            wiring.add(ref, sensor.kind());
            kind.ifPresent(k -> checkSide(block, ref, k));
        }
        return sensor;
    }

    private static void checkSide(Block block, SensorRef ref, SensorKind kind) {
        boolean isOutputKind = kind == SensorKind.HORN || kind == SensorKind.LIGHT;
        if (isOutputKind && !ref.isOutput()) {
            block.wrong("number", "a horn or light is an output", "9 to 12");
        }
        if (!isOutputKind && ref.isOutput()) {
            block.wrong("number", "9 to 12 are outputs, for a horn or light", "1 to 8");
        }
    }
}
