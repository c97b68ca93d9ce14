package yardclock.sim.rough;

import yardclock.core.course.Contact;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Trigger;

import java.util.ArrayList;
import java.util.List;

/** A sensor that people walk through or over: a beam or a mat. */
record Crossed(SensorRef sensor, SensorKind kind) {
    private static final List<SensorKind> BODIES = List.of(SensorKind.PHOTO_EYE, SensorKind.MAT);

    /** Those of a trigger, in its order. */
    static List<Crossed> of(ExamPlan plan, Trigger trigger) {
        List<Crossed> found = new ArrayList<>();
        for (Contact contact : trigger.contacts()) {
            plan.sensor(contact.sensor())
                    .map(sensor -> new Crossed(contact.sensor(), sensor.kind()))
                    .filter(each -> BODIES.contains(each.kind()))
                    .ifPresent(found::add);
        }
        return found;
    }

    static List<Crossed> all(ExamPlan plan) {
        return ofKinds(plan, BODIES);
    }

    static List<Crossed> contacts(ExamPlan plan) {
        return ofKinds(plan, List.of(SensorKind.CONTACT));
    }

    private static List<Crossed> ofKinds(ExamPlan plan, List<SensorKind> kinds) {
        List<Crossed> found = new ArrayList<>();
        for (FieldUnit unit : plan.fieldUnits()) {
            for (SensorPlan sensor : unit.sensors()) {
                if (kinds.contains(sensor.kind())) {
                    SensorRef ref = new SensorRef(unit.id(), sensor.number());
                    found.add(new Crossed(ref, sensor.kind()));
                }
            }
        }
        return found;
    }
}
