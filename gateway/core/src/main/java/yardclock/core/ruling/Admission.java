package yardclock.core.ruling;

import yardclock.core.calibration.Calibrations;
import yardclock.core.course.Contact;
import yardclock.core.course.CriterionKind;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Station;
import yardclock.core.heat.watch.HeatWatch;
import yardclock.core.run.Attempt;
import yardclock.core.run.CourseRun;
import yardclock.core.run.Movements;
import yardclock.core.run.Ruling;
import yardclock.core.run.StationRun;
import yardclock.core.run.Turn;
import yardclock.core.trouble.SensorWatch;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * Whether an act is admissible now.
 *
 * <p>All that speaks against it is gathered; the person is told what stands first in {@link
 * Refusal}'s order. Reads the state and changes nothing.
 */
final class Admission {
    static final int WORDS_MAX = 500;

    private final Situation situation;
    private final CourseRun course;
    private final Devices devices;
    private final ToIntFunction<SensorRef> sensorState;
    private final HeatWatch heat;
    private final Calibrations calibrations;
    private final SensorWatch watch;
    private final Set<Refusal> against = EnumSet.noneOf(Refusal.class);
    private final Devices.Holder who;
    private final long basis;
    private final Decisions.Request request;
    private Ruling standing;
    private final long nowMicros;
    private final SplitAdmission splits = new SplitAdmission(this);
    private final EvidenceAdmission evidence = new EvidenceAdmission(this);

    Admission(Situation situation, Devices.Holder who, Decisions.Request request, long nowMicros) {
        this.situation = situation;
        this.course = situation.course();
        this.devices = situation.devices();
        this.sensorState = situation.sensorState();
        this.calibrations = situation.calibrations();
        this.watch = situation.watch();
        this.heat = situation.heat();
        this.who = who;
        this.basis = request.basis();
        this.request = request;
        this.nowMicros = nowMicros;
    }

    /** Null when admissible. */
    Refusal refusal(Act act) {
        refuseIf(!act.kind().allows(who.role()), Refusal.NOT_YOUR_ROLE);
        refuseIf(ProofAdmission.isInTheWay(act, situation.proofs()), Refusal.PROOF_RUN_UNDER_WAY);
        switch (act.kind()) {
            case RELEASE -> release((Act.Release) act);
            case GIVE_START -> giveStart(((Act.GiveStart) act).number());
            case TAP -> tap((Act.Tap) act);
            case CALL -> call((Act.Call) act);
            case CONFIRM, CHOOSE_READING, VOID_SPLIT, HAND_TIME -> splits.check(act);
            case HOLD_CANDIDATE ->
                    hold(((Act.HoldCandidate) act).number(), ((Act.HoldCandidate) act).words());
            case RESUME_CANDIDATE -> resume(((Act.ResumeCandidate) act).number());
            case HOLD_COURSE -> holdCourse(((Act.HoldCourse) act).words());
            case RESUME_COURSE -> resumeCourse();
            case STOP_ALL -> words(((Act.StopAll) act).words());
            case RESTART -> restart();
            case STATION_READY -> ready(((Act.StationReady) act).station());
            case WITHDRAW -> withdraw((Act.Withdraw) act);
            case NO_SHOW -> noShow(((Act.NoShow) act).number());
            case TELL -> tell(((Act.Tell) act).number());
            case HAND_OVER -> handOver((Act.HandOver) act);
            case IDENTIFY -> identify((Act.Identify) act);
            case BEGIN_CALIBRATION, END_CALIBRATION ->
                    against.addAll(new CalibrationAdmission(calibrations, basis).against(act));
            case ADJUST_TRIGGER ->
                    against.addAll(TriggerAdmission.against((Act.AdjustTrigger) act, course));
            case BEGIN_PROOF_RUN, PROOF_TAP, PROOF_SIGNAL, SIGN_PROOF_RUN, END_PROOF_RUN ->
                    against.addAll(
                            new ProofAdmission(situation, who, basis, nowMicros).against(act));
            case GO_ON_BY_HAND -> goOnByHand((Act.GoOnByHand) act);
            case NOTE -> note((Act.Note) act);
            case CONFIRM_CLEAN, STRIKE, ASSIGN, ADD_MARK, WITHDRAW_RULING, RUN_STATION_AGAIN ->
                    evidence.check(act);
            case EQUIPMENT_FAULT -> equipmentFault((Act.EquipmentFault) act);
            case STOP_ONE -> stopOne((Act.StopOne) act);
            case SWAP_ORDER -> swap((Act.SwapOrder) act);
            case RUN_AGAIN -> runAgain((Act.RunAgain) act);
            case ACKNOWLEDGE_HEAT, HAND_READING, LIGHTNING_SEEN, GUST_READ ->
                    against.addAll(HeatAdmission.against(act, heat, nowMicros));
            case TEAM_AWAY, TEAM_BACK -> standBy(act);
            case CHECKLIST_DONE, CHECKLIST_OPEN ->
                    against.addAll(ChecklistActs.against(act, course.checklist()));
            case NOTE_SURFACE ->
                    against.addAll(SurfaceActs.against((Act.NoteSurface) act, course.surfaces()));
        }
        return against.isEmpty() ? null : against.iterator().next();
    }

    void refuseIf(boolean holds, Refusal refusal) {
        if (holds) {
            against.add(refusal);
        }
    }

    void words(String words) {
        refuseIf(words != null && words.length() > WORDS_MAX, Refusal.WORDS_TOO_LONG);
    }

    private void restart() {
        refuseIf(!isStopped(), Refusal.NOT_STOPPED);
        refuseIf(course.stopButtons().isAnyPressed(), Refusal.STOP_BUTTON_PRESSED);
    }

    private boolean isStopped() {
        return course.status() == CourseRun.Course.STOPPED;
    }

    /** The candidate, or null after noting that there is none. */
    Attempt candidate(int number) {
        Attempt attempt = course.attempt(number).orElse(null);
        refuseIf(attempt == null, Refusal.UNKNOWN_NUMBER);
        if (attempt != null && who.role() == Role.PROCTOR) {
            refuseIf(!attempt.proctorDevice().equals(who.device()), Refusal.NOT_YOUR_CANDIDATE);
        }
        return attempt;
    }

    StationRun station(String id) {
        StationRun run = course.station(id).orElse(null);
        refuseIf(run == null, Refusal.UNKNOWN_STATION);
        return run;
    }

    private void release(Act.Release act) {
        Attempt attempt = candidate(act.number());
        refuseIf(isStopped(), Refusal.STOPPED);
        refuseIf(course.status() == CourseRun.Course.HELD, Refusal.COURSE_HELD);
        against.addAll(ReleaseHolds.now(course, heat, situation.proofs(), nowMicros));
        proctor(act.proctorDevice());
        refuseIf(!course.whereabouts().isFirstFree(), Refusal.STATION_NOT_READY);
        refuseIf(watch.isAnyHeld(), Refusal.STATION_HELD);
        refuseIf(nowMicros < course.notBeforeMicros(), Refusal.INTERVAL_NOT_OVER);
        refuseIf(
                attempt != null
                        && course.whereabouts().next().filter(next -> next == attempt).isEmpty(),
                Refusal.NOT_NEXT);
    }

    private void proctor(String device) {
        boolean isProctor =
                devices.device(device).filter(h -> h.role() == Role.PROCTOR).isPresent();
        refuseIf(!isProctor, Refusal.NO_SUCH_PROCTOR);
        refuseIf(course.whereabouts().beside(device).isPresent(), Refusal.PROCTOR_BUSY);
    }

    private void giveStart(int number) {
        Attempt attempt = candidate(number);
        refuseIf(isStopped(), Refusal.STOPPED);
        Station first = course.plan().stations().get(0);
        refuseIf(!Movements.startsBySignal(first), Refusal.UNKNOWN_POINT);
        refuseIf(course.surfaces().holds(first.id()), Refusal.SURFACE_HOLDS);
        if (attempt == null) {
            return;
        }
        boolean waits = attempt.phase() == Attempt.Phase.WAITING;
        refuseIf(waits, Refusal.NOT_RELEASED);
        refuseIf(!waits && attempt.phase() != Attempt.Phase.RELEASED, Refusal.ALREADY_STARTED);
        refuseIf(course.isSignalPending(attempt), Refusal.ALREADY_STARTED);
        refuseIf(attempt.isHeld(), Refusal.ALREADY_HELD);
    }

    private void tap(Act.Tap act) {
        Attempt attempt = candidate(act.number());
        StationRun run = station(act.station());
        if (attempt == null || run == null) {
            return;
        }
        boolean isStart = "start".equals(act.point());
        boolean isKnown =
                isStart
                        || "finish".equals(act.point())
                        || run.station().checkpoint(act.point()).isPresent();
        refuseIf(!isKnown, Refusal.UNKNOWN_POINT);
        Turn turn = attempt.turnAt(act.station()).orElse(null);
        boolean isOver = attempt.isDone() || attempt.phase() == Attempt.Phase.WAITING;
        refuseIf(isOver, Refusal.NOT_ON_COURSE);
        refuseIf(turn != null && turn.isRuled(), Refusal.ALREADY_RULED);
        if (turn == null) {
            refuseIf(
                    !isStart || !course.whereabouts().isExpectedAt(attempt, run),
                    Refusal.NO_SUCH_SPLIT);
            refuseIf(run.state() != StationRun.State.READY, Refusal.STATION_NOT_READY);
            refuseIf(course.surfaces().holds(act.station()), Refusal.SURFACE_HOLDS);
            refuseIf(isStopped(), Refusal.STOPPED);
        }
    }

    private void call(Act.Call act) {
        Attempt attempt = candidate(act.number());
        StationRun run = station(act.station());
        words(act.words());
        if (run != null) {
            Station station = run.station();
            refuseIf(station.criterion(act.criterion()).isEmpty(), Refusal.UNKNOWN_CRITERION);
            refuseIf(
                    station.criterion(act.criterion())
                            .filter(c -> c.kind() == CriterionKind.ADVISED)
                            .isPresent(),
                    Refusal.ADVICE_ONLY);
        }
        if (attempt != null) {
            refuseIf(attempt.phase() == Attempt.Phase.WAITING, Refusal.NOT_ON_COURSE);
            refuseIf(attempt.isDone(), Refusal.ALREADY_DONE);
        }
    }

    /** The screen showed the attempt as it is, and what ended it is not final. */
    void notEnded(Attempt attempt, boolean mayBeDone) {
        refuseIf(basis >= 0 && basis != attempt.revision(), Refusal.OUT_OF_DATE);
        boolean isOpenAgain = mayBeDone && attempt.ended().isEmpty();
        refuseIf(attempt.isDone() && !isOpenAgain, Refusal.ALREADY_DONE);
        refuseIf(attempt.isTold(), Refusal.ALREADY_TOLD);
    }

    /** What stands in the way is shown with the refusal. */
    void meets(Ruling ruling) {
        standing = ruling;
    }

    /** The ruling that a refused one met; null where none stands. */
    Ruling standing() {
        return standing;
    }

    /** The entry that stood on the screen, −1 for none. */
    long supersedes() {
        return request.supersedes();
    }

    List<Long> shownMicros() {
        return request.shownMicros();
    }

    CourseRun course() {
        return course;
    }

    Devices.Holder who() {
        return who;
    }

    long nowMicros() {
        return nowMicros;
    }

    private void hold(int number, String words) {
        words(words);
        Attempt attempt = candidate(number);
        if (attempt != null) {
            refuseIf(!attempt.isOnCourse(), Refusal.NOT_ON_COURSE);
            refuseIf(attempt.isHeld(), Refusal.ALREADY_HELD);
        }
    }

    private void resume(int number) {
        Attempt attempt = candidate(number);
        refuseIf(isStopped(), Refusal.STOPPED);
        refuseIf(attempt != null && !attempt.isHeld(), Refusal.NOT_HELD);
        refuseIf(attempt != null && attempt.startsAgain(), Refusal.HOLD_ENDS_AT_START);
    }

    private void holdCourse(String words) {
        words(words);
        refuseIf(isStopped(), Refusal.STOPPED);
        refuseIf(course.status() == CourseRun.Course.HELD, Refusal.ALREADY_HELD);
    }

    private void resumeCourse() {
        refuseIf(isStopped(), Refusal.STOPPED);
        refuseIf(course.status() == CourseRun.Course.RUNNING, Refusal.NOT_HELD);
    }

    private void ready(String id) {
        StationRun run = station(id);
        if (run == null) {
            return;
        }
        refuseIf(run.state() != StationRun.State.TO_BE_RESET, Refusal.NOT_IN_USE);
        for (Contact home : run.station().homeContacts()) {
            int state = sensorState.applyAsInt(home.sensor());
            refuseIf(state >= 0 && state != home.state(), Refusal.NOT_HOME);
        }
    }

    private void withdraw(Act.Withdraw act) {
        words(act.words());
        Attempt attempt = candidate(act.number());
        if (attempt != null) {
            refuseIf(attempt.isDone(), Refusal.ALREADY_DONE);
        }
    }

    private void noShow(int number) {
        Attempt attempt = candidate(number);
        if (attempt != null) {
            refuseIf(attempt.isDone(), Refusal.ALREADY_DONE);
            boolean isSent = !attempt.isDone() && attempt.phase() != Attempt.Phase.WAITING;
            refuseIf(isSent, Refusal.ALREADY_STARTED);
        }
    }

    private void tell(int number) {
        Attempt attempt = candidate(number);
        if (attempt != null) {
            refuseIf(!attempt.isDone(), Refusal.NOT_DONE);
            refuseIf(attempt.isTold(), Refusal.ALREADY_TOLD);
        }
    }

    private void handOver(Act.HandOver act) {
        Attempt attempt = candidate(act.number());
        proctor(act.proctorDevice());
        if (attempt != null) {
            refuseIf(attempt.phase() == Attempt.Phase.WAITING, Refusal.NOT_RELEASED);
            refuseIf(attempt.isDone(), Refusal.ALREADY_DONE);
        }
    }

    private void identify(Act.Identify act) {
        refuseIf(course.plan().fieldUnit(act.unit()).isEmpty(), Refusal.UNKNOWN_UNIT);
        refuseIf(act.seconds() < 1 || act.seconds() > 60, Refusal.TIME_NOT_PLAUSIBLE);
    }

    private void goOnByHand(Act.GoOnByHand act) {
        words(act.words());
        refuseIf(!watch.isHeld(act.station()), Refusal.STATION_NOT_HELD);
    }

    private void note(Act.Note act) {
        words(act.words());
        if (act.number() != 0) {
            refuseIf(course.attempt(act.number()).isEmpty(), Refusal.UNKNOWN_NUMBER);
        }
    }

    private void equipmentFault(Act.EquipmentFault act) {
        station(act.station());
        hold(act.number(), act.words());
    }

    /** Anyone on staff may stop anyone who is on the course. */
    private void stopOne(Act.StopOne act) {
        words(act.words());
        Attempt attempt = course.attempt(act.number()).orElse(null);
        refuseIf(attempt == null, Refusal.UNKNOWN_NUMBER);
        if (attempt != null) {
            refuseIf(attempt.isDone(), Refusal.ALREADY_DONE);
            refuseIf(attempt.phase() == Attempt.Phase.WAITING, Refusal.NOT_ON_COURSE);
        }
    }

    private void standBy(Act act) {
        words(StandByActs.words(act));
        against.addAll(StandByActs.against(act, who.role(), course.standBy()));
    }

    private void swap(Act.SwapOrder act) {
        words(act.words());
        for (int number : List.of(act.number(), act.otherNumber())) {
            Attempt attempt = candidate(number);
            boolean waits = attempt == null || attempt.phase() == Attempt.Phase.WAITING;
            refuseIf(!waits, Refusal.ALREADY_STARTED);
        }
    }

    private void runAgain(Act.RunAgain act) {
        words(act.words());
        Attempt attempt = candidate(act.number());
        refuseIf(attempt != null && !attempt.isDone(), Refusal.NOT_OVER);
    }
}
