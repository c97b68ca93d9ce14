package yardclock.core.run;

import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.time.Stamp;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntUnaryOperator;

/**
 * The wired stop buttons: whoever presses one stops everybody, as with the stop on a tablet.
 *
 * <p>A button is wired so that a cut cable reads pressed. So it stops by its state and not only by
 * its edge: a unit that starts with one pressed stops the course too, and while one is pressed
 * nobody restarts. What a unit says no more is not known, and is for people to look at. Belongs to
 * the state's thread.
 */
public final class StopButtons {
    /**
     * Real time after which a press that only now comes in stops nobody: it was kept by a unit
     * without its link, and who pressed has long been heard or has given up. One that is still
     * pressed is told by the unit's next sign of life.
     */
    static final long NEWS_REAL_MICROS = 10_000_000;

    private final CourseRun course;
    private final Map<SensorRef, SensorPlan> buttons = new TreeMap<>();
    private final TreeSet<SensorRef> pressed = new TreeSet<>();

    StopButtons(CourseRun course, ExamPlan plan) {
        this.course = course;
        for (FieldUnit unit : plan.fieldUnits()) {
            unit.sensors().stream()
                    .filter(sensor -> sensor.kind() == SensorKind.STOP_BUTTON)
                    .forEach(s -> buttons.put(new SensorRef(unit.id(), s.number()), s));
        }
    }

    public boolean has(SensorRef sensor) {
        return buttons.containsKey(sensor);
    }

    boolean isEmpty() {
        return buttons.isEmpty();
    }

    /** Whether one is held down, or its cable is cut. */
    public boolean isAnyPressed() {
        return !pressed.isEmpty();
    }

    /** Those that are, in words; empty for none. */
    public List<String> pressedWords() {
        return pressed.stream().map(this::name).toList();
    }

    /**
     * A button's edge, new and in its unit's order.
     *
     * @param stateNow the newest state of it, which an edge that was overtaken does not change
     * @param when by its unit's clock; null while that was never compared
     */
    public void edge(Press press, int stateNow, Stamp when, long nowMicros, Gathering out) {
        if (press.state() == 0 && stateNow == 0) {
            release(press.button(), out);
        } else if (press.state() == 1 && isNews(when, nowMicros)) {
            press(press.button(), instant(when, nowMicros), nowMicros, out);
            if (stateNow == 0) {
                release(press.button(), out);
            }
        } else if (press.state() == 1) {
            long seconds = (nowMicros - when.micros()) / (1_000_000L * course.speed);
            String words =
                    name(press.button())
                            + " was pressed "
                            + seconds
                            + " s ago, and its unit could not say so. Nobody was stopped by it.";
            out.conclude(Fact.aboutUnit(FactKind.ALARM, press.button().unit(), words));
        }
    }

    /** One edge of one button. */
    public record Press(SensorRef button, int state) {}

    private boolean isNews(Stamp when, long nowMicros) {
        return when == null || nowMicros - when.micros() <= NEWS_REAL_MICROS * course.speed;
    }

    private static Stamp instant(Stamp when, long nowMicros) {
        return when == null || when.micros() > nowMicros ? Stamp.exactly(nowMicros) : when;
    }

    /** A unit's sign of life, with the states it told. */
    public void states(String unit, IntUnaryOperator stateOf, long nowMicros, Gathering out) {
        for (SensorRef button : buttons.keySet()) {
            if (button.unit().equals(unit)) {
                int state = stateOf.applyAsInt(button.sensor());
                if (state == 1) {
                    press(button, Stamp.exactly(nowMicros), nowMicros, out);
                } else if (state == 0) {
                    release(button, out);
                }
            }
        }
    }

    /** A unit is not heard any more: whether its buttons are pressed nobody can say. */
    public void lose(String unit) {
        pressed.removeIf(button -> button.unit().equals(unit));
    }

    private void press(SensorRef button, Stamp at, long nowMicros, Gathering out) {
        if (!pressed.add(button)) {
            return;
        }
        out.conclude(
                Fact.aboutUnit(FactKind.STOP_BUTTON, button.unit(), name(button) + ": pressed"));
        if (course.status != CourseRun.Course.STOPPED) {
            TabletPress press = TabletPress.of(at, course.lines);
            new Movements(course, nowMicros, out).stopAll("Stopped by " + name(button), press);
        }
    }

    private void release(SensorRef button, Gathering out) {
        if (pressed.remove(button)) {
            out.conclude(
                    Fact.aboutUnit(
                            FactKind.STOP_BUTTON, button.unit(), name(button) + ": released"));
        }
    }

    private String name(SensorRef button) {
        return buttons.get(button).name().en() + " (" + button + ")";
    }

    @Override
    public String toString() {
        return pressed.toString();
    }
}
