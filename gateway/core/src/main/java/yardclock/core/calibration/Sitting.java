package yardclock.core.calibration;

import yardclock.core.course.SensorRef;
import yardclock.core.health.Circumstances;
import yardclock.core.health.Unit;
import yardclock.core.passage.TimedEdge;
import yardclock.core.time.Agreement;
import yardclock.core.time.Trips;

import java.util.List;
import java.util.Optional;

/**
 * A comparison under way: two sensors, tripped together again and again, and what that says so far.
 * Their edges are taken here and reach no station meanwhile. Owned by one thread.
 */
public final class Sitting {
    private final Side reference;
    private final Side other;
    private final long beganMicros;
    private Agreement agreement = Agreement.of(List.of(), 0);
    private Agreement stamped = Agreement.of(List.of(), 0);
    private String changedUnit = "";
    private Circumstances.Change change;

    Sitting(Side reference, Side other, long beganMicros) {
        this.reference = reference;
        this.other = other;
        this.beganMicros = beganMicros;
    }

    public SensorRef reference() {
        return reference.sensor;
    }

    public SensorRef other() {
        return other.sensor;
    }

    /** How often the reference's sensor was tripped so far, with or without a partner. */
    public int referenceTrips() {
        return reference.trips();
    }

    public int otherTrips() {
        return other.trips();
    }

    public long beganMicros() {
        return beganMicros;
    }

    public Agreement agreement() {
        return agreement;
    }

    /** What the trips speak against accepting; empty when nothing. */
    public Optional<Agreement.Objection> objection() {
        return agreement.objection(stamped);
    }

    /** What changed at one of the units since it began; nothing can be accepted then. */
    public Optional<Circumstances.Change> change() {
        return Optional.ofNullable(change);
    }

    /** The unit at which something changed; empty for none. */
    public String changedUnit() {
        return changedUnit;
    }

    /** Whether an edge belongs here: of one of the two sensors, and not from before it began. */
    boolean takes(TimedEdge edge) {
        boolean isOurs = edge.sensor().equals(reference()) || edge.sensor().equals(other());
        return isOurs && edge.stamp().micros() >= beganMicros;
    }

    void take(SensorRef sensor, Unit.Waiting edge) {
        Side side = sensor.equals(reference()) ? reference : other;
        if (!side.then.boot().equals(edge.boot())) {
            spoil(sensor.unit(), Circumstances.Change.BOOT);
            return;
        }
        side.take(edge);
        judge();
    }

    /** A unit's clock was compared once more: its trips can be dated better. */
    void compared(String unit) {
        if (unit.equals(reference().unit()) || unit.equals(other().unit())) {
            (unit.equals(reference().unit()) ? reference : other).dateAnew();
            judge();
        }
    }

    private void judge() {
        long late = lateMicros();
        agreement = Agreement.of(Trips.pairs(reference.best(), other.best()), late);
        stamped = Agreement.of(Trips.pairs(reference.stamped(), other.stamped()), late);
    }

    private long lateMicros() {
        return Math.max(reference.lateMicros(), other.lateMicros());
    }

    void look(String unit, Circumstances now) {
        for (Side side : List.of(reference, other)) {
            if (side.sensor.unit().equals(unit)) {
                side.then.changeTo(now).ifPresent(what -> spoil(unit, what));
            }
        }
    }

    private void spoil(String unit, Circumstances.Change what) {
        if (change == null) {
            change = what;
            changedUnit = unit;
        }
    }

    Calibration accepted(long nowMicros) {
        return new Calibration(
                reference.sensor,
                reference.then,
                other.sensor,
                other.then,
                agreement.medianMicros(),
                agreement.spreadMicros(),
                stamped.spreadMicros(),
                reference.usualWidthMicros(),
                other.usualWidthMicros(),
                agreement.kept(),
                agreement.pairs().size() - agreement.kept(),
                nowMicros);
    }

    @Override
    public String toString() {
        return beganMicros + " " + reference + " " + other + " " + changedUnit + " " + change;
    }
}
