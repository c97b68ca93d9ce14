package yardclock.sim.people;

import yardclock.core.course.SensorRef;
import yardclock.core.course.Station;
import yardclock.sim.stage.Stage;
import yardclock.sim.yard.Cause;
import yardclock.sim.yard.Idle;
import yardclock.sim.yard.Move;
import yardclock.sim.yard.Press;
import yardclock.sim.yard.Script;
import yardclock.sim.yard.Sight;
import yardclock.sim.yard.Spot;
import yardclock.sim.yard.Yard;

import java.util.ArrayList;
import java.util.List;

/**
 * A person on the course, who does what their {@link CandidateRun} says. Lives on the stage.
 *
 * <p>Called, they walk to the start and wait for the horn; then each station takes what was drawn,
 * and before each next one the companion says when to begin.
 */
public final class Candidate {
    /** Where in the day a candidate is. */
    public enum Phase {
        QUEUED,
        COMING,
        AT_START,
        WORKING,
        WALKING,
        DONE
    }

    private final Stage stage;
    private final Yard yard;
    private final List<Station> course;
    private final CandidateRun run;
    private final TruthBook book;
    private final List<Stage.Planned> ahead = new ArrayList<>();
    private final List<Stage.Planned> idling = new ArrayList<>();
    private final Companion alone;
    private Companion companion;
    private Phase phase = Phase.QUEUED;
    private int index;
    private int begun;
    private int finished;

    public Candidate(
            Stage stage, Yard yard, List<Station> course, CandidateRun run, TruthBook book) {
        this.stage = stage;
        this.yard = yard;
        this.course = List.copyOf(course);
        this.run = run;
        this.book = book;
        this.alone = new Alone(stage, yard, this.course);
        this.companion = alone;
    }

    public int number() {
        return run.number();
    }

    public CandidateRun run() {
        return run;
    }

    public Phase phase() {
        return phase;
    }

    /** How many stations this candidate has begun; the same or one more than were finished. */
    public int begun() {
        return begun;
    }

    public int finished() {
        return finished;
    }

    public void accompaniedBy(Companion other) {
        companion = other;
    }

    /** Somebody at a tablet of their own has taken over from the companion. */
    public void leftAlone() {
        companion = alone;
    }

    /** Called from the queue: walks to the start. */
    public void come() {
        if (phase == Phase.QUEUED) {
            phase = Phase.COMING;
            plan(stage.nowMicros() + run.toStartMicros(), this::stand);
        }
    }

    private void stand() {
        phase = Phase.AT_START;
        companion.standsAtStart(this);
    }

    /** The start signal was given while the candidate stood at the start. */
    public void hears(long hornMicros) {
        if (phase == Phase.AT_START) {
            begin(0, hornMicros);
        }
    }

    /**
     * The companion lets the candidate begin the next station. The instant may have passed by a
     * little when the machine is late: then the edges arrive late, with their right stamps.
     */
    public void startAt(int stationIndex, long startMicros) {
        if (phase == Phase.WALKING && stationIndex == index) {
            begin(stationIndex, startMicros);
        }
    }

    private void begin(int at, long start) {
        phase = Phase.WORKING;
        index = at;
        ahead.clear();
        stopIdling();
        Script script = run.scripts().get(at);
        String station = course.get(at).id();
        yard.setSpot(station, Spot.OCCUPIED);
        for (Move move : script.moves()) {
            ahead.add(yard.plan(number(), move, start));
        }
        plan(start, () -> noteBegun(station, start));
        for (Sight sight : script.sights()) {
            String seen = sight.checkpoint();
            plan(start + sight.offsetMicros(), () -> companion.sees(this, station, seen));
        }
        for (Press press : script.presses()) {
            plan(start + press.offsetMicros(), () -> companion.taps(this, station, press.point()));
        }
        if (run.mishap().isAt(at)) {
            long into = script.finishMicros() * run.mishap().permille() / 1_000;
            plan(start + into, this::meetMishap);
        }
        long stamp = start + script.finishStampMicros();
        plan(stamp, () -> book.finished(number(), station, stamp));
        plan(start + script.finishMicros(), () -> finish(start + script.finishMicros()));
    }

    private void noteBegun(String station, long start) {
        begun = index + 1;
        book.started(number(), station, start);
        companion.begun(this, index);
    }

    private void meetMishap() {
        Mishap.Kind kind = run.mishap().kind();
        int where = index;
        if (kind == Mishap.Kind.WITHDRAWAL) {
            stop();
        }
        companion.mishap(this, where, kind);
    }

    private void finish(long at) {
        int done = index;
        finished = done + 1;
        yard.setSpot(course.get(done).id(), Spot.TO_BE_PUT_BACK);
        if (done + 1 == course.size()) {
            phase = Phase.DONE;
        } else {
            phase = Phase.WALKING;
            index = done + 1;
            long plannedStart = at + run.walksMicros().get(done);
            plan(plannedStart - Script.LEAD_MICROS, () -> near(plannedStart));
        }
        companion.finished(this, done);
    }

    private void near(long plannedStart) {
        companion.nears(this, index, plannedStart);
        if (phase == Phase.WALKING) {
            run.scripts().get(index).idles().forEach(this::idle);
        }
    }

    /** Kept waiting: stands about where the sensors are. */
    private void idle(Idle idle) {
        idling.add(stage.afterMicros(idle.fromMicros(), () -> idleAt(idle.sensor(), 1)));
        long until = idle.fromMicros() + idle.lastsMicros();
        idling.add(stage.afterMicros(until, () -> idleAt(idle.sensor(), 0)));
    }

    private void idleAt(SensorRef sensor, int state) {
        Move move = new Move(0, sensor, state, false, Cause.WAITING, false);
        yard.play(number(), move, stage.nowMicros());
    }

    private void stopIdling() {
        idling.forEach(Stage.Planned::drop);
        idling.clear();
        yard.stepsOff(number(), Cause.WAITING);
    }

    /** Gives up or is stopped: nothing of what was still to come happens. */
    public void stop() {
        if (phase == Phase.WORKING) {
            yard.setSpot(course.get(index).id(), Spot.TO_BE_PUT_BACK);
        }
        if (phase != Phase.DONE) {
            ahead.forEach(Stage.Planned::drop);
            stopIdling();
            yard.stopped(number());
            phase = Phase.DONE;
        }
    }

    private void plan(long at, Runnable act) {
        ahead.add(stage.at(at, act));
    }
}
