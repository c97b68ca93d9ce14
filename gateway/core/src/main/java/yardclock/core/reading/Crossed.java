package yardclock.core.reading;

import yardclock.core.course.Contact;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Station;
import yardclock.core.course.Trigger;
import yardclock.core.course.Tripper;

import java.util.List;
import java.util.TreeSet;

/**
 * The sensors of a plan that others than the candidate trip in passing. A trigger's {@code
 * alsoTrippedBy} says so for its own sensors; where the plan says nothing, beams and mats are, and
 * contacts, pads, inductive sensors and buttons practically are not. And those that chatter.
 * Immutable.
 */
public final class Crossed {
    private final TreeSet<SensorRef> sensors = new TreeSet<>();
    private final TreeSet<SensorRef> chattering = new TreeSet<>();

    public Crossed(ExamPlan plan) {
        for (FieldUnit unit : plan.fieldUnits()) {
            for (SensorPlan sensor : unit.sensors()) {
                if (chatters(sensor.kind())) {
                    chattering.add(new SensorRef(unit.id(), sensor.number()));
                }
            }
        }
        for (Station station : plan.stations()) {
            for (Trigger trigger : station.triggers()) {
                for (Contact contact : trigger.contacts()) {
                    if (isCrossed(plan, trigger, contact.sensor())) {
                        sensors.add(contact.sensor());
                    }
                }
            }
        }
    }

    /** What touches or is cut by something that moves; an output's own stamp does not chatter. */
    private static boolean chatters(SensorKind kind) {
        return switch (kind) {
            case PHOTO_EYE, MAT, CONTACT, TOUCH_PAD, PUSH_BUTTON -> true;
            case INDUCTIVE, VIBRATION, STOP_BUTTON, HORN, LIGHT -> false;
        };
    }

    /** How far from its edge a mark of this trigger can lie because an edge was missed. */
    public Chatter chatterOf(Trigger trigger) {
        return trigger.contacts().stream().anyMatch(c -> chattering.contains(c.sensor()))
                ? Chatter.of(trigger)
                : Chatter.NONE;
    }

    private static boolean isCrossed(ExamPlan plan, Trigger trigger, SensorRef sensor) {
        List<Tripper> said = trigger.site().alsoTrippedBy();
        if (!said.isEmpty()) {
            return !said.equals(List.of(Tripper.NONE));
        }
        return plan.sensor(sensor)
                .filter(s -> s.kind() == SensorKind.PHOTO_EYE || s.kind() == SensorKind.MAT)
                .isPresent();
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
