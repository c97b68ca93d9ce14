package yardclock.core.calibration;

import yardclock.core.course.SensorRef;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.health.Circumstances;
import yardclock.core.health.Unit;
import yardclock.core.passage.TimedEdge;
import yardclock.core.run.CourseRun;
import yardclock.core.time.Correction;

import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The sitting under way, the calibrations that stand, and those that ended.
 *
 * <p>Each unit is calibrated against at most one other, so the standing ones form trees; the root
 * of one is moved by nothing, and a unit's correction is the sum of the medians on the way to it.
 * Corrections follow from what stands, and are set anew whenever that changes. Owned by one thread.
 */
public final class Calibrations {
    static final int ENDED_SHOWN = 12;

    private final Map<String, Unit> units;
    private final CourseRun course;
    private final Map<String, Calibration> standing = new LinkedHashMap<>();
    private final Deque<Calibration.Ended> ended = new ArrayDeque<>();
    private Sitting sitting;
    private long revision;

    public Calibrations(Map<String, Unit> units, CourseRun course) {
        this.units = units;
        this.course = course;
    }

    /** Changes whenever a person looking at the sitting would see something else. */
    public long revision() {
        return revision;
    }

    public Optional<Sitting> sitting() {
        return Optional.ofNullable(sitting);
    }

    public Collection<Calibration> standing() {
        return Collections.unmodifiableCollection(standing.values());
    }

    /** The newest first. */
    public Collection<Calibration.Ended> ended() {
        return Collections.unmodifiableCollection(ended);
    }

    public Optional<Unit> unit(String id) {
        return Optional.ofNullable(units.get(id));
    }

    /** Whether nobody is at a station of these units, or has still to come by one. */
    public boolean isClear(SensorRef reference, SensorRef other) {
        return course.whereabouts().isClearOf(reference.unit())
                && course.whereabouts().isClearOf(other.unit());
    }

    /** Whether the reference itself is known only by way of the other. */
    public boolean isRing(String reference, String other) {
        String at = reference;
        while (standing.containsKey(at) && !at.equals(other)) {
            at = standing.get(at).reference().unit();
        }
        return at.equals(other);
    }

    public void begin(SensorRef reference, SensorRef other, long nowMicros, Gathering out) {
        Side first = new Side(units.get(reference.unit()), reference);
        Side second = new Side(units.get(other.unit()), other);
        sitting = new Sitting(first, second, nowMicros);
        revision++;
        conclude(FactKind.CALIBRATION_BEGUN, other.unit(), 0, "against " + reference, out);
    }

    /** The sitting's median counts from now on. */
    public void accept(long nowMicros, Gathering out) {
        Calibration accepted = sitting.accepted(nowMicros);
        close();
        String unit = accepted.other().unit();
        Calibration before = standing.remove(unit);
        if (before != null) {
            keep(new Calibration.Ended(before, unit, Circumstances.Change.REPLACED, nowMicros));
        }
        standing.put(unit, accepted);
        correct(nowMicros);
        conclude(FactKind.CALIBRATED, unit, accepted.medianMicros(), "accepted", out);
    }

    /** Ends the sitting without a result. */
    public void breakOff(String why, Gathering out) {
        String unit = sitting.other().unit();
        close();
        conclude(FactKind.CALIBRATION_BROKEN_OFF, unit, 0, why, out);
    }

    private void close() {
        course.forget(sitting.reference());
        course.forget(sitting.other());
        sitting = null;
        revision++;
    }

    /** The course goes first: whoever is sent to it ends a sitting at a station on the way. */
    public void giveWay(Gathering out) {
        if (sitting != null && !isClear(sitting.reference(), sitting.other())) {
            breakOff("A candidate was sent to a station of these units.", out);
        }
    }

    /** Whether an edge belongs to the sitting and to no station. */
    public boolean takes(TimedEdge edge) {
        return sitting != null && sitting.takes(edge);
    }

    public void take(SensorRef sensor, Unit.Waiting edge) {
        sitting.take(sensor, edge);
        revision++;
    }

    /** A unit's clock was compared once more. */
    public void compared(String unit) {
        if (sitting != null) {
            sitting.compared(unit);
        }
    }

    /** A unit said how it is: what rested on its being otherwise ends. */
    public void look(String unit, long nowMicros, Gathering out) {
        Circumstances now = units.get(unit).status().circumstances();
        if (sitting != null) {
            sitting.look(unit, now);
        }
        for (Calibration calibration : List.copyOf(standing.values())) {
            change(calibration, unit, now)
                    .ifPresent(why -> end(calibration, unit, why, nowMicros, out));
        }
    }

    private static Optional<Circumstances.Change> change(
            Calibration calibration, String unit, Circumstances now) {
        if (calibration.reference().unit().equals(unit)) {
            return calibration.referenceThen().changeTo(now);
        }
        return calibration.other().unit().equals(unit)
                ? calibration.otherThen().changeTo(now)
                : Optional.empty();
    }

    private void end(
            Calibration calibration,
            String unit,
            Circumstances.Change why,
            long nowMicros,
            Gathering out) {
        standing.remove(calibration.other().unit());
        keep(new Calibration.Ended(calibration, unit, why, nowMicros));
        correct(nowMicros);
        revision++;
        conclude(FactKind.CALIBRATION_ENDED, unit, calibration.medianMicros(), why.words(), out);
        String pair = calibration.reference().unit() + ", " + calibration.other().unit();
        String words = "Calibration of " + pair + " ended. " + why.words();
        out.conclude(Fact.aboutUnit(FactKind.ALARM, unit, words));
    }

    private void keep(Calibration.Ended newest) {
        ended.addFirst(newest);
        if (ended.size() > ENDED_SHOWN) {
            ended.removeLast();
        }
    }

    /** Gateway time goes on elsewhere: no stamp of now compares with those of then. */
    public void interrupt(long nowMicros, Gathering out) {
        if (sitting != null) {
            breakOff(Circumstances.Change.TIME_LINE.words(), out);
        }
        for (Calibration calibration : List.copyOf(standing.values())) {
            String unit = calibration.other().unit();
            end(calibration, unit, Circumstances.Change.TIME_LINE, nowMicros, out);
        }
    }

    private void correct(long nowMicros) {
        for (Unit unit : units.values()) {
            String id = unit.plan().id();
            unit.corrections().set(correction(id), unit.status().boot(), nowMicros);
        }
    }

    /** What follows for a unit from all that stands; empty for one that was never compared. */
    public Optional<Correction> correction(String unit) {
        Calibration own = standing.get(unit);
        if (own != null) {
            long micros = micros(own.reference().unit()) - own.medianMicros();
            return Optional.of(
                    Correction.of(micros, own.stampedSpreadMicros(), own.otherWidthMicros()));
        }
        return standing.values().stream()
                .filter(c -> c.reference().unit().equals(unit))
                .map(c -> Correction.of(0, c.stampedSpreadMicros(), c.referenceWidthMicros()))
                .reduce((a, b) -> a.declaredMicros() >= b.declaredMicros() ? a : b);
    }

    private long micros(String unit) {
        return correction(unit).map(Correction::micros).orElse(0L);
    }

    /** The unit all of whose tree is measured against: splits within one tree can be declared. */
    public String root(String unit) {
        String at = unit;
        while (standing.containsKey(at)) {
            at = standing.get(at).reference().unit();
        }
        return at;
    }

    private static void conclude(
            FactKind kind, String unit, long micros, String words, Gathering out) {
        out.conclude(new Fact(kind, 0, unit, "", null, micros, words));
    }

    @Override
    public String toString() {
        return revision + " " + sitting + " " + standing + " " + ended;
    }
}
