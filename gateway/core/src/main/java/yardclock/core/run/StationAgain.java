package yardclock.core.run;

import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.time.TimeLines;

/**
 * One station run again after something of it broke. The turn there is set aside: it keeps its
 * edges, taps and marks, and counts in nothing. The candidate is on the way to the station once
 * more, and the hold they are in ends at the new start, so that what is credited reaches from the
 * fault to the re-start. What they did at the station before the fault is not credited.
 */
public final class StationAgain {
    private final CourseRun course;
    private final long nowMicros;
    private final Gathering out;

    public StationAgain(CourseRun course, long nowMicros, Gathering out) {
        this.course = course;
        this.nowMicros = nowMicros;
        this.out = out;
    }

    /** Takes the candidate's last turn, which is at this station, out of what counts. */
    public void setAside(Attempt attempt, StationRun run, String words) {
        Turn turn = attempt.turns.remove(attempt.turns.size() - 1);
        turn.close();
        attempt.setAside.add(turn);
        attempt.startsAgain = true;
        attempt.stationIndex = course.plan.indexOf(run.station.id());
        attempt.phase = Attempt.Phase.WALKING;
        attempt.walkingFromMicros = nowMicros;
        attempt.revision++;
        course.leaveStation(attempt, run, nowMicros, out);
        out.conclude(Fact.of(FactKind.RUN_AGAIN, attempt.number, run.station.id(), words));
    }

    /** A turn has begun: if it was waited for, the hold is over. */
    void begun(Turn turn) {
        Attempt attempt = turn.owner;
        if (attempt.startsAgain) {
            attempt.startsAgain = false;
            turn.endsHold = attempt.holds.size() - 1;
            course.endHold(attempt, end(turn, course.lines), out);
        }
    }

    /** The start lies elsewhere than was thought: so does the end of the hold, until a ruling. */
    static void follow(Turn turn, TimeLines lines) {
        if (turn.endsHold >= 0 && !turn.isRuled()) {
            Hold ended = turn.owner.holds.get(turn.endsHold);
            turn.owner.holds.set(turn.endsHold, ended.ended(end(turn, lines)));
        }
    }

    /** The tap itself where nothing else marks the start; it may have no time yet. */
    private static TabletPress end(Turn turn, TimeLines lines) {
        Mark start = turn.start;
        return start == null || start.edge() == null
                ? turn.taps.start().press()
                : TabletPress.of(start.best(), start.line(), lines);
    }
}
