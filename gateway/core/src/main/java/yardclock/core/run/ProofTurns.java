package yardclock.core.run;

import yardclock.core.account.Cause;
import yardclock.core.course.SensorRef;
import yardclock.core.fact.Gathering;
import yardclock.core.passage.TimedEdge;
import yardclock.core.time.Carry;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The stations whose edges belong to a proof run, now and in stretches of time that are over.
 *
 * <p>An edge stamped within one is the proof run's there, whenever it comes; at a station that is
 * not proven and shares the sensor it is judged as ever. No candidate's turn, result or tray gets
 * one. Belongs to the state's thread.
 */
public final class ProofTurns {
    /** Stretches of one station each that late edges are still told apart by; the newest. */
    private static final int STRETCHES_KEPT = 128;

    private final CourseRun course;
    private final Map<String, ProofTurn> turns = new LinkedHashMap<>();
    private final Deque<Stretch> over = new ArrayDeque<>();
    private long revision;

    ProofTurns(CourseRun course) {
        this.course = course;
    }

    /** From when to when a station was proven, on which time line. */
    private record Stretch(String station, int line, long fromMicros, long toMicros) {
        boolean holds(String id, TimedEdge edge) {
            long at = edge.stamp().micros();
            boolean isWithin = at >= fromMicros && at <= toMicros;
            return isWithin && edge.line() == line && station.equals(id);
        }

        Stretch carried(Carry carry) {
            long by = carry.of(line);
            long to = toMicros == Long.MAX_VALUE ? toMicros : toMicros + by;
            return new Stretch(station, line, fromMicros + by, to);
        }
    }

    /** Counts all that may change what is seen, but for the passing of time. */
    public long revision() {
        return revision;
    }

    public boolean isUnderWay() {
        return !turns.isEmpty();
    }

    /** The stations that are proven now, in the order of the course. */
    public Collection<String> stations() {
        return Collections.unmodifiableCollection(turns.keySet());
    }

    /** From now on these stations' edges are the proof run's. */
    public void begin(Collection<String> stations, long nowMicros) {
        for (String id : stations) {
            StationRun run = course.station(id).orElseThrow();
            clear(run.current());
            turns.put(id, new ProofTurn(run, course, nowMicros));
        }
        revision++;
    }

    /**
     * What its sensors said before is written down, and is no part of the next candidate's turn.
     */
    private void clear(Turn turn) {
        if (turn.number != 0) {
            return;
        }
        TurnCauses before = course.causes(turn);
        before.each().forEach(course.account::note);
        before.tray().forEach(course.account::keep);
        for (SensorRef sensor : turn.station.sensors()) {
            turn.evidence.forget(sensor);
        }
        turn.unassigned = 0;
        turn.touch();
    }

    /** It is over at an instant of the present time line. */
    public void end(long nowMicros) {
        close(nowMicros);
    }

    /** The time line it began on is over: what was stamped on it later is nobody's. */
    public void breakOff() {
        close(Long.MAX_VALUE);
    }

    private void close(long toMicros) {
        turns.forEach(
                (id, turn) ->
                        over.addLast(new Stretch(id, turn.line(), turn.fromMicros(), toMicros)));
        while (over.size() > STRETCHES_KEPT) {
            over.removeFirst();
        }
        turns.clear();
        revision++;
    }

    public void press(String station, String point, TabletPress press) {
        turns.get(station).press(point, press);
        revision++;
    }

    /** Asks the outputs of the first station for the start signal. */
    public void signal(Gathering out) {
        Movements.askForSignal(course, out);
    }

    /** Takes an edge that belongs to a proof run of this station; false for any other. */
    boolean takes(StationRun run, TimedEdge edge) {
        String id = run.station.id();
        ProofTurn turn = turns.get(id);
        boolean isNow = turn != null && turn.takes(edge);
        if (!isNow && over.stream().noneMatch(stretch -> stretch.holds(id, edge))) {
            return false;
        }
        if (isNow) {
            turn.take(edge);
            revision++;
        }
        course.account.note(edge.key(), Cause.PROOF_RUN);
        return true;
    }

    /** Every point of the stations that are proven, as it is seen by now. */
    public List<ProofSeen> seen(long nowMicros) {
        List<ProofSeen> seen = new ArrayList<>();
        turns.values().forEach(turn -> seen.addAll(turn.seen(nowMicros)));
        return seen;
    }

    void carry(Carry carry) {
        turns.values().forEach(turn -> turn.carry(carry));
        List<Stretch> moved = over.stream().map(stretch -> stretch.carried(carry)).toList();
        over.clear();
        over.addAll(moved);
    }

    boolean isNone() {
        return turns.isEmpty() && over.isEmpty();
    }

    @Override
    public String toString() {
        return turns.values() + " " + over;
    }
}
