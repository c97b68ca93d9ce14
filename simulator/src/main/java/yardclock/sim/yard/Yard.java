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
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** The stations and their sensors as they are, whoever may know of it. Lives on the stage. */
public final class Yard {
    private final Stage stage;
    private final ExamPlan plan;
    private final Map<String, VirtualUnit> units;
    private final Map<String, Spot> spots = new LinkedHashMap<>();
    private final Bodies bodies;
    private final Set<Integer> stopped = new TreeSet<>();
    private Diary diary = happening -> {};
    private Consumer<String> occupied = station -> {};
    private long bounces;

    public Yard(Stage stage, ExamPlan plan, Map<String, VirtualUnit> units) {
        this.stage = stage;
        this.plan = plan;
        this.units = units;
        this.bodies = new Bodies(plan);
        plan.stations().forEach(station -> spots.put(station.id(), Spot.READY));
    }

    public Spot spot(String station) {
        return spots.get(station);
    }

    public void setSpot(String station, Spot spot) {
        spots.put(station, spot);
        if (spot == Spot.OCCUPIED) {
            occupied.accept(station);
        }
    }

    public Collection<VirtualUnit> units() {
        return units.values();
    }

    /** How many edges so far were chatter. */
    public long bounces() {
        return bounces;
    }

    /** Who is told of everything that happens at the sensors. */
    public void keeps(Diary other) {
        diary = other;
    }

    /** Who is told that a station is being used, with its id. */
    public void onOccupied(Consumer<String> listener) {
        occupied = listener;
    }

    /** Plans a move of somebody's passage that starts at an instant. */
    public Stage.Planned plan(int who, Move move, long startMicros) {
        long at = startMicros + move.offsetMicros();
        return stage.at(at, () -> play(who, move, at));
    }

    /** A body makes a change now, or just before now. */
    public void play(int who, Move move, long at) {
        Diary.By by = new Diary.By(who, move.cause(), move.bounce());
        int shows = bodies.change(move, by);
        boolean isSeen = !move.missed() && set(move.sensor(), shows, at);
        bounces += isSeen && move.bounce() ? 1 : 0;
        boolean isMissed = move.missed() && shows != shown(move.sensor());
        Diary.Fate unseen = isMissed ? Diary.Fate.MISSED : Diary.Fate.HIDDEN;
        Diary.Fate fate = isSeen ? Diary.Fate.STAMPED : unseen;
        diary.happened(new Diary.Happening(at, move.sensor(), move.state(), by, fate));
    }

    /** Somebody goes away from every sensor, now. */
    public void stepsOff(int who, Cause cause) {
        for (SensorRef sensor : bodies.of(who, cause)) {
            play(who, new Move(0, sensor, 0, false, cause, false), stage.nowMicros());
        }
    }

    /** Whoever stops in the middle is cleared away with the station. */
    public void stopped(int who) {
        stopped.add(who);
    }

    private int shown(SensorRef sensor) {
        return units.get(sensor.unit()).state(sensor.sensor());
    }

    private boolean set(SensorRef sensor, int state, long at) {
        if (shown(sensor) == state) {
            return false;
        }
        units.get(sensor.unit()).sense(sensor.sensor(), state, at);
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
            putBack(sensor);
        }
    }

    private void putBack(SensorRef sensor) {
        int rest = bodies.putBack(sensor, restState(sensor), stopped);
        if (set(sensor, rest, stage.nowMicros())) {
            Diary.By crew = new Diary.By(0, Cause.CREW, false);
            long now = stage.nowMicros();
            diary.happened(new Diary.Happening(now, sensor, rest, crew, Diary.Fate.STAMPED));
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
