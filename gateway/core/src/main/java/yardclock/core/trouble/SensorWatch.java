package yardclock.core.trouble;

import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.health.Unit;
import yardclock.core.health.UnitStatus;
import yardclock.core.run.Attempt;
import yardclock.core.run.CourseRun;
import yardclock.core.run.StationRun;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Watches every sensor a station's triggers use.
 *
 * <p>A sensor away from its rest at a station that is ready and waits for nobody is not at rest
 * after {@link #PATIENCE_MICROS}, and stuck after the plan's longest plausible block. One without
 * any edge after {@link #ROUNDS} candidates was never seen. A trouble is over as soon as the sensor
 * says otherwise: it goes back to rest, or somebody trips it on the bench. Owned by one thread;
 * looks at a unit only when that unit spoke or a deadline it named has come.
 */
public final class SensorWatch {
    /** Somebody who walks through is gone by then; our choice. */
    static final long PATIENCE_MICROS = 10_000_000;

    /** So many candidates do not all miss a sensor that works; our choice. */
    static final int ROUNDS = 3;

    private final CourseRun course;
    private final Map<String, List<Watched>> ofUnit = new TreeMap<>();
    private final List<Watched> all = new ArrayList<>();
    private long dueMicros = Long.MAX_VALUE;

    public SensorWatch(CourseRun course, Collection<Unit> units) {
        this.course = course;
        for (StationRun run : course.stations()) {
            for (Unit unit : units) {
                for (SensorPlan sensor : unit.plan().sensors()) {
                    watch(run, unit, sensor);
                }
            }
        }
    }

    private void watch(StationRun run, Unit unit, SensorPlan sensor) {
        SensorRef ref = new SensorRef(unit.plan().id(), sensor.number());
        if (!ref.isOutput() && run.station().sensors().contains(ref)) {
            Watched watched = new Watched(run, unit, sensor);
            all.add(watched);
            ofUnit.computeIfAbsent(unit.plan().id(), id -> new ArrayList<>()).add(watched);
        }
    }

    /** A unit said something. */
    public void see(String unit, long nowMicros, Gathering out) {
        for (Watched watched : ofUnit.getOrDefault(unit, List.of())) {
            if (watched.see(nowMicros)) {
                end(watched, out);
            }
            boolean isUnseen =
                    watched.isNeeded && watched.run.rounds() >= ROUNDS && !watched.isSeen();
            if (isUnseen && watched.trouble() == null) {
                begin(watched, Trouble.NEVER_SEEN, out);
            }
            if (watched.dueMicros == Long.MAX_VALUE && watched.isAway()) {
                arm(watched);
                lookAtOnce(watched, nowMicros, out);
            }
        }
        due();
    }

    /** It may have been away for long before its station was idle, or its unit heard. */
    private void lookAtOnce(Watched watched, long nowMicros, Gathering out) {
        if (watched.dueMicros <= nowMicros) {
            watched.dueMicros = Long.MAX_VALUE;
            look(watched, nowMicros, out);
        }
    }

    private void due() {
        dueMicros = Long.MAX_VALUE;
        for (Watched watched : all) {
            dueMicros = Math.min(dueMicros, watched.dueMicros);
        }
    }

    /** Nobody is meant to be there: it is ready, and no candidate is on the way to it. */
    private boolean isIdle(StationRun run) {
        boolean isProven = course.proofTurns().stations().contains(run.station().id());
        if (run.state() != StationRun.State.READY || isProven) {
            return false;
        }
        int index = course.plan().indexOf(run.station().id());
        for (Attempt attempt : course.attempts()) {
            boolean isOnTheWay =
                    attempt.isOnCourse() && attempt.phase() != Attempt.Phase.AT_STATION;
            if (isOnTheWay && attempt.stationIndex() == index) {
                return false;
            }
        }
        return true;
    }

    /** When it must be looked at next, while nobody is meant to be there. */
    private void arm(Watched watched) {
        boolean isIdle = isIdle(watched.run);
        Trouble trouble = watched.trouble();
        boolean mayRest = trouble == null && !watched.isStoodOn;
        boolean mayStick =
                watched.longestMicros > 0 && (trouble == null || trouble == Trouble.NOT_AT_REST);
        if (!isIdle || !mayRest && !mayStick) {
            return;
        }
        long patience = mayRest ? PATIENCE_MICROS : watched.longestMicros;
        watched.dueMicros = watched.awaySinceMicros() + patience;
    }

    /** Concludes what only waited for time to pass. */
    public void passTime(long nowMicros, Gathering out) {
        if (nowMicros < dueMicros) {
            return;
        }
        all.forEach(watched -> lookAtOnce(watched, nowMicros, out));
        due();
    }

    private void look(Watched watched, long nowMicros, Gathering out) {
        boolean isIdle = isIdle(watched.run);
        boolean isUp = watched.unit.status().status() == UnitStatus.Status.UP;
        if (!isIdle || !isUp || !watched.isAway()) {
            return;
        }
        long away = nowMicros - watched.awaySinceMicros();
        if (watched.longestMicros > 0 && away >= watched.longestMicros) {
            begin(watched, Trouble.STUCK, out);
        } else if (!watched.isStoodOn && away >= PATIENCE_MICROS) {
            begin(watched, Trouble.NOT_AT_REST, out);
            arm(watched);
        } else {
            arm(watched);
        }
    }

    private static void begin(Watched watched, Trouble trouble, Gathering out) {
        if (watched.trouble() == trouble) {
            return;
        }
        if (watched.trouble() != null) {
            tell(watched, FactKind.ALARM_OVER, out);
        }
        watched.trouble(trouble);
        tell(watched, FactKind.ALARM, out);
    }

    private static void end(Watched watched, Gathering out) {
        tell(watched, FactKind.ALARM_OVER, out);
        watched.trouble(null);
    }

    private static void tell(Watched watched, FactKind kind, Gathering out) {
        SensorTrouble told = watched.told();
        out.conclude(Fact.of(kind, 0, told.station(), told.words()));
    }

    /** A person answers for every trouble this station has now; a new one holds it again. */
    public void goOnByHand(String station, String who) {
        all.stream()
                .filter(w -> w.run.station().id().equals(station) && w.holds())
                .forEach(w -> w.goOnByHand(who));
    }

    /** Whether a trouble nobody answered for keeps this station out of releases. */
    public boolean isHeld(String station) {
        for (Watched watched : all) {
            if (watched.holds() && watched.run.station().id().equals(station)) {
                return true;
            }
        }
        return false;
    }

    /** Whether any station is held. */
    public boolean isAnyHeld() {
        for (Watched watched : all) {
            if (watched.holds()) {
                return true;
            }
        }
        return false;
    }

    /** Whether there is any trouble, answered for or not; screens ask with each frame. */
    public boolean hasTroubles() {
        for (Watched watched : all) {
            if (watched.trouble() != null) {
                return true;
            }
        }
        return false;
    }

    /** All troubles, in the order of the course. */
    public List<SensorTrouble> troubles() {
        return all.stream().filter(w -> w.trouble() != null).map(Watched::told).toList();
    }

    /** When time alone changes something next; MAX for never. */
    public long nextDeadlineMicros() {
        return dueMicros;
    }

    @Override
    public String toString() {
        return all + " " + dueMicros;
    }
}
