package yardclock.core.run;

import yardclock.core.fact.Gathering;
import yardclock.core.reading.PointReading;

/**
 * Calls a split clean at the earliest when every unit of its station has told what it stamped up to
 * the marks. A unit that is away holds up its own splits and no others.
 */
public final class Passing {
    private final CourseRun course;

    Passing(CourseRun course) {
        this.course = course;
    }

    /** A unit told how far nothing is missing: splits that waited for it may be clean now. */
    public void told(String unit, Gathering out) {
        for (StationRun run : course.stations.values()) {
            if (run.uses(unit)) {
                run.turns().forEach(turn -> look(run, turn, out));
            }
        }
    }

    void look(StationRun run, Turn turn, Gathering out) {
        boolean isNews = turn.finishConcluded && passes(run, turn);
        if (isNews && !turn.isRuled() && Splits.of(turn).clean()) {
            turn.owner.revision++;
            course.judge().proposeSplit(turn, out);
        }
    }

    /** Whether nothing is under way any more that was before. */
    boolean passes(StationRun run, Turn turn) {
        boolean awaits = turn.number != 0 && !turn.isPassed && !turn.isClosed;
        turn.isPassed |= awaits && isPast(run, turn);
        return awaits && turn.isPassed;
    }

    /** Whether every unit of the station has handed in what could still change the marks. */
    boolean isPast(StationRun run, Turn turn) {
        long to = decidedByMicros(turn, course.plan.timing().settleMicros());
        for (String unit : run.units()) {
            if (!course.clocks.isPast(unit, turn.fromMicros(), to)) {
                return false;
            }
        }
        return true;
    }

    /** Up to when an edge could still change the marks. */
    private static long decidedByMicros(Turn turn, long settleMicros) {
        long by = turn.finish == null ? turn.fromMicros() : turn.finish.stamp().upperMicros();
        Mark tap = turn.finishTap();
        by = tap == null ? by : Math.max(by, tap.stamp().upperMicros());
        PointReading best = turn.finishReadings.best();
        boolean isSeen = best != null && best.edge() != null;
        return isSeen ? Math.max(by, best.concludesAtMicros() - settleMicros) : by;
    }
}
