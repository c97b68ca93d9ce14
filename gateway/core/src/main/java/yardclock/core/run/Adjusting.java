package yardclock.core.run;

import yardclock.core.course.GuardTimes;
import yardclock.core.course.RuleVersion;
import yardclock.core.course.Station;
import yardclock.core.course.Trigger;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;

/**
 * Gives a station's trigger other guards.
 *
 * <p>A turn is judged by one wording from its start to its end: turns that are somebody's keep
 * theirs, whatever comes late. The turn that waits for a start goes on with the new one, from now.
 * What its sensors said before tells their states and is no start any more.
 */
public final class Adjusting {
    private final CourseRun course;
    private final long nowMicros;
    private final Gathering out;

    public Adjusting(CourseRun course, long nowMicros, Gathering out) {
        this.course = course;
        this.nowMicros = nowMicros;
        this.out = out;
    }

    /** The trigger in force gives way to the plan's own with these guards. */
    public void adjust(String stationId, String point, GuardTimes times) {
        StationRun run = course.station(stationId).orElseThrow();
        Trigger before = run.station.trigger(point).orElseThrow();
        Trigger planned =
                course.plan.station(stationId).flatMap(s -> s.trigger(point)).orElseThrow();
        int number = before.adjustment() + 1;
        Trigger after = planned.adjusted(planned.guards().timed(times), number);
        Station station = run.station.with(point, after);
        run.station = station;
        if (run.state == StationRun.State.READY) {
            TurnCauses.forgetBefore(course, run.current(), nowMicros);
            run.current().adjust(station, nowMicros);
        }
        String version = new RuleVersion(course.plan.name().version(), number).toString();
        out.conclude(new Fact(FactKind.TRIGGER_ADJUSTED, 0, stationId, point, null, 0, version));
    }
}
