package yardclock.core.run;

import yardclock.core.course.Checkpoint;
import yardclock.core.course.Station;
import yardclock.core.ordering.Evidence;
import yardclock.core.reading.PointReadings;
import yardclock.core.time.Carry;
import yardclock.core.time.TimeLines;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongUnaryOperator;
import java.util.function.Predicate;
import java.util.function.Supplier;

/**
 * One stretch of time at one station: from when it was ready until it is ready again. It belongs to
 * one candidate, or to nobody while no start was seen.
 *
 * <p>Automatic marks are derived from the evidence and may change until a ruling; hand marks and
 * rulings are kept beside them.
 */
public final class Turn {
    Station station;
    private final int line;
    final TurnTimes times;
    long openMicros;
    final Evidence evidence;

    /**
     * Edges before this do not count towards the start: the candidate was elsewhere, or not sent.
     */
    long startFromMicros = Long.MAX_VALUE;

    int number;

    /** Whose attempt it is; null while it is nobody's. A number can have several attempts. */
    Attempt owner;

    Mark start;
    Mark finish;
    boolean finishConcluded;
    boolean finishByFallback;
    boolean late;

    /** The split by what came after the ruling; −1 while that is not known. */
    long lateMicros = -1;

    /**
     * What was usual when its finish was concluded; null before. It does not change on a screen.
     */
    UsualTimes.Window usual;

    /** Every unit of the station has handed in what it stamped up to the marks. */
    boolean isPassed;

    /** How the evidence of the start can be understood, best first; the first made the mark. */
    PointReadings startReadings = PointReadings.NONE;

    PointReadings finishReadings = PointReadings.NONE;

    /** A sensor and the proctor's tap can't both be right. */
    boolean disagrees;

    /** A start without a time was not before this: the candidate was elsewhere, or not sent. */
    long untimedFromMicros;

    /** Which of its owner's holds its start ended: the station was run again. −1 for none. */
    int endsHold = -1;

    /** The attempt ended here before its time, or runs the station again. */
    boolean isClosed;

    /** When this turn must be judged again though nothing happens; MAX for never. */
    long wakeMicros = Long.MAX_VALUE;

    /** What became of its edges, until it is judged again; no part of the state. */
    private TurnCauses causes;

    /** No mark waits for its final stamp, until something changes again; no part of the state. */
    boolean isFinal;

    /** Start passages seen while nobody was expected. */
    int unassigned;

    /** Start passages before this are not counted again: another wording of the trigger did. */
    private boolean isAdjusted;

    final Map<String, List<Mark>> checkpoints = new LinkedHashMap<>();
    final Taps taps;
    final Rulings rulings = new Rulings();
    final Strikes strikes = new Strikes();
    final Assigned assigned;

    Turn(Station station, TimeLines lines, long openMicros) {
        this.station = station;
        this.line = lines.current();
        this.times = new TurnTimes(this, lines);
        this.openMicros = openMicros;
        this.evidence = new Evidence();
        this.taps = new Taps();
        this.assigned = new Assigned(evidence);
    }

    private Turn(Turn other, Station station) {
        this.station = station;
        this.line = other.line;
        this.times = other.times.of(this);
        this.openMicros = other.openMicros;
        this.evidence = other.evidence;
        this.taps = other.taps;
        this.assigned = other.assigned;
    }

    /**
     * The same turn as nobody judged it yet, by other triggers; without its rulings. It shares its
     * evidence and its taps with this one: it is to be looked at, and no part of the course.
     */
    Turn anew(Station triggers) {
        Turn again = new Turn(this, triggers);
        again.belongTo(owner);
        again.startFromMicros = startFromMicros;
        again.untimedFromMicros = untimedFromMicros;
        again.usual = usual;
        return again;
    }

    int line() {
        return line;
    }

    /** Something changed: what became of its edges is read anew when somebody asks. */
    void touch() {
        causes = null;
        isFinal = false;
    }

    /** What comes after changes nothing. */
    void close() {
        isClosed = true;
        touch();
        wakeMicros = Long.MAX_VALUE;
    }

    TurnCauses causes(Supplier<TurnCauses> anew) {
        causes = causes == null ? anew.get() : causes;
        return causes;
    }

    public Station station() {
        return station;
    }

    /** Nobody's yet, it goes on from now with other guards; edges from before are no start. */
    void adjust(Station other, long nowMicros) {
        station = other;
        openMicros = nowMicros;
        isAdjusted = true;
        unassigned = 0;
        touch();
    }

    /** From when on what nobody was expected for is counted, while it is nobody's. */
    long countsFromMicros() {
        return isAdjusted ? openMicros : 0;
    }

    boolean isAt(String id) {
        return station.id().equals(id);
    }

    public int number() {
        return number;
    }

    void belongTo(Attempt attempt) {
        owner = attempt;
        number = attempt.number;
    }

    /** Seen, or pressed on a tablet whose clock was not compared: then without a time. */
    public boolean isStarted() {
        return number != 0;
    }

    public boolean isFinished() {
        return finish != null && finishConcluded;
    }

    public boolean isRuled() {
        return decision() != null;
    }

    /** What the ruling that stands says of the split; null while none does. */
    Ruling.Decided decision() {
        return rulings.decision();
    }

    /** The start that stands: the ruled one, or else the derived one. */
    public Mark start() {
        Ruling.Decided by = decision();
        return by != null && by.start() != null ? by.start() : start;
    }

    public Mark finish() {
        Ruling.Decided by = decision();
        return by != null && by.finish() != null ? by.finish() : finish;
    }

    /** The start as derived, whatever was ruled. */
    public Mark derivedStart() {
        return start;
    }

    public Mark derivedFinish() {
        return finishConcluded ? finish : null;
    }

    /** The start as tapped; null while there is none with a time. */
    public Mark startTap() {
        return Tap.markOf(taps.start());
    }

    public Mark finishTap() {
        return Tap.markOf(taps.finish(allSeenMicros()));
    }

    /** From when on this turn's sensors are looked at for more than its start. */
    long fromMicros() {
        return start == null ? untimedFromMicros : start.stamp().micros();
    }

    public boolean finishByFallback() {
        return finishByFallback;
    }

    public boolean hasLateEvidence() {
        return late;
    }

    /**
     * Moves every instant to where its time line is now.
     *
     * @param others moves those that do not know their line
     */
    void carry(Carry carry, LongUnaryOperator others) {
        touch();
        openMicros += carry.of(line);
        startFromMicros = others.applyAsLong(startFromMicros);
        untimedFromMicros = others.applyAsLong(untimedFromMicros);
        evidence.carry(carry);
        start = carried(start, carry);
        finish = carried(finish, carry);
        rulings.carry(carry);
        checkpoints.replaceAll((id, marks) -> carried(marks, carry));
    }

    private static Mark carried(Mark mark, Carry carry) {
        return mark == null ? null : mark.carried(carry);
    }

    private static List<Mark> carried(List<Mark> marks, Carry carry) {
        return marks.stream().map(mark -> mark.carried(carry)).toList();
    }

    /** Whether one reading alone is plausible, of the start and of the finish. */
    public boolean isClear() {
        return startReadings.isClear() && finishReadings.isClear();
    }

    /** Whether a person has to choose between readings. */
    public boolean isAmbiguous() {
        return startReadings.isOpen() || finishReadings.isOpen();
    }

    /** Whether units may still hold edges of its time. */
    public boolean isProvisional() {
        return !isPassed;
    }

    /** Whether its finish was seen or tapped. */
    public boolean isFinishKnown() {
        return finishConcluded || taps.finish(allSeenMicros()) != null;
    }

    /** The split as late evidence would have it, −1 when that gives none. */
    public long lateMicros() {
        return lateMicros;
    }

    /** How its marks lie to each other in time. */
    public TurnTimes times() {
        return times;
    }

    public boolean disagrees() {
        return disagrees;
    }

    public String ruledWords() {
        return rulings.standing().map(Ruling::sentence).orElse("");
    }

    /** What a ruling made of this split; null while none stands. */
    public SplitState ruled() {
        Ruling.Decided by = decision();
        return by == null ? null : by.state();
    }

    /** Marks whose evidence a person took away do not stay as concluded. */
    void letGo(Predicate<Mark> gone) {
        start = start != null && gone.test(start) ? null : start;
        if (finish != null && gone.test(finish)) {
            finish = null;
            finishConcluded = false;
            finishByFallback = false;
        }
        times.forget();
    }

    /** The start that stands, as its clock says in the end; null while that is open. */
    Mark settledStart() {
        return Mark.settled(start(), start);
    }

    Mark settledFinish() {
        return Mark.settled(finish(), finish);
    }

    /** How often a checkpoint was seen, by its trigger or by the proctor, whichever saw more. */
    public int seen(Checkpoint checkpoint) {
        int automatic = checkpoints.getOrDefault(checkpoint.id(), List.of()).size();
        int seen = Math.max(automatic + taps.addedCount(checkpoint), taps.count(checkpoint));
        return Math.min(checkpoint.count(), seen);
    }

    public boolean isSeen(Checkpoint checkpoint) {
        return seen(checkpoint) >= checkpoint.count();
    }

    public boolean allSeen() {
        return station.checkpoints().stream().allMatch(this::isSeen);
    }

    /** When all checkpoints were complete; MAX while one is not. */
    long allSeenMicros() {
        return station.checkpoints().stream()
                .mapToLong(this::completeMicros)
                .max()
                .orElse(Long.MIN_VALUE);
    }

    long completeMicros(Checkpoint checkpoint) {
        return taps.completeMicros(checkpoint, checkpoints.get(checkpoint.id()));
    }

    @Override
    public String toString() {
        return String.join(
                " ",
                station.id(),
                line + "/" + openMicros,
                owner == null || owner.run == 1 ? "" + number : number + "/" + owner.run,
                String.valueOf(start),
                String.valueOf(finish),
                String.valueOf(finishConcluded),
                String.valueOf(finishByFallback),
                startReadings + "/" + finishReadings + "/" + times,
                late + "/" + lateMicros + "/" + isPassed,
                String.valueOf(disagrees),
                isClosed + (endsHold < 0 ? "" : "/" + endsHold),
                Long.toString(startFromMicros),
                Long.toString(wakeMicros),
                Integer.toString(unassigned),
                checkpoints.toString(),
                taps.toString(),
                Long.toString(untimedFromMicros),
                rulings.toString(),
                strikes.toString(),
                assigned.toString(),
                String.valueOf(usual),
                evidence.toString());
    }
}
