package yardclock.core.reading;

import yardclock.core.course.Contact;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Trigger;

import java.util.TreeSet;

/**
 * The sensors of a plan that others than the candidate trip in passing: beams and mats. Contacts,
 * pads, inductive sensors and buttons are practically not. Immutable.
 */
public final class Crossed {
    private final TreeSet<SensorRef> sensors = new TreeSet<>();

    public Crossed(ExamPlan plan) {
        for (FieldUnit unit : plan.fieldUnits()) {
            for (SensorPlan sensor : unit.sensors()) {
                if (sensor.kind() == SensorKind.PHOTO_EYE || sensor.kind() == SensorKind.MAT) {
                    sensors.add(new SensorRef(unit.id(), sensor.number()));
                }
            }
        }
    }

    public boolean isCrossed(SensorRef sensor) {
        return sensors.contains(sensor);
    }

    public boolean isCrossed(Trigger trigger) {
        for (Contact contact : trigger.contacts()) {
            if (sensors.contains(contact.sensor())) {
                return true;
            }
        }
        return false;
    }
}
