package yardclock.core.run;

import yardclock.core.course.ExamPlan;
import yardclock.core.time.Carry;
import yardclock.core.time.Shift;
import yardclock.core.time.TimeLines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.LongUnaryOperator;

/**
 * One candidate's way through the course on this day.
 *
 * <p>The phase says where they are; the turns say what was seen. The revision counts everything
 * that changes what a proctor would be asked to rule on.
 */
public final class Attempt {
    /** Where a candidate is between the queue and the result. */
    public enum Phase {
        WAITING,
        RELEASED,
        WALKING,
        AT_STATION,
        FINISHED,
        DONE
    }

    final TimeLines lines;
    final int number;
    final int group;
    final int run;
    Phase phase = Phase.WAITING;
    String proctorDevice = "";
    long releasedMicros = -1;
    long releaseOrder = -1;

    /** When they left the station before: its finish, at the earliest. */
    long walkingFromMicros;

    int stationIndex;
    long revision;
    long signalAskedMicros = -1;
    boolean signalMissed;

    /** What ended the attempt before its time, as an outcome's word; or empty. */
    String ended = "";

    String endedWords = "";
    boolean told;

    /** What was known of the gateway's restarts during the run when it was done; or null. */
    private Shift keptShift;

    final List<Turn> turns = new ArrayList<>();

    /** Turns at stations that were run again: on record, and counted in nothing. */
    final List<Turn> setAside = new ArrayList<>();

    /** A station is to be run again; its start ends the hold. */
    boolean startsAgain;

    final List<Hold> holds = new ArrayList<>();
    final List<CalledCriterion> calls = new ArrayList<>();

    Attempt(int number, int group, TimeLines lines) {
        this(number, group, 1, lines);
    }

    private Attempt(int number, int group, int run, TimeLines lines) {
        this.lines = lines;
        this.number = number;
        this.group = group;
        this.run = run;
    }

    /** The candidate's next attempt, of which nothing is known yet. */
    Attempt again() {
        return new Attempt(number, group, run + 1, lines);
    }

    public int number() {
        return number;
    }

    public int group() {
        return group;
    }

    /** The first one is 1; each later one was granted for cause, and the last one counts. */
    public int run() {
        return run;
    }

    public Phase phase() {
        return phase;
    }

    public String proctorDevice() {
        return proctorDevice;
    }

    public long releasedMicros() {
        return releasedMicros;
    }

    public int stationIndex() {
        return stationIndex;
    }

    public long revision() {
        return revision;
    }

    public long signalAskedMicros() {
        return signalAskedMicros;
    }

    public String ended() {
        return ended;
    }

    public String endedWords() {
        return endedWords;
    }

    public boolean isTold() {
        return told;
    }

    public List<Turn> turns() {
        return turns;
    }

    /** Those that were set aside as well. */
    public List<Turn> allTurns() {
        List<Turn> all = new ArrayList<>(setAside);
        all.addAll(turns);
        return all;
    }

    /** The newest of those that count. */
    public Optional<Turn> lastTurn() {
        return turns.isEmpty() ? Optional.empty() : Optional.of(turns.get(turns.size() - 1));
    }

    /** Held until the start of a station that is run again. */
    public boolean startsAgain() {
        return startsAgain;
    }

    public List<Hold> holds() {
        return holds;
    }

    /** How long a hold of this attempt was as pressed; −1 while one of its ends has no time. */
    public long heldMicros(Hold hold) {
        return hold.micros(lines);
    }

    public List<CalledCriterion> calls() {
        return calls;
    }

    /** Released and neither through nor out. */
    public boolean isOnCourse() {
        return phase == Phase.RELEASED || phase == Phase.WALKING || phase == Phase.AT_STATION;
    }

    public boolean isHeld() {
        return !holds.isEmpty() && holds.get(holds.size() - 1).isOpen();
    }

    /** Whether a hold began or ended with a press that has no time. */
    public boolean hasUntimedHold() {
        return holds.stream().anyMatch(hold -> !hold.isOpen() && !hold.isDated());
    }

    boolean has(TabletPress press) {
        return allTurns().stream().anyMatch(turn -> turn.taps.has(press))
                || holds.stream().anyMatch(hold -> hold.has(press))
                || calls.stream().anyMatch(call -> call.press() == press);
    }

    public Optional<Turn> turnAt(String station) {
        return Optional.ofNullable(at(station));
    }

    /**
     * The turn at a station, or null. The last one is looked at first: of everybody, screens ask
     * for the two ends of the run.
     */
    Turn at(String station) {
        int last = turns.size() - 1;
        if (last >= 0 && turns.get(last).isAt(station)) {
            return turns.get(last);
        }
        for (int i = 0; i < last; i++) {
            if (turns.get(i).isAt(station)) {
                return turns.get(i);
            }
        }
        return null;
    }

    public boolean hasFault() {
        for (CalledCriterion call : calls) {
            if (call.fault()) {
                return true;
            }
        }
        return false;
    }

    public long warnings(String station, String criterion) {
        return called(station, criterion, false);
    }

    public long faults(String station, String criterion) {
        return called(station, criterion, true);
    }

    private long called(String station, String criterion, boolean fault) {
        long count = 0;
        for (CalledCriterion call : calls) {
            boolean isMeant =
                    call.fault() == fault
                            && call.station().equals(station)
                            && call.criterion().equals(criterion);
            count += isMeant ? 1 : 0;
        }
        return count;
    }

    /** Everything after the finish was ruled on, or the attempt ended early. */
    public boolean isDone() {
        return phase == Phase.DONE;
    }

    /** Nothing more is decided here: what decided stays. */
    void end(ExamPlan plan) {
        keptShift = OfficialTime.shift(plan, this).orElse(null);
        phase = Phase.DONE;
    }

    /** A split is open again: so is the attempt, unless something else had ended it. */
    void reopen() {
        if (phase == Phase.DONE && ended.isEmpty()) {
            phase = Phase.FINISHED;
            keptShift = null;
        }
    }

    Optional<Shift> keptShift() {
        return Optional.ofNullable(keptShift);
    }

    /** Moves every instant of this attempt to where its time line is now; its turns move alone. */
    void carry(Carry carry, LongUnaryOperator others) {
        releasedMicros = others.applyAsLong(releasedMicros);
        walkingFromMicros = others.applyAsLong(walkingFromMicros);
        signalAskedMicros = others.applyAsLong(signalAskedMicros);
    }

    @Override
    public String toString() {
        return number
                + (run == 1 ? "" : "/" + run)
                + " "
                + group
                + " "
                + phase
                + " "
                + proctorDevice
                + " "
                + releasedMicros
                + " "
                + releaseOrder
                + " "
                + walkingFromMicros
                + " "
                + stationIndex
                + " "
                + revision
                + " "
                + signalAskedMicros
                + " "
                + signalMissed
                + " "
                + ended
                + " "
                + endedWords
                + " "
                + told
                + " "
                + keptShift
                + " "
                + holds
                + " "
                + calls
                + " "
                + turns
                + (setAside.isEmpty() ? "" : " " + startsAgain + " set aside " + setAside);
    }
}
