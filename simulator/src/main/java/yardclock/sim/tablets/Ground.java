package yardclock.sim.tablets;

import yardclock.core.course.Criterion;
import yardclock.core.course.CriterionKind;
import yardclock.core.course.DayRules;
import yardclock.core.course.ExamPlan;
import yardclock.sim.people.Candidate;
import yardclock.sim.people.TruthBook;
import yardclock.sim.yard.Bell;
import yardclock.sim.yard.Spot;
import yardclock.sim.yard.Yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;

/**
 * What everybody on the course knows or can see: the printed plan, the stations themselves, their
 * own stop-watch. Lives on the stage.
 */
public final class Ground {
    private static final long HAND_PAIR_DEVIATION = 100_000;

    private final ExamPlan plan;
    private final Yard yard;
    private final TruthBook book;
    private final long seed;

    /** Who stands before each station, first come, first served: nobody overtakes. */
    private final Map<String, List<Candidate>> queues = new TreeMap<>();

    public Ground(ExamPlan plan, Yard yard, TruthBook book, long seed) {
        this.plan = plan;
        this.yard = yard;
        this.book = book;
        this.seed = seed;
    }

    String stationId(int index) {
        return plan.stations().get(index).id();
    }

    boolean isFinishJudged(int index) {
        return plan.stations().get(index).finish().isJudged();
    }

    int indexOf(String station) {
        return plan.indexOf(station);
    }

    /** Whether a station looks free and put back to somebody who is there. */
    boolean looksReady(String station) {
        return yard.spot(station) == Spot.READY;
    }

    /** Whether somebody is at a station, or steps up to it. */
    boolean isOccupied(String station) {
        return yard.spot(station) == Spot.OCCUPIED;
    }

    /** A candidate comes up to a station and queues behind whoever is there. */
    void queues(Candidate candidate, String station) {
        List<Candidate> queue = queues.computeIfAbsent(station, any -> new ArrayList<>());
        if (!queue.contains(candidate)) {
            queue.add(candidate);
        }
    }

    /** Whether nobody stands before a candidate who queues at a station. */
    boolean isFirst(Candidate candidate, String station) {
        List<Candidate> queue = queues.getOrDefault(station, new ArrayList<>());
        queue.removeIf(other -> other.phase() != Candidate.Phase.WALKING);
        return queue.indexOf(candidate) <= 0;
    }

    /** Steps up. */
    void leavesQueue(Candidate candidate, String station) {
        queues.getOrDefault(station, new ArrayList<>()).remove(candidate);
    }

    Yard yard() {
        return yard;
    }

    boolean stopsAfterFault() {
        return plan.day().afterFault() == DayRules.AfterFault.STOP_NOW;
    }

    /** The first prohibition of a station: what a fault is called on. */
    Optional<Criterion> prohibition(int stationIndex) {
        return plan.stations().get(stationIndex).criteria().stream()
                .filter(criterion -> criterion.kind() == CriterionKind.PROHIBITED)
                .findFirst();
    }

    long resetMicros(String station) {
        return plan.station(station).orElseThrow().timing().resetMicros();
    }

    /** A hand's own small differences, the same for every run with this seed. */
    SplittableRandom handOf(int number, String station) {
        return new SplittableRandom(seed * 31 + number * 1_009L + station.hashCode());
    }

    /**
     * The split as the proctor's stop-watch has it, SD 0.10 s for a pair of presses (Am. J. Phys.
     * 87(2) 110, 2019); or −1 when they never got to the finish.
     */
    long stopWatchMicros(int number, String station) {
        TruthBook.Instants instants = book.at(number, station);
        if (instants == null || instants.split().isEmpty()) {
            return -1;
        }
        double hand = HAND_PAIR_DEVIATION * Bell.draw(handOf(number, station));
        return instants.split().getAsLong() + Math.round(hand);
    }

    void waited(int number, long from, long to) {
        book.waited(number, from, to);
    }
}
