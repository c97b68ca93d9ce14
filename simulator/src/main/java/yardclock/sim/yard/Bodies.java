package yardclock.sim.yard;

import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;

/**
 * Who is in which beam and on which mat. Bodies superpose: a sensor is blocked while anybody blocks
 * it. A contact has no bodies but a state, which a knock turns over for a moment.
 */
final class Bodies {
    private final Map<SensorRef, Set<Body>> blocking = new TreeMap<>();
    private final Map<SensorRef, Integer> levels = new TreeMap<>();

    private record Body(int who, Cause cause) {}

    Bodies(ExamPlan plan) {
        for (FieldUnit unit : plan.fieldUnits()) {
            for (SensorPlan sensor : unit.sensors()) {
                SensorRef ref = new SensorRef(unit.id(), sensor.number());
                if (isCrossed(sensor.kind())) {
                    blocking.put(ref, new LinkedHashSet<>());
                } else {
                    levels.put(ref, sensor.restState());
                }
            }
        }
    }

    /** People walk through beams and over mats; nobody trips a contact by walking. */
    static boolean isCrossed(SensorKind kind) {
        return kind == SensorKind.PHOTO_EYE || kind == SensorKind.MAT;
    }

    /** A body makes a change; what the sensor should show then. */
    int change(Move move, Diary.By by) {
        SensorRef sensor = move.sensor();
        Set<Body> here = blocking.get(sensor);
        if (here == null) {
            return level(move);
        }
        Body body = new Body(by.who(), by.cause());
        if (move.state() == 1) {
            here.add(body);
        } else {
            here.remove(body);
        }
        return here.isEmpty() ? 0 : 1;
    }

    private int level(Move move) {
        if (move.cause() == Cause.JOSTLE) {
            int level = levels.get(move.sensor());
            return move.state() == 1 ? 1 - level : level;
        }
        levels.put(move.sensor(), move.state());
        return move.state();
    }

    /** Which sensors somebody blocks. */
    List<SensorRef> of(int who, Cause cause) {
        Body body = new Body(who, cause);
        List<SensorRef> found = new ArrayList<>();
        blocking.forEach(
                (sensor, here) -> {
                    if (here.contains(body)) {
                        found.add(sensor);
                    }
                });
        return found;
    }

    /** The crew clears a sensor of those who stopped; what it shows then. */
    int putBack(SensorRef sensor, int restState, Set<Integer> stopped) {
        Set<Body> here = blocking.get(sensor);
        if (here == null) {
            levels.put(sensor, restState);
            return restState;
        }
        here.removeIf(body -> stopped.contains(body.who()));
        return here.isEmpty() ? 0 : 1;
    }
}
