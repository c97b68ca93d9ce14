package yardclock.core.board;

import yardclock.core.result.Results;
import yardclock.core.ruling.Devices;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.ReleaseHolds;
import yardclock.core.ruling.Role;
import yardclock.core.run.Attempt;
import yardclock.core.run.CalledCriterion;
import yardclock.core.run.CourseRun;
import yardclock.core.run.Hold;
import yardclock.core.run.Turn;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the coordinator's frame. */
public final class ControlProjection {
    private static final int TRAY_LISTED = 24;

    private final Picture picture;
    private final CourseRun course;

    public ControlProjection(Picture picture) {
        this.picture = picture;
        this.course = picture.course();
    }

    public ControlFrame frame() {
        Tray tray = Tray.of(picture, TRAY_LISTED);
        List<ControlFrame.ProctorView> proctors = proctors();
        return new ControlFrame(
                picture.head(),
                next(firstFree(proctors)),
                TeamView.all(course.standBy()),
                CheckView.all(course.checklist()),
                SurfaceView.all(course),
                onCourse(),
                course.stations().stream().map(picture::station).toList(),
                proctors,
                waiting(),
                done(),
                picture.moment().alarms(),
                tray.listed(),
                tray.rest());
    }

    private ControlFrame.Next next(String proctor) {
        Optional<Attempt> next = course.whereabouts().next();
        List<String> blockers = new ArrayList<>();
        if (next.isPresent()) {
            block(blockers, course.status() == CourseRun.Course.STOPPED, Refusal.STOPPED);
            block(blockers, course.status() == CourseRun.Course.HELD, Refusal.COURSE_HELD);
            long now = picture.moment().gatewayMicros();
            ReleaseHolds.now(course, picture.heat(), picture.proofs(), now)
                    .forEach(refusal -> blockers.add(refusal.code()));
            block(blockers, !course.whereabouts().isFirstFree(), Refusal.STATION_NOT_READY);
            block(blockers, proctor.isEmpty(), Refusal.PROCTOR_BUSY);
            block(blockers, picture.watch().isAnyHeld(), Refusal.STATION_HELD);
            boolean early = now < course.notBeforeMicros();
            block(blockers, early, Refusal.INTERVAL_NOT_OVER);
        }
        return new ControlFrame.Next(
                next.map(Attempt::number).orElse(0),
                next.isPresent() && blockers.isEmpty(),
                blockers,
                course.notBeforeMicros(),
                proctor);
    }

    private static void block(List<String> blockers, boolean blocks, Refusal refusal) {
        if (blocks) {
            blockers.add(refusal.code());
        }
    }

    private static String firstFree(List<ControlFrame.ProctorView> proctors) {
        for (ControlFrame.ProctorView proctor : proctors) {
            if (proctor.number() == 0) {
                return proctor.device();
            }
        }
        return "";
    }

    private List<ControlFrame.ProctorView> proctors() {
        return picture.devices().all().stream()
                .filter(h -> h.role() == Role.PROCTOR)
                .map(this::proctor)
                .toList();
    }

    private ControlFrame.ProctorView proctor(Devices.Holder holder) {
        int number = course.whereabouts().beside(holder.device()).map(Attempt::number).orElse(0);
        return new ControlFrame.ProctorView(holder.device(), holder.person(), number);
    }

    private List<ControlFrame.OnCourse> onCourse() {
        return course.attempts().stream()
                .filter(a -> a.isOnCourse() || a.phase() == Attempt.Phase.FINISHED)
                .map(this::onCourse)
                .toList();
    }

    private ControlFrame.OnCourse onCourse(Attempt attempt) {
        boolean isFinished = attempt.phase() == Attempt.Phase.FINISHED;
        int index = attempt.stationIndex();
        List<CalledCriterion> calls = attempt.calls();
        return new ControlFrame.OnCourse(
                attempt.number(),
                Phases.word(attempt),
                isFinished ? "" : course.plan().stations().get(index).id(),
                index,
                picture.person(attempt.proctorDevice()),
                startedMicros(attempt),
                heldSinceMicros(attempt),
                attempt.startsAgain(),
                canRunAgain(attempt),
                (int) calls.stream().filter(c -> !c.fault()).count(),
                (int) calls.stream().filter(CalledCriterion::fault).count(),
                isFinished ? (int) attempt.turns().stream().filter(t -> !t.isRuled()).count() : 0);
    }

    private String canRunAgain(Attempt attempt) {
        boolean isHeld = attempt.isHeld() && !attempt.startsAgain();
        return attempt.lastTurn()
                .filter(turn -> isHeld && !turn.isRuled())
                .filter(turn -> course.plan().indexOf(turn.station().id()) > 0)
                .map(turn -> turn.station().id())
                .orElse("");
    }

    static long startedMicros(Attempt attempt) {
        return attempt.turns().stream()
                .findFirst()
                .map(Turn::start)
                .map(mark -> mark.best().micros())
                .orElse(-1L);
    }

    static long heldSinceMicros(Attempt attempt) {
        return attempt.holds().stream()
                .filter(Hold::isOpen)
                .mapToLong(Hold::shownSinceMicros)
                .findFirst()
                .orElse(-1);
    }

    private List<ControlFrame.WaitingView> waiting() {
        List<ControlFrame.WaitingView> waiting = new ArrayList<>();
        for (Attempt attempt : course.attempts()) {
            if (attempt.phase() == Attempt.Phase.WAITING) {
                int place = waiting.size() + 1;
                waiting.add(new ControlFrame.WaitingView(attempt.number(), attempt.group(), place));
            }
        }
        return waiting;
    }

    private List<ControlFrame.DoneView> done() {
        List<ControlFrame.DoneView> done = new ArrayList<>();
        for (Attempt attempt : course.attempts()) {
            if (attempt.isDone()) {
                done.add(done(attempt));
            }
        }
        return done;
    }

    private ControlFrame.DoneView done(Attempt attempt) {
        Results.Standing result = Results.standing(course.plan(), attempt);
        return new ControlFrame.DoneView(
                attempt.number(),
                result.outcome(),
                result.outcomeWords(),
                result.officialMicros(),
                attempt.isTold());
    }
}
