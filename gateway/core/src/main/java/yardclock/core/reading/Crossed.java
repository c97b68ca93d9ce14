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
 * pads, inductive sensors and buttons are practically not. And those that chatter. Immutable.
 */
public final class Crossed {
    private final TreeSet<SensorRef> sensors = new TreeSet<>();
    private final TreeSet<SensorRef> chattering = new TreeSet<>();

    public Crossed(ExamPlan plan) {
        for (FieldUnit unit : plan.fieldUnits()) {
            for (SensorPlan sensor : unit.sensors()) {
                SensorRef ref = new SensorRef(unit.id(), sensor.number());
                if (sensor.kind() == SensorKind.PHOTO_EYE || sensor.kind() == SensorKind.MAT) {
                    sensors.add(ref);
                }
                if (chatters(sensor.kind())) {
                    chattering.add(ref);
                }
            }
        }
    }

    /** What touches or is cut by something that moves; an output's own stamp does not chatter. */
    private static boolean chatters(SensorKind kind) {
        return switch (kind) {
            case PHOTO_EYE, MAT, CONTACT, TOUCH_PAD, PUSH_BUTTON -> true;
            case INDUCTIVE, VIBRATION, HORN, LIGHT -> false;
        };
    }

    /** How far from its edge a mark of this trigger can lie because an edge was missed. */
    public Chatter chatterOf(Trigger trigger) {
        return trigger.contacts().stream().anyMatch(c -> chattering.contains(c.sensor()))
                ? Chatter.of(trigger)
                : Chatter.NONE;
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
