package yardclock.core.run;

import yardclock.core.course.Combination;
import yardclock.core.course.Contact;
import yardclock.core.course.Station;
import yardclock.core.course.Trigger;
import yardclock.core.fact.Effect;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.time.Stamp;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Carries out what was admitted: releases, taps, rulings on splits, holds. It asks no leave;
 * whether an act is admissible was decided before.
 */
public final class Movements {
    private final CourseRun course;
    private final long nowMicros;
    private final Gathering out;

    public Movements(CourseRun course, long nowMicros, Gathering out) {
        this.course = course;
        this.nowMicros = nowMicros;
        this.out = out;
    }

    public void release(Attempt attempt, String proctorDevice) {
        attempt.phase = Attempt.Phase.RELEASED;
        attempt.proctorDevice = proctorDevice;
        attempt.releasedMicros = nowMicros;
        attempt.releaseOrder = course.releases++;
        attempt.revision++;
        course.lastReleaseMicros = nowMicros;
        out.conclude(Fact.of(FactKind.RELEASED, attempt.number, "", ""));
    }

    public void giveStart(Attempt attempt) {
        attempt.signalAskedMicros = nowMicros;
        attempt.signalMissed = false;
        course.waking().note(attempt);
        attempt.revision++;
        askForSignal(course, out);
    }

    static void askForSignal(CourseRun course, Gathering out) {
        for (Contact contact : course.plan.stations().get(0).start().contacts()) {
            int output = contact.sensor().sensor();
            out.ask(new Effect.Show(contact.sensor().unit(), output, "start", 3_000));
        }
    }

    public void tap(Attempt attempt, StationRun run, String point, TabletPress press) {
        Turn turn = attempt.turnAt(run.station.id()).orElse(run.current());
        Trigger finish = run.station.finish();
        boolean judged = point.equals(TurnJudge.FINISH) && finish.isJudged();
        long allowance = judged ? course.plan.timing().judgedAllowanceMicros() : 0;
        Tap tap = new Tap(press, allowance);
        switch (point) {
            case TurnJudge.START -> turn.taps.addStart(tap);
            case TurnJudge.FINISH -> turn.taps.addFinish(tap);
            default -> {
                turn.taps.addCheckpoint(point, tap);
                out.conclude(mark(turn, attempt, point, tap.mark()));
            }
        }
        attempt.revision++;
        course.judge().judge(run, turn, nowMicros, out);
    }

    private static Fact mark(Turn turn, Attempt attempt, String point, Mark tap) {
        return new Fact(
                FactKind.MARK_PROPOSED,
                attempt.number,
                turn.station.id(),
                point,
                tap == null ? null : tap.stamp(),
                0,
                Mark.Source.TAP.name());
    }

    public void call(Attempt attempt, CalledCriterion called) {
        attempt.calls.add(called);
        attempt.revision++;
    }

    public void hold(Attempt attempt, TabletPress press, String reason) {
        attempt.holds.add(new Hold(press, null, reason));
        attempt.revision++;
        out.conclude(Fact.of(FactKind.HOLD_IN, attempt.number, "", reason));
    }

    public void resume(Attempt attempt, TabletPress press) {
        course.endHold(attempt, press, out);
    }

    public void holdCourse(String words) {
        course.status = CourseRun.Course.HELD;
        course.statusWords = words;
        out.conclude(Fact.of(FactKind.COURSE_HELD, 0, "", words));
    }

    public void resumeCourse() {
        course.status = CourseRun.Course.RUNNING;
        course.statusWords = "";
        out.conclude(Fact.of(FactKind.COURSE_RESUMED, 0, "", ""));
    }

    /** Everyone on the course is held at once; each is resumed by a person. */
    public void stopAll(String words, TabletPress press) {
        course.status = CourseRun.Course.STOPPED;
        course.statusWords = words;
        out.conclude(Fact.of(FactKind.STOPPED, 0, "", words));
        course.attempts.values().stream()
                .filter(a -> a.isOnCourse() && !a.isHeld())
                .forEach(a -> hold(a, press, "stopped"));
    }

    /** After a stop new releases stay on hold until the coordinator resumes them. */
    public void restart() {
        course.status = CourseRun.Course.HELD;
        course.statusWords = "Restarted after a stop. The coordinator resumes releases.";
        out.conclude(Fact.of(FactKind.RESTARTED, 0, "", ""));
    }

    public void ready(StationRun run, long atMicros) {
        run.moveTo(StationRun.State.READY, atMicros);
        out.conclude(Fact.of(FactKind.STATION_READY, 0, run.station.id(), ""));
        course.judge().judge(run, run.current(), nowMicros, out);
    }

    /** Ends an attempt before its time: the outcome's word and why. */
    public void end(Attempt attempt, String outcome, String words) {
        if (attempt.isHeld()) {
            resume(attempt, TabletPress.of(Stamp.exactly(nowMicros), course.lines));
        }
        attempt.ended = outcome;
        attempt.endedWords = words;
        attempt.end(course.plan);
        attempt.signalAskedMicros = -1;
        attempt.startsAgain = false;
        attempt.revision++;
        attempt.turns.stream().filter(turn -> !turn.isRuled()).forEach(Turn::close);
        course.stations.values().forEach(run -> course.leaveStation(attempt, run, nowMicros, out));
    }

    public void tell(Attempt attempt) {
        attempt.told = true;
        attempt.revision++;
        out.conclude(Fact.of(FactKind.TOLD, attempt.number, "", ""));
    }

    /** Two who wait change places in the queue. */
    public void swap(int number, int other) {
        Map<Integer, Attempt> before = new LinkedHashMap<>(course.attempts);
        course.attempts.clear();
        for (int each : before.keySet()) {
            int now = each == number ? other : each == other ? number : each;
            course.attempts.put(now, before.get(now));
        }
    }

    /** The attempt stays on record, void; a new one of the same number waits behind everybody. */
    public void runAgain(Attempt attempt, String outcome, String words) {
        attempt.ended = outcome;
        attempt.endedWords = words;
        attempt.revision++;
        course.earlierRuns.add(attempt);
        course.attempts.remove(attempt.number);
        course.attempts.put(attempt.number, attempt.again());
        out.conclude(Fact.of(FactKind.OUTCOME, attempt.number, "", attempt.ended));
        out.conclude(Fact.of(FactKind.RUN_AGAIN, attempt.number, "", words));
    }

    public void handOver(Attempt attempt, String proctorDevice) {
        attempt.proctorDevice = proctorDevice;
        attempt.revision++;
    }

    /** Whether the first station's start is given by signal. */
    public static boolean startsBySignal(Station first) {
        return first.start().combination() == Combination.SIGNAL;
    }
}
