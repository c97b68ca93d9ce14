package yardclock.core.run;

import yardclock.core.account.Cause;
import yardclock.core.account.TrayEdge;
import yardclock.core.course.Checkpoint;
import yardclock.core.course.Trigger;
import yardclock.core.passage.EdgeKey;
import yardclock.core.passage.Guard;
import yardclock.core.passage.Passage;
import yardclock.core.passage.Struck;
import yardclock.core.passage.TimedEdge;
import yardclock.core.passage.TriggerJudge;
import yardclock.core.reading.Crossed;
import yardclock.core.reading.PointReadings;
import yardclock.core.reading.PointSearch;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What became of each edge of one turn, read off its evidence, its marks and its readings. Every
 * edge of the evidence has exactly one cause. Made when somebody asks, and immutable then.
 */
final class TurnCauses {
    private final Turn turn;
    private final Crossed crossed;
    private final long settleMicros;
    private final List<TimedEdge> edges;
    private final TreeMap<EdgeKey, Cause> causes = new TreeMap<>();
    private final TreeSet<EdgeKey> marks = new TreeSet<>();
    private final List<TrayEdge> tray = new ArrayList<>();

    private TurnCauses(Turn turn, Crossed crossed, long settleMicros) {
        this.turn = turn;
        this.crossed = crossed;
        this.settleMicros = settleMicros;
        this.edges = turn.evidence.inOrder();
    }

    static TurnCauses of(Turn turn, Crossed crossed, long settleMicros) {
        return turn.causes(
                () -> {
                    TurnCauses causes = new TurnCauses(turn, crossed, settleMicros);
                    causes.make();
                    return causes;
                });
    }

    /** A turn lets go what came before its owner; what was nobody's then stays so. */
    static void forgetBefore(CourseRun course, Turn turn, long micros) {
        TurnCauses before = course.causes(turn);
        for (TrayEdge passage : before.tray()) {
            if (passage.edge().stamp().micros() < micros) {
                course.account.keep(passage);
            }
        }
        for (TimedEdge edge : turn.evidence.forgetBefore(micros)) {
            course.account.note(edge.key(), before.each().get(edge.key()));
        }
        turn.touch();
    }

    SortedMap<EdgeKey, Cause> each() {
        return causes;
    }

    /** Passages that are nobody's; one of several edges is here once. */
    List<TrayEdge> tray() {
        return tray;
    }

    private void make() {
        if (turn.number == 0) {
            nobodys();
        } else {
            owned();
        }
        for (TimedEdge edge : turn.evidence.all()) {
            boolean isStruck = turn.evidence.isStruck(edge.key());
            say(edge, isStruck ? Cause.STRUCK : byTime(edge));
        }
    }

    private void say(TimedEdge edge, Cause cause) {
        causes.merge(edge.key(), cause, (one, other) -> one.compareTo(other) <= 0 ? one : other);
    }

    /** A start by the plan's rule is somebody's, and nobody knows whose. */
    private void nobodys() {
        Trigger start = turn.station.start();
        if (start.contacts().isEmpty()) {
            return;
        }
        TriggerJudge judge = new TriggerJudge(start, settleMicros);
        for (Passage passage : judge.passages(edges, turn.countsFromMicros())) {
            passage.edges().forEach(edge -> say(edge, Cause.NOBODYS));
            say(passage.edge(), Cause.NOBODYS);
            tray.add(new TrayEdge(turn.station.id(), passage.edge(), Cause.NOBODYS));
        }
    }

    private void owned() {
        mark(turn.start);
        mark(turn.finish);
        turn.checkpoints.values().forEach(seen -> seen.forEach(this::mark));
        for (Ruling ruling : turn.rulings.all()) {
            if (ruling.decided() != null) {
                mark(ruling.decided().start());
                mark(ruling.decided().finish());
            }
        }
        point(turn.station.start(), startFromMicros(), turn.startReadings);
        point(turn.station.finish(), turn.fromMicros(), turn.finishReadings);
        for (Checkpoint checkpoint : turn.station.checkpoints()) {
            point(checkpoint.trigger(), turn.fromMicros(), PointReadings.NONE);
        }
    }

    private long startFromMicros() {
        return Math.min(turn.startFromMicros, turn.fromMicros());
    }

    private void mark(Mark mark) {
        if (mark != null && mark.edge() != null) {
            TimedEdge edge = mark.edge();
            if (turn.evidence.holds(edge.key())) {
                marks.add(edge.key());
                say(edge, Cause.MARK);
            }
        }
    }

    /** Every passage at one trigger, and what the guards struck. */
    private void point(Trigger trigger, long fromMicros, PointReadings readings) {
        if (trigger.contacts().isEmpty()) {
            return;
        }
        PointSearch search = new PointSearch(trigger, crossed, settleMicros, false, false);
        Cause other = crossed.isCrossed(trigger) ? Cause.CROSSING : Cause.AGAIN;
        for (Passage passage : search.passages(edges, fromMicros)) {
            passage(passage, causeOf(passage, readings, other));
        }
        TriggerJudge judge = new TriggerJudge(trigger, settleMicros);
        long skipped = Math.max(1, trigger.guards().nth()) - 1L;
        judge.passages(edges, fromMicros).stream()
                .limit(skipped)
                .forEach(passage -> passage(passage, Cause.COUNTED));
        for (Struck struck : judge.struck(edges, fromMicros)) {
            if (isWithin(struck.edge()) && struck.guard() != Guard.RULE) {
                say(struck.edge(), Cause.GUARD);
            }
        }
    }

    private Cause causeOf(Passage passage, PointReadings readings, Cause other) {
        if (marks.contains(passage.edge().key())) {
            return Cause.MARK;
        }
        boolean isRead = readings.ranked().stream().anyMatch(r -> passage.edge().equals(r.edge()));
        return isRead ? Cause.OTHER_READING : other;
    }

    private void passage(Passage passage, Cause cause) {
        boolean isMark = cause == Cause.MARK;
        for (TimedEdge edge : passage.edges()) {
            if (isMark || !isAfterFinish(edge)) {
                say(edge, isMark || !isLate(edge) ? cause : Cause.LATE);
            }
        }
    }

    /** It came after the ruling that stands. */
    private boolean isLate(TimedEdge edge) {
        return turn.late
                && edge.arrivedMicros() < Long.MAX_VALUE
                && turn.rulings
                        .standing()
                        .filter(ruling -> edge.arrivedMicros() > ruling.by().atMicros())
                        .isPresent();
    }

    private boolean isWithin(TimedEdge edge) {
        return edge.stamp().micros() >= turn.fromMicros() && !isAfterFinish(edge);
    }

    private boolean isAfterFinish(TimedEdge edge) {
        return turn.isFinished() && edge.stamp().micros() > turn.finish.stamp().upperMicros();
    }

    /** What is to be said of an edge that is part of no passage. */
    private Cause byTime(TimedEdge edge) {
        if (turn.number == 0) {
            return Cause.NOBODY_THERE;
        }
        if (edge.stamp().micros() < turn.fromMicros()) {
            return Cause.BEFORE_START;
        }
        if (isAfterFinish(edge)) {
            return Cause.AFTER_FINISH;
        }
        return turn.isClosed && !turn.isFinished() ? Cause.ENDED : Cause.CHATTER;
    }
}
