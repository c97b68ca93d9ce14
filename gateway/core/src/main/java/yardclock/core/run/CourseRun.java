package yardclock.core.run;

import yardclock.core.account.Account;
import yardclock.core.account.Cause;
import yardclock.core.account.TrayEdge;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.RosterLine;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Station;
import yardclock.core.fact.Canonical;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.passage.EdgeClocks;
import yardclock.core.passage.TimedEdge;
import yardclock.core.readiness.Checklist;
import yardclock.core.readiness.StandBy;
import yardclock.core.readiness.Surfaces;
import yardclock.core.reading.Crossed;
import yardclock.core.time.TimeLines;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Everyone and everything on the course: attempts in the roster's order, stations in the course's.
 *
 * <p>This is state with questions about it; {@link TurnJudge} concludes from edges and {@link
 * Movements} carries out what was ruled. Owned by one thread.
 */
public final class CourseRun {
    final ExamPlan plan;
    final Map<String, StationRun> stations = new LinkedHashMap<>();
    final Map<Integer, Attempt> attempts = new LinkedHashMap<>();

    /** Attempts that are void and run again, in the order in which that was decided. */
    final List<Attempt> earlierRuns = new ArrayList<>();

    private final Map<SensorRef, List<StationRun>> stationsOfSensor = new TreeMap<>();
    private final TurnJudge judge;
    final EdgeClocks clocks;
    final Crossed crossed;
    final TimeLines lines;
    final Account account;

    private final Waking waking = new Waking(this);
    private final Passing passing = new Passing(this);
    private final Whereabouts whereabouts = new Whereabouts(this);
    private final Restart restart = new Restart(this);
    private final ProofTurns proofTurns = new ProofTurns(this);
    private final StandBy standBy = new StandBy();
    private final StopButtons stopButtons;
    private final Checklist checklist;
    private final Surfaces surfaces;
    Course status = Course.RUNNING;
    String statusWords = "";
    long releases;
    long lastReleaseMicros = Long.MIN_VALUE;
    int speed = 1;

    /** Whether the course takes new candidates, and whether anyone may move. */
    public enum Course {
        RUNNING,
        HELD,
        STOPPED
    }

    /**
     * @param lines the gateway's time lines, which the caller ties as it learns of ties
     * @param account where edges are written down that no turn holds any more
     */
    public CourseRun(
            ExamPlan plan, EdgeClocks clocks, TimeLines lines, Account account, long nowMicros) {
        this.plan = plan;
        this.account = account;
        this.checklist = new Checklist(plan.startOfDay());
        this.surfaces = new Surfaces(plan, lines);
        this.clocks = clocks;
        this.crossed = new Crossed(plan);
        this.lines = lines;
        for (Station station : plan.stations()) {
            StationRun run = new StationRun(station, lines, this::putAway, nowMicros);
            stations.put(station.id(), run);
            for (SensorRef sensor : station.sensors()) {
                stationsOfSensor.computeIfAbsent(sensor, s -> new ArrayList<>()).add(run);
            }
        }
        this.judge = new TurnJudge(this);
        this.stopButtons = new StopButtons(this, plan);
    }

    public void enter(List<RosterLine> roster) {
        for (RosterLine line : roster) {
            attempts.putIfAbsent(line.number(), new Attempt(line.number(), line.group(), lines));
        }
    }

    /** Gateway time broke off and goes on somewhere else, from the present instant on. */
    public void beginLine(long nowMicros, Gathering out) {
        restart.begin(nowMicros, out);
    }

    /**
     * A counter that ran on has said, or said better, how the present time line lies to earlier
     * ones.
     *
     * @return whether instants of earlier lines were moved
     */
    public boolean tied(long nowMicros, Gathering out) {
        return restart.tied(nowMicros, out);
    }

    public void setSpeed(int speed) {
        this.speed = speed;
    }

    /** Routes an edge to the turn it belongs to by its time, and judges that turn anew. */
    public void edge(TimedEdge edge, long nowMicros, Gathering out) {
        List<StationRun> concerned = stationsOfSensor.getOrDefault(edge.sensor(), List.of());
        if (concerned.isEmpty()) {
            boolean isStop = stopButtons.has(edge.sensor());
            account.note(edge.key(), isStop ? Cause.STOP_BUTTON : Cause.NO_TRIGGER);
        }
        for (StationRun run : concerned) {
            if (proofTurns.takes(run, edge)) {
                continue;
            }
            Optional<Turn> turn = run.turnOf(edge);
            if (turn.isEmpty()) {
                run.strays++;
                noteStray(run, edge);
            } else if (take(turn.get(), edge, out)) {
                judge.judge(run, turn.get(), nowMicros, out);
            } else {
                run.strays++;
                account.note(edge.key(), Cause.RATTLE);
            }
        }
    }

    private void noteStray(StationRun run, TimedEdge edge) {
        if (run.hasPutAway()) {
            account.keep(new TrayEdge(run.station.id(), edge, Cause.TOO_LATE));
        } else {
            account.note(edge.key(), Cause.BEFORE_THE_DAY);
        }
    }

    /** A turn is too old to be kept: what became of its edges is written down. */
    private void putAway(Turn turn) {
        waking.forget(turn);
        TurnCauses causes = causes(turn);
        causes.each().forEach(account::note);
        causes.tray().forEach(account::keep);
    }

    TurnCauses causes(Turn turn) {
        return TurnCauses.of(turn, crossed, plan.timing().settleMicros());
    }

    /** What became of every edge, as it is known now. */
    public EdgeEnds edgeEnds() {
        return new EdgeEnds(this);
    }

    List<StationRun> stationsOf(SensorRef sensor) {
        return stationsOfSensor.getOrDefault(sensor, List.of());
    }

    /**
     * Asks a unit's clock for final stamps of the marks it made.
     *
     * @return the attempts with a mark that is final now
     */
    public List<Attempt> settle(String unit, Gathering out) {
        Settling settling = new Settling(clocks, plan.timing().resolutionMicros(), out);
        List<Attempt> settled = new ArrayList<>();
        for (StationRun run : stations.values()) {
            if (run.uses(unit)) {
                for (Turn turn : run.turns()) {
                    Attempt attempt = turn.owner;
                    if (attempt != null && settling.settle(turn, unit, attempt)) {
                        StationAgain.follow(turn, lines);
                        settled.add(attempt);
                    }
                }
            }
        }
        return settled;
    }

    /**
     * A sensor was tripped for another purpose: what it said before is no part of the next turn,
     * and its state is unknown until it says more.
     */
    public void forget(SensorRef sensor) {
        stationsOfSensor.getOrDefault(sensor, List.of()).stream()
                .map(StationRun::current)
                .filter(turn -> turn.number == 0)
                .forEach(
                        turn -> {
                            account.noteAll(turn.evidence.forget(sensor), Cause.CALIBRATION);
                            turn.touch();
                        });
    }

    private boolean take(Turn turn, TimedEdge edge, Gathering out) {
        if (turn.number == 0) {
            TimedEdge oldest = turn.evidence.addForgetting(edge);
            if (oldest != null) {
                account.note(oldest.key(), Cause.RATTLE);
            }
            return true;
        }
        boolean taken = turn.evidence.add(edge);
        if (!taken && turn.evidence.overflow() == 1) {
            String words = "A sensor rattles without end. Its edges are only journalled; use taps.";
            out.conclude(Fact.of(FactKind.ALARM, turn.number, turn.station.id(), words));
        }
        return taken;
    }

    /** Concludes what only waited for time to pass. */
    public void passTime(long nowMicros, Gathering out) {
        waking.passTime(nowMicros, out);
    }

    /** When time alone changes something next; MAX for never. */
    public long nextDeadlineMicros() {
        return waking.nextMicros();
    }

    /** Presses that had no time have one now: what they count in is judged anew. */
    public void date(Collection<TabletPress> presses, long nowMicros, Gathering out) {
        if (presses.isEmpty()) {
            return;
        }
        for (StationRun run : stations.values()) {
            for (Turn turn : run.turns()) {
                if (presses.stream().anyMatch(turn.taps::has)) {
                    judge.judge(run, turn, nowMicros, out);
                }
            }
        }
        for (Attempt attempt : everyRun()) {
            if (presses.stream().anyMatch(attempt::has)) {
                attempt.revision++;
                tellOfficialTime(attempt, out);
            }
        }
    }

    /** A station that is in use by this candidate is to be reset from now on. */
    void leaveStation(Attempt attempt, StationRun run, long nowMicros, Gathering out) {
        if (run.state == StationRun.State.IN_USE && run.current().number == attempt.number) {
            run.moveTo(StationRun.State.TO_BE_RESET, nowMicros);
            out.conclude(Fact.of(FactKind.STATION_TO_BE_RESET, 0, run.station.id(), ""));
        }
    }

    void endHold(Attempt attempt, TabletPress at, Gathering out) {
        int last = attempt.holds.size() - 1;
        Hold ended = attempt.holds.get(last).ended(at);
        attempt.holds.set(last, ended);
        attempt.revision++;
        String reason = ended.reason();
        long micros = ended.micros(lines);
        out.conclude(new Fact(FactKind.HOLD_OUT, attempt.number, "", "", null, micros, reason));
    }

    /** Tells the official time of one who is through, now and whenever it changed. */
    void tellOfficialTime(Attempt attempt, Gathering out) {
        if (attempt.phase == Attempt.Phase.FINISHED) {
            OfficialTime.of(plan, attempt).ifPresent(time -> out.conclude(time.fact()));
        }
    }

    public TimeLines lines() {
        return lines;
    }

    public Passing passing() {
        return passing;
    }

    public Whereabouts whereabouts() {
        return whereabouts;
    }

    /** The stations whose edges belong to a proof run. */
    public ProofTurns proofTurns() {
        return proofTurns;
    }

    Waking waking() {
        return waking;
    }

    TurnJudge judge() {
        return judge;
    }

    public ExamPlan plan() {
        return plan;
    }

    public Course status() {
        return status;
    }

    public String statusWords() {
        return statusWords;
    }

    /** Who of those that stand by was called away. */
    public StandBy standBy() {
        return standBy;
    }

    /** The wired stop buttons, and which of them are pressed. */
    public StopButtons stopButtons() {
        return stopButtons;
    }

    /** What must be there before anybody is released, and who answers for it. */
    public Checklist checklist() {
        return checklist;
    }

    /** What the ground and the weather are like, spot by spot. */
    public Surfaces surfaces() {
        return surfaces;
    }

    public int speed() {
        return speed;
    }

    public Collection<Attempt> attempts() {
        return Collections.unmodifiableCollection(attempts.values());
    }

    /** The attempts that count, and after them those that are void and run again. */
    public List<Attempt> everyRun() {
        List<Attempt> all = new ArrayList<>(attempts.values());
        all.addAll(earlierRuns);
        return all;
    }

    public Optional<Attempt> attempt(int number) {
        return Optional.ofNullable(attempts.get(number));
    }

    public Collection<StationRun> stations() {
        return Collections.unmodifiableCollection(stations.values());
    }

    public Optional<StationRun> station(String id) {
        return Optional.ofNullable(stations.get(id));
    }

    StationRun stationAt(int index) {
        return stations.get(plan.stations().get(index).id());
    }

    /** The start signal was asked for, and its time to answer is not over. */
    public boolean isSignalPending(Attempt attempt) {
        return attempt.signalAskedMicros >= 0 && !attempt.signalMissed;
    }

    /** Gateway time at which the release interval is over. */
    public long notBeforeMicros() {
        return lastReleaseMicros == Long.MIN_VALUE
                ? 0
                : lastReleaseMicros + plan.day().releaseIntervalMicros();
    }

    public void describe(Canonical text) {
        String numbers = releases + " " + lastReleaseMicros + " " + speed;
        text.line("course", status + " " + statusWords + " " + numbers);
        text.line("stand-by", standBy);
        if (!stopButtons.isEmpty()) {
            text.line("stop-buttons", stopButtons);
        }
        text.line("checklist", checklist);
        text.line("surfaces", surfaces);
        text.line("lines", lines + " " + restart);
        if (!proofTurns.isNone()) {
            text.line("proof", proofTurns);
        }
        stations.values().forEach(run -> text.line("station", run));
        everyRun().forEach(attempt -> text.line("attempt", attempt));
    }
}
