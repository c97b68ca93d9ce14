package yardclock.core.run;

import yardclock.core.course.Checkpoint;
import yardclock.core.course.Trigger;
import yardclock.core.passage.TimedEdge;
import yardclock.core.reading.Crossed;
import yardclock.core.reading.PointReading;
import yardclock.core.reading.PointReadings;
import yardclock.core.time.Carry;
import yardclock.core.time.Stamp;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * A turn at one station that is a proof run's and no candidate's: the edges and the presses of it.
 *
 * <p>What they say is derived by the same rules as a candidate's turn, whenever somebody asks; the
 * presses are to the readings what a proctor's taps are. Where no reading goes with the press, the
 * readings are asked again without it, so that a sensor that speaks of another instant is told from
 * one that said nothing. Of several presses of a start or a finish the last counts, and a start
 * that is pressed again begins the station anew.
 */
final class ProofTurn {
    /** Edges beyond this say nothing more of whether a trigger works. */
    private static final int EDGES_MAX = 2_000;

    /** Presses of one point beyond this stay in the journal only. */
    private static final int PRESSES_MAX = 64;

    private final StationRun run;
    private final CourseRun course;
    private final int line;
    private long fromMicros;
    private final List<TimedEdge> edges = new ArrayList<>();
    private final Map<String, List<TabletPress>> presses = new LinkedHashMap<>();

    ProofTurn(StationRun run, CourseRun course, long fromMicros) {
        this.run = run;
        this.course = course;
        this.line = course.lines.current();
        this.fromMicros = fromMicros;
    }

    int line() {
        return line;
    }

    long fromMicros() {
        return fromMicros;
    }

    boolean takes(TimedEdge edge) {
        return edge.stamp().micros() >= fromMicros;
    }

    void take(TimedEdge edge) {
        if (edges.size() < EDGES_MAX) {
            edges.add(edge);
        }
    }

    void press(String point, TabletPress press) {
        List<TabletPress> of = presses.computeIfAbsent(point, p -> new ArrayList<>());
        if (of.size() < PRESSES_MAX) {
            of.add(press);
        }
    }

    void carry(Carry carry) {
        fromMicros += carry.of(line);
        edges.replaceAll(edge -> edge.moved(carry.of(edge.line())));
    }

    /** What was seen at each point by now, in the order of the course. */
    List<ProofSeen> seen(long nowMicros) {
        long begins = begins();
        Map<String, List<Stamp>> with = read(begins, true, nowMicros);
        Map<String, List<Stamp>> without = read(begins, false, nowMicros);
        List<ProofSeen> seen = new ArrayList<>();
        for (String point : run.station.points()) {
            boolean isJudged = run.station.trigger(point).filter(Trigger::isJudged).isPresent();
            List<Stamp> automatic = with.get(point);
            if (automatic.isEmpty()) {
                automatic = without.get(point);
            }
            List<TabletPress> pressed = pressed(point, begins);
            List<Stamp> byHand =
                    pressed.stream()
                            .map(TabletPress::stamp)
                            .filter(Objects::nonNull)
                            .sorted()
                            .toList();
            boolean isWired = !run.station.trigger(point).orElseThrow().contacts().isEmpty();
            seen.add(
                    new ProofSeen(
                            run.station.id(),
                            point,
                            run.station.checkpoint(point).map(Checkpoint::count).orElse(1),
                            isJudged,
                            isWired,
                            automatic,
                            byHand,
                            pressed.size()));
        }
        return seen;
    }

    /** The latest press of the start begins the station anew; before it nothing counts. */
    private long begins() {
        List<TabletPress> starts = presses.getOrDefault(TurnJudge.START, List.of());
        TabletPress last = starts.isEmpty() ? null : starts.get(starts.size() - 1);
        return last == null || !last.isDated() || starts.size() == 1
                ? fromMicros
                : Math.max(fromMicros, last.stamp().lowerMicros() - Derivation.FALLBACK_MICROS);
    }

    /** The presses that count for a point: of a checkpoint all, of a start or finish the last. */
    private List<TabletPress> pressed(String point, long begins) {
        List<TabletPress> counting =
                presses.getOrDefault(point, List.of()).stream()
                        .filter(p -> !p.isDated() || p.stamp().micros() >= begins)
                        .toList();
        boolean isOnce = run.station.checkpoint(point).isEmpty() && counting.size() > 1;
        return isOnce ? counting.subList(counting.size() - 1, counting.size()) : counting;
    }

    /** The automatic instants of each point, by one way of asking. */
    private Map<String, List<Stamp>> read(long begins, boolean withPresses, long nowMicros) {
        Turn turn = new Turn(run.station, course.lines, begins);
        turn.startFromMicros = begins;
        turn.untimedFromMicros = begins;
        edges.forEach(turn.evidence::add);
        if (withPresses) {
            tap(turn, begins);
        }
        Crossed crossed = course.crossed;
        Derivation.Beside beside = new Derivation.Beside(withPresses, () -> false);
        Derivation says = new Derivation(course.plan.timing(), crossed, turn, beside, nowMicros);
        Map<String, List<Stamp>> automatic = new LinkedHashMap<>();
        Mark start = says.start();
        Mark seen = best(says.startReadings(), nowMicros);
        turn.start = seen == null ? start : seen;
        automatic.put(TurnJudge.START, stamps(seen));
        says.seekCheckpoints(turn.fromMicros());
        Derivation.Finish finish = says.finish(turn.fromMicros());
        says.checkpointsUntil(null)
                .forEach((id, marks) -> automatic.put(id, marks.stream().map(Mark::best).toList()));
        run.station.checkpoints().forEach(c -> automatic.putIfAbsent(c.id(), List.of()));
        Mark last = best(says.finishReadings(), nowMicros);
        automatic.put(TurnJudge.FINISH, last == null ? button(finish) : stamps(last));
        return automatic;
    }

    private static List<Stamp> stamps(Mark mark) {
        return mark == null ? List.of() : List.of(mark.best());
    }

    /** The press of a wired button that judges the finish, without what a hand adds. */
    private static List<Stamp> button(Derivation.Finish finish) {
        Mark mark = finish == null || finish.byFallback() ? null : finish.mark();
        boolean isPressed = mark != null && mark.source() == Mark.Source.BUTTON;
        return isPressed ? List.of(mark.edge().stamp()) : List.of();
    }

    private static boolean isSeen(PointReading reading, long nowMicros) {
        return !reading.isByTap() && nowMicros >= reading.concludesAtMicros();
    }

    /** The best reading that is an edge's; null while there is none. */
    private static Mark best(PointReadings readings, long nowMicros) {
        return readings.ranked().stream()
                .filter(r -> isSeen(r, nowMicros))
                .findFirst()
                .map(r -> Mark.automatic(r.edge(), r.chatter()))
                .orElse(null);
    }

    private void tap(Turn turn, long begins) {
        for (String point : run.station.points()) {
            for (TabletPress press : pressed(point, begins)) {
                Tap tap = new Tap(press, 0);
                switch (point) {
                    case TurnJudge.START -> turn.taps.addStart(tap);
                    case TurnJudge.FINISH -> turn.taps.addFinish(tap);
                    default -> turn.taps.addCheckpoint(point, tap);
                }
            }
        }
    }

    @Override
    public String toString() {
        return run.station.id() + " " + line + "/" + fromMicros + " " + edges + " " + presses;
    }
}
