package yardclock.core.run;

import yardclock.core.account.Cause;
import yardclock.core.account.TrayEdge;
import yardclock.core.course.GuardTimes;
import yardclock.core.course.RuleVersion;
import yardclock.core.course.Station;
import yardclock.core.course.Trigger;
import yardclock.core.reading.PointReading;
import yardclock.core.reading.PointReadings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Asks what other guards of one trigger would have found of a station's turns today. Changes
 * nothing: each turn is judged on a copy that shares its evidence and its taps.
 *
 * <p>A turn is judged twice by the derivation that judges live, from all that is known now: by the
 * triggers that judged it then, and by the same with the other guards. So what differs is the
 * guards' doing alone, and not that of a press or an edge that came since. What people decided of
 * the split is left aside in both; edges they struck, and passages they assigned, are not.
 *
 * <p>A turn whose evidence is not whole is not judged.
 */
public final class Rejudging {
    private final CourseRun course;
    private final StationRun run;
    private final long nowMicros;
    private final List<Rejudged.Line> changed = new ArrayList<>();
    private final List<Rejudged.Silent> silent = new ArrayList<>();
    private int judged;

    private Rejudging(CourseRun course, StationRun run, long nowMicros) {
        this.course = course;
        this.run = run;
        this.nowMicros = nowMicros;
    }

    /** Station and point must be there, and the guards admissible for its trigger. */
    public static Rejudged ask(
            CourseRun course, String station, String point, GuardTimes times, long nowMicros) {
        StationRun run = course.station(station).orElseThrow();
        return new Rejudging(course, run, nowMicros).judge(point, times);
    }

    private Rejudged judge(String point, GuardTimes times) {
        List<Turn> turns = turns();
        for (int i = 0; i < turns.size(); i++) {
            long overMicros = overMicros(turns, i);
            Rejudged.Why why = whySilent(turns.get(i), overMicros);
            if (why == null) {
                compare(turns.get(i), point, times, overMicros);
            } else {
                beSilent(turns.get(i), why);
            }
        }
        return new Rejudged(
                run.station.id(),
                point,
                version(run.station, point),
                judged,
                judged - changed.size(),
                changed,
                silent);
    }

    /** Everybody's turns here, void attempts included, in the order they were run. */
    private List<Turn> turns() {
        return course.everyRun().stream()
                .map(attempt -> attempt.at(run.station.id()))
                .filter(turn -> turn != null)
                .sorted(Comparator.comparingInt(Turn::line).thenComparingLong(t -> t.openMicros))
                .toList();
    }

    /** When the station was ready again, so that edges were the next turn's; MAX while not. */
    private long overMicros(List<Turn> turns, int at) {
        Turn next = at + 1 < turns.size() ? turns.get(at + 1) : run.current();
        boolean isNext = next != turns.get(at) && next.line() == turns.get(at).line();
        return isNext ? next.openMicros : Long.MAX_VALUE;
    }

    private Rejudged.Why whySilent(Turn turn, long overMicros) {
        if (turn.isClosed) {
            return Rejudged.Why.ENDED;
        }
        if (turn == run.current() && run.state == StationRun.State.IN_USE) {
            return Rejudged.Why.UNDER_WAY;
        }
        if (!turn.evidence.isWhole()) {
            return Rejudged.Why.EDGES_LOST;
        }
        return isMissed(turn, overMicros) ? Rejudged.Why.CAME_TOO_LATE : null;
    }

    /** Put away, and not certainly with every edge of its time. */
    private boolean isMissed(Turn turn, long overMicros) {
        if (run.turns().contains(turn)) {
            return false;
        }
        return !turn.isPassed
                || course.account.trayDropped() > 0
                || course.account.tray().stream().anyMatch(e -> isOf(e, turn, overMicros));
    }

    private boolean isOf(TrayEdge late, Turn turn, long overMicros) {
        long at = late.edge().stamp().micros();
        boolean isThen = at >= turn.openMicros && at < overMicros;
        return late.cause() == Cause.TOO_LATE
                && late.station().equals(run.station.id())
                && (isThen || turn.line() != late.edge().line());
    }

    private void compare(Turn turn, String point, GuardTimes times, long overMicros) {
        Station then = turn.station;
        Trigger trigger = then.trigger(point).orElseThrow();
        Station other = then.with(point, trigger.guarded(trigger.guards().timed(times)));
        Turn before = judged(turn, then);
        Turn after = judged(turn, other);
        if (!isOver(after.startReadings, overMicros) || !isOver(after.finishReadings, overMicros)) {
            beSilent(turn, Rejudged.Why.NOT_OVER);
            return;
        }
        judged++;
        Rejudged.Found was = Rejudged.Found.of(before);
        Rejudged.Found is = Rejudged.Found.of(after);
        if (!was.equals(is)) {
            Split stands = Splits.of(turn);
            changed.add(
                    new Rejudged.Line(
                            turn.number,
                            turn.owner.run(),
                            version(then, point),
                            stands.state(),
                            stands.micros(),
                            was,
                            is));
        }
    }

    private void beSilent(Turn turn, Rejudged.Why why) {
        silent.add(new Rejudged.Silent(turn.number, turn.owner.run(), why));
    }

    private boolean isOver(PointReadings readings, long overMicros) {
        PointReading best = readings.best();
        boolean isSeen = best != null && best.edge() != null;
        return !isSeen || best.concludesAtMicros() <= Math.min(overMicros, nowMicros);
    }

    /** A copy, judged from its start to its end. */
    private Turn judged(Turn turn, Station by) {
        Turn again = turn.anew(by);
        Derivation says = course.judge().derivationOf(again, nowMicros);
        again.start = says.start();
        again.startReadings = says.startReadings();
        if (again.start != null || again.taps.start() != null) {
            says.seekCheckpoints(again.fromMicros());
            Derivation.Finish finish = says.finish(again.fromMicros());
            again.finishConcluded = finish != null;
            again.finish = finish == null ? null : finish.mark();
            again.finishByFallback = finish != null && finish.byFallback();
            again.finishReadings = says.finishReadings();
            again.checkpoints.putAll(says.checkpointsUntil(again.finish));
        }
        again.disagrees = says.disagrees();
        stamp(again, turn);
        return again;
    }

    /** Marks that were made then keep what was asked of their clocks since; others ask now. */
    private void stamp(Turn again, Turn turn) {
        boolean isSame = isSame(again.start, turn.start) && isSame(again.finish, turn.finish);
        again.start = settled(again.start, turn.start);
        again.finish = settled(again.finish, turn.finish);
        if (isSame) {
            again.times.takeOver(turn.times);
        } else {
            again.times.compareOnOneClock(course.clocks);
        }
        again.isPassed = isSame && turn.isPassed || course.passing().isPast(run, again);
    }

    private Mark settled(Mark mark, Mark then) {
        if (mark == null || mark.isSame(then)) {
            return mark == null ? null : then;
        }
        return mark.edge() == null
                ? mark
                : course.clocks.settled(mark.edge()).map(mark::settledAt).orElse(mark);
    }

    private static boolean isSame(Mark one, Mark other) {
        return one == null ? other == null : one.isSame(other);
    }

    private String version(Station station, String point) {
        int adjustment = station.trigger(point).orElseThrow().adjustment();
        return new RuleVersion(course.plan.name().version(), adjustment).toString();
    }
}
