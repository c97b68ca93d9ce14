package yardclock.sim.yard;

import yardclock.core.course.Checkpoint;
import yardclock.core.course.Contact;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Station;
import yardclock.core.course.Trigger;
import yardclock.sim.stage.Stage;
import yardclock.sim.units.VirtualUnit;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The stations and their sensors as they are, whoever may know of it. Lives on the stage. */
public final class Yard {
    private final Stage stage;
    private final ExamPlan plan;
    private final Map<String, VirtualUnit> units;
    private final Map<String, Spot> spots = new LinkedHashMap<>();
    private long bounces;

    public Yard(Stage stage, ExamPlan plan, Map<String, VirtualUnit> units) {
        this.stage = stage;
        this.plan = plan;
        this.units = units;
        plan.stations().forEach(station -> spots.put(station.id(), Spot.READY));
    }

    public Spot spot(String station) {
        return spots.get(station);
    }

    public void setSpot(String station, Spot spot) {
        spots.put(station, spot);
    }

    public Collection<VirtualUnit> units() {
        return units.values();
    }

    /** How many edges so far were chatter. */
    public long bounces() {
        return bounces;
    }

    /** Plans a move of a passage that starts at an instant. */
    public Stage.Planned plan(Move move, long startMicros) {
        long at = startMicros + move.offsetMicros();
        return stage.at(at, () -> play(move, at));
    }

    private void play(Move move, long at) {
        if (set(move.sensor(), move.state(), at) && move.bounce()) {
            bounces++;
        }
    }

    private boolean set(SensorRef sensor, int state, long at) {
        VirtualUnit unit = units.get(sensor.unit());
        if (unit.state(sensor.sensor()) == state) {
            return false;
        }
        unit.sense(sensor.sensor(), state, at);
        return true;
    }

    /** The crew puts everything of a station back into its place, now. */
    public void putBack(String stationId) {
        Station station = plan.station(stationId).orElseThrow();
        TreeSet<SensorRef> sensors = new TreeSet<>();
        triggers(station)
                .flatMap(trigger -> trigger.contacts().stream())
                .map(Contact::sensor)
                .filter(sensor -> !sensor.isOutput())
                .forEach(sensors::add);
        station.homeContacts().forEach(contact -> sensors.add(contact.sensor()));
        for (SensorRef sensor : sensors) {
            set(sensor, restState(sensor), stage.nowMicros());
        }
    }

    private static Stream<Trigger> triggers(Station station) {
        return Stream.concat(
                Stream.of(station.start(), station.finish()),
                station.checkpoints().stream().map(Checkpoint::trigger));
    }

    private int restState(SensorRef sensor) {
        return plan.fieldUnit(sensor.unit()).map(FieldUnit::sensors).orElseThrow().stream()
                .filter(planned -> planned.number() == sensor.sensor())
                .mapToInt(SensorPlan::restState)
                .findFirst()
                .orElseThrow();
    }
}
