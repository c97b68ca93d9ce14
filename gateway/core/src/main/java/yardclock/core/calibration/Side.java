package yardclock.core.calibration;

import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.health.Circumstances;
import yardclock.core.health.Unit;
import yardclock.core.time.Stamp;

import java.util.ArrayList;
import java.util.List;

/** One of the two sensors of a sitting, with the trips it has seen. */
final class Side {
    /** Five times what is needed; whoever trips on and on learns nothing more. */
    static final int TRIPS_MAX = 100;

    final SensorRef sensor;
    final Circumstances then;
    private final Unit unit;
    private final int restState;
    private final List<Trip> trips = new ArrayList<>();

    /**
     * @param stamped as the edge was stamped when it came
     * @param best by all exchanges so far
     * @param isFinal whether later exchanges change it no more
     */
    private record Trip(Unit.Waiting edge, Stamp stamped, Stamp best, boolean isFinal) {}

    Side(Unit unit, SensorRef sensor) {
        this.unit = unit;
        this.sensor = sensor;
        this.then = unit.status().circumstances();
        this.restState =
                unit.plan().sensors().stream()
                        .filter(s -> s.number() == sensor.sensor())
                        .mapToInt(SensorPlan::restState)
                        .findFirst()
                        .orElse(0);
    }

    /** Leaving the state at rest is a trip; going back to it says nothing new. */
    void take(Unit.Waiting edge) {
        if (edge.state() == restState || trips.size() >= TRIPS_MAX) {
            return;
        }
        unit.uncorrected(edge)
                .ifPresent(stamp -> trips.add(dated(new Trip(edge, stamp, stamp, false))));
    }

    /** Dates anew what later exchanges can still say more of. */
    void dateAnew() {
        trips.replaceAll(this::dated);
    }

    private Trip dated(Trip trip) {
        if (trip.isFinal()) {
            return trip;
        }
        Stamp best = unit.uncorrectedFinal(trip.edge()).orElse(trip.best());
        return new Trip(trip.edge(), trip.stamped(), best, unit.isFinal(trip.edge()));
    }

    int trips() {
        return trips.size();
    }

    /** How late this sensor may answer. */
    long lateMicros() {
        return unit.responseMicros(sensor.sensor());
    }

    List<Stamp> stamped() {
        return trips.stream().map(Trip::stamped).toList();
    }

    List<Stamp> best() {
        return trips.stream().map(Trip::best).toList();
    }

    /** The median guaranteed width of the stamps as they were made; 0 for none. */
    long usualWidthMicros() {
        long[] widths = trips.stream().mapToLong(t -> t.stamped().widthMicros()).sorted().toArray();
        return widths.length == 0 ? 0 : widths[widths.length / 2];
    }

    @Override
    public String toString() {
        return sensor + " " + then + " " + trips;
    }
}
