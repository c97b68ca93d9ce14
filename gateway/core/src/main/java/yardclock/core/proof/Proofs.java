package yardclock.core.proof;

import yardclock.core.course.DayRules;
import yardclock.core.course.Station;
import yardclock.core.course.Trigger;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.health.Unit;
import yardclock.core.run.CourseRun;
import yardclock.core.run.Movements;
import yardclock.core.run.StationRun;
import yardclock.core.run.TabletPress;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * The proof run under way, and those that were signed today.
 *
 * <p>A station is asked for anew when an equipment fault was called there, when one of its units
 * has another boot than the station was last proven with (a board that was replaced has one too),
 * or when one of its triggers was adjusted since. Owned by one thread.
 */
public final class Proofs {
    /** One for the course and some for each station; a day has no more. The newest are kept. */
    static final int SIGNED_KEPT = 64;

    private final CourseRun course;
    private final Map<String, Unit> units;
    private final Deque<ProofRecord> signed = new ArrayDeque<>();
    private final Set<String> faults = new TreeSet<>();
    private boolean isWholeSigned;
    private ProofRun underWay;
    private long changes;

    /** Which course is proven, by which field units. */
    public Proofs(CourseRun course, Map<String, Unit> units) {
        this.course = course;
        this.units = units;
    }

    /** Changes whenever somebody looking at the proof run may see something else. */
    public long revision() {
        return changes + course.proofTurns().revision();
    }

    public Optional<ProofRun> underWay() {
        return Optional.ofNullable(underWay);
    }

    /** The newest first. */
    public Collection<ProofRecord> signed() {
        return Collections.unmodifiableCollection(signed);
    }

    /** The newest for the whole course. */
    public Optional<ProofRecord> ofCourse() {
        return signed.stream().filter(ProofRecord::isWhole).findFirst();
    }

    /** Each point as it is seen by now; empty while no proof run is under way. */
    public List<ProofPoint> points(long nowMicros) {
        return course.proofTurns().seen(nowMicros).stream().map(ProofPoint::of).toList();
    }

    /** Whether nobody is in the way of proving this station, or with none the whole course. */
    public boolean isClear(String station) {
        return station.isEmpty()
                ? course.whereabouts().isEmpty()
                : course.station(station).filter(course.whereabouts()::isClearOf).isPresent();
    }

    /** Whether a station is part of the proof run under way. */
    public boolean proves(String station) {
        return course.proofTurns().stations().contains(station);
    }

    public void begin(ProofRun run, Gathering out) {
        underWay = run;
        List<String> stations =
                run.isWhole()
                        ? course.stations().stream().map(r -> r.station().id()).toList()
                        : List.of(run.station());
        course.proofTurns().begin(stations, run.beganMicros());
        conclude(FactKind.PROOF_RUN_BEGUN, run.station(), run.person(), out);
    }

    public void press(String station, String point, TabletPress press) {
        course.proofTurns().press(station, point, press);
    }

    /** Whether the run under way has a start signal. */
    public boolean hasSignal() {
        Station first = course.plan().stations().get(0);
        return proves(first.id()) && Movements.startsBySignal(first);
    }

    /** Asks for the start signal, so that the output can be seen. */
    public void signal(Gathering out) {
        course.proofTurns().signal(out);
    }

    /**
     * The first signature, or the second one of what the first person saw too: it closes the run.
     */
    public void sign(Signature signature, Gathering out) {
        Signature before = underWay.standing(signature.points()).orElse(null);
        changes++;
        String station = underWay.station();
        conclude(FactKind.PROOF_RUN_SIGNED, station, signature.person(), out);
        if (before == null) {
            underWay = underWay.signed(signature);
            return;
        }
        ProofRecord record =
                new ProofRecord(
                        station,
                        underWay.why(),
                        underWay.beganMicros(),
                        signature.atMicros(),
                        signature.points(),
                        before,
                        signature,
                        boots(),
                        adjustments());
        signed.addFirst(record);
        if (signed.size() > SIGNED_KEPT) {
            signed.removeLast();
        }
        isWholeSigned |= record.isWhole();
        faults.removeAll(course.proofTurns().stations());
        close(signature.atMicros(), record.isClean() ? "passed" : "passed with exceptions", out);
    }

    private void close(long nowMicros, String words, Gathering out) {
        course.proofTurns().end(nowMicros);
        end(words, out);
    }

    private void end(String words, Gathering out) {
        String station = underWay.station();
        underWay = null;
        changes++;
        conclude(FactKind.PROOF_RUN_ENDED, station, words, out);
    }

    /** It is given up, and shows nothing. */
    public void giveUp(String words, long nowMicros, Gathering out) {
        close(nowMicros, words, out);
    }

    /** Gateway time goes on elsewhere: what was stamped compares with no press of now. */
    public void interrupt(Gathering out) {
        if (underWay != null) {
            course.proofTurns().breakOff();
            end("the gateway's clock was interrupted", out);
        }
    }

    /** Somebody called an equipment fault at a station. */
    public void fault(String station) {
        faults.add(station);
        changes++;
    }

    /** The stations that somebody should prove, in the order of the course. */
    public List<ProofAsked> asked() {
        List<ProofAsked> asked = new ArrayList<>();
        for (StationRun run : course.stations()) {
            cause(run).ifPresent(why -> asked.add(new ProofAsked(run.station().id(), why)));
        }
        return asked;
    }

    private Optional<ProofAsked.Cause> cause(StationRun run) {
        String id = run.station().id();
        if (faults.contains(id)) {
            return Optional.of(ProofAsked.Cause.FAULT);
        }
        ProofRecord last = signed.stream().filter(r -> r.covers(id)).findFirst().orElse(null);
        if (last == null) {
            return Optional.empty();
        }
        for (Unit unit : units.values()) {
            String name = unit.plan().id();
            String then = last.boots().get(name);
            boolean isOther = !then.isEmpty() && !then.equals(unit.status().boot());
            if (run.uses(name) && isOther) {
                return Optional.of(ProofAsked.Cause.UNIT);
            }
        }
        boolean isAdjusted = adjustments(run) != last.adjustments().get(id);
        return isAdjusted ? Optional.of(ProofAsked.Cause.TRIGGER) : Optional.empty();
    }

    /** Whether the plan asks for a proof run that is not there: nobody is released without. */
    public boolean isMissing() {
        boolean isRequired = course.plan().day().proofRun() == DayRules.ProofRule.REQUIRED;
        return isRequired && (!isWholeSigned || !asked().isEmpty());
    }

    private Map<String, String> boots() {
        Map<String, String> boots = new TreeMap<>();
        units.forEach((id, unit) -> boots.put(id, unit.status().boot()));
        return Collections.unmodifiableMap(boots);
    }

    private Map<String, Integer> adjustments() {
        Map<String, Integer> all = new TreeMap<>();
        for (StationRun run : course.stations()) {
            if (proves(run.station().id())) {
                all.put(run.station().id(), adjustments(run));
            }
        }
        return Collections.unmodifiableMap(all);
    }

    private static int adjustments(StationRun run) {
        return run.station().triggers().stream().mapToInt(Trigger::adjustment).sum();
    }

    private static void conclude(FactKind kind, String station, String words, Gathering out) {
        out.conclude(Fact.of(kind, 0, station, words));
    }

    @Override
    public String toString() {
        return changes + " " + underWay + " " + signed + " " + faults + " " + isWholeSigned;
    }

    /** Nothing of it happened today. */
    public boolean isNone() {
        return changes == 0 && underWay == null;
    }
}
