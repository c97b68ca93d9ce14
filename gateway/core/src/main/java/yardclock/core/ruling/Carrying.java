package yardclock.core.ruling;

import yardclock.core.course.Criterion;
import yardclock.core.course.DayRules;
import yardclock.core.course.SensorRef;
import yardclock.core.fact.Effect;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.passage.EdgeKey;
import yardclock.core.result.OutcomeKind;
import yardclock.core.result.Results;
import yardclock.core.run.Adjusting;
import yardclock.core.run.Attempt;
import yardclock.core.run.CalledCriterion;
import yardclock.core.run.CourseRun;
import yardclock.core.run.Movements;
import yardclock.core.run.RuledBy;
import yardclock.core.run.Ruling;
import yardclock.core.run.SplitMovements;
import yardclock.core.run.SplitReadings;
import yardclock.core.run.StationAgain;
import yardclock.core.run.StationRun;
import yardclock.core.run.TabletPress;
import yardclock.core.run.Turn;
import yardclock.core.run.TurnFile;

/** Carries one admitted act out. */
final class Carrying {
    private final Situation situation;
    private final TabletClocks clocks;
    private final Decisions.Request request;
    private final Devices.Holder who;
    private final Movements movements;
    private final SplitMovements splits;
    private final long nowMicros;
    private final Gathering out;

    Carrying(Situation situation, TabletClocks clocks, Order order, Gathering out) {
        this.situation = situation;
        this.clocks = clocks;
        this.request = order.request();
        this.who = order.who();
        this.nowMicros = order.nowMicros();
        this.movements = new Movements(situation.course(), nowMicros, out);
        this.splits = new SplitMovements(situation.course(), nowMicros, out);
        this.out = out;
    }

    /** What is asked, by whom, and when it is carried out. */
    record Order(Decisions.Request request, Devices.Holder who, long nowMicros) {}

    void out(Act act) {
        switch (act.kind()) {
            case RELEASE -> release((Act.Release) act);
            case GIVE_START -> movements.giveStart(attempt(((Act.GiveStart) act).number()));
            case TAP -> tap((Act.Tap) act);
            case CALL -> call((Act.Call) act);
            case CONFIRM -> confirm((Act.Confirm) act);
            case CHOOSE_READING -> chooseReading((Act.ChooseReading) act);
            case VOID_SPLIT -> voidSplit((Act.VoidSplit) act);
            case HAND_TIME -> handTime((Act.HandTime) act);
            case HOLD_CANDIDATE -> hold((Act.HoldCandidate) act);
            case RESUME_CANDIDATE -> resume(((Act.ResumeCandidate) act).number());
            case HOLD_COURSE -> movements.holdCourse(reason((Act.HoldCourse) act));
            case RESUME_COURSE -> movements.resumeCourse();
            case STOP_ALL -> movements.stopAll(stop((Act.StopAll) act), press());
            case RESTART -> movements.restart();
            case STATION_READY -> ready(((Act.StationReady) act).station());
            case WITHDRAW -> withdraw((Act.Withdraw) act);
            case NO_SHOW -> end(((Act.NoShow) act).number(), OutcomeKind.NO_SHOW, "");
            case TELL -> movements.tell(attempt(((Act.Tell) act).number()));
            case HAND_OVER -> handOver((Act.HandOver) act);
            case IDENTIFY -> identify((Act.Identify) act);
            case BEGIN_CALIBRATION -> begin((Act.BeginCalibration) act);
            case END_CALIBRATION -> end((Act.EndCalibration) act);
            case ADJUST_TRIGGER -> adjust((Act.AdjustTrigger) act);
            case BEGIN_PROOF_RUN, PROOF_TAP, PROOF_SIGNAL, SIGN_PROOF_RUN, END_PROOF_RUN ->
                    new ProofActs(situation, who, nowMicros, out).carryOut(act, this::press);
            case GO_ON_BY_HAND -> goOnByHand((Act.GoOnByHand) act);
            case NOTE -> { // The journal's entry is the note.
            }
            case CONFIRM_CLEAN -> confirmClean(((Act.ConfirmClean) act).number());
            case STRIKE -> strike((Act.Strike) act);
            case ASSIGN -> assign((Act.Assign) act);
            case ADD_MARK -> addMark((Act.AddMark) act);
            case WITHDRAW_RULING -> withdrawRuling((Act.WithdrawRuling) act);
            case EQUIPMENT_FAULT -> equipmentFault((Act.EquipmentFault) act);
            case STOP_ONE -> stopOne((Act.StopOne) act);
            case SWAP_ORDER -> swap((Act.SwapOrder) act);
            case RUN_AGAIN -> runAgain((Act.RunAgain) act);
            case RUN_STATION_AGAIN -> runStationAgain((Act.RunStationAgain) act);
            case ACKNOWLEDGE_HEAT, HAND_READING, LIGHTNING_SEEN, GUST_READ ->
                    HeatActs.carryOut(act, who, situation.heat(), nowMicros);
            case TEAM_AWAY, TEAM_BACK ->
                    StandByActs.carryOut(act, who, situation.course().standBy(), nowMicros);
            case CHECKLIST_DONE, CHECKLIST_OPEN ->
                    ChecklistActs.carryOut(act, who, situation.course().checklist(), nowMicros);
            case NOTE_SURFACE -> noteSurface((Act.NoteSurface) act);
        }
    }

    private void noteSurface(Act.NoteSurface act) {
        SurfaceActs.carryOut(act, who, situation.course().surfaces(), nowMicros);
    }

    /** What counts from when it was pressed, not from when it was received. */
    private TabletPress press() {
        return clocks.press(request, situation.course().lines());
    }

    private Attempt attempt(int number) {
        return situation.course().attempt(number).orElseThrow();
    }

    private void release(Act.Release act) {
        movements.release(attempt(act.number()), act.proctorDevice());
    }

    private void tap(Act.Tap act) {
        StationRun run = situation.course().station(act.station()).orElseThrow();
        movements.tap(attempt(act.number()), run, act.point(), press());
    }

    /** One warning more than the plan allows is a fault. */
    private void call(Act.Call act) {
        Attempt attempt = attempt(act.number());
        Criterion criterion =
                situation
                        .course()
                        .station(act.station())
                        .flatMap(run -> run.station().criterion(act.criterion()))
                        .orElseThrow();
        boolean isOneTooMany =
                attempt.warnings(act.station(), act.criterion()) >= criterion.warnings();
        boolean fault = act.fault() || isOneTooMany;
        movements.call(
                attempt,
                new CalledCriterion(act.station(), act.criterion(), fault, press(), who.person()));
        DayRules.AfterFault rule = situation.course().plan().day().afterFault();
        boolean isOver = fault && rule == DayRules.AfterFault.STOP_NOW;
        if (isOver) {
            String words = act.station() + ": " + criterion.words().en();
            end(act.number(), OutcomeKind.FAILED_CRITERION, words);
        }
    }

    private void confirm(Act.Confirm act) {
        Attempt attempt = attempt(act.number());
        splits.confirm(attempt, turn(attempt, act.station()), ruling(null, ""));
        concludeIfDone(attempt);
    }

    /** The reading's own words are the ruling's. */
    private void chooseReading(Act.ChooseReading act) {
        Attempt attempt = attempt(act.number());
        Turn turn = turn(attempt, act.station());
        SplitReadings.SplitReading reading = SplitReadings.of(turn).get(act.reading());
        splits.chooseReading(attempt, turn, reading, ruling(null, reading.words().en()));
        concludeIfDone(attempt);
    }

    private void voidSplit(Act.VoidSplit act) {
        Attempt attempt = attempt(act.number());
        Ruling ruling = ruling(reasonOf(act.reason()), act.words());
        splits.voidSplit(attempt, turn(attempt, act.station()), ruling);
        concludeIfDone(attempt);
    }

    private void handTime(Act.HandTime act) {
        Attempt attempt = attempt(act.number());
        Turn turn = turn(attempt, act.station());
        Ruling ruling = ruling(reasonOf(act.reason()), act.words());
        splits.handTime(attempt, turn, act.splitMicros(), ruling);
        concludeIfDone(attempt);
    }

    private void confirmClean(int number) {
        Attempt attempt = attempt(number);
        attempt.turns().stream()
                .filter(TurnFile::isCleanAndOpen)
                .forEach(turn -> splits.confirm(attempt, turn, ruling(null, "")));
        concludeIfDone(attempt);
    }

    private void strike(Act.Strike act) {
        EdgeKey key = new EdgeKey(act.unit(), act.boot(), act.seq());
        splits.strike(key, ruling(reasonOf(act.reason()), act.words()));
    }

    private void assign(Act.Assign act) {
        EdgeKey key = new EdgeKey(act.unit(), act.boot(), act.seq());
        Turn turn = turn(attempt(act.number()), act.station());
        splits.assign(key, turn, act.point(), ruling(reasonOf(act.reason()), act.words()));
    }

    private void addMark(Act.AddMark act) {
        Turn turn = turn(attempt(act.number()), act.station());
        Ruling ruling = ruling(reasonOf(act.reason()), act.words());
        splits.addMark(turn, act.point(), act.atMicros(), ruling);
    }

    private void withdrawRuling(Act.WithdrawRuling act) {
        Attempt attempt = attempt(act.number());
        Turn turn = turn(attempt, act.station());
        splits.withdraw(attempt, turn, act.entry(), ruling(null, act.words()));
        concludeIfDone(attempt);
    }

    private void equipmentFault(Act.EquipmentFault act) {
        String said = act.words() == null ? "" : act.words().strip();
        String words = (act.station() + " " + said).strip();
        movements.hold(attempt(act.number()), press(), words(Reason.EQUIPMENT_FAULT, words));
        situation.proofs().fault(act.station());
    }

    private void stopOne(Act.StopOne act) {
        boolean isMedical = act.reason() == Reason.MEDICAL;
        OutcomeKind outcome = isMedical ? OutcomeKind.MEDICAL_STOP : OutcomeKind.SAFETY_STOP;
        end(act.number(), outcome, "Stopped by " + who.person() + ".");
    }

    private void swap(Act.SwapOrder act) {
        movements.swap(act.number(), act.otherNumber());
    }

    private void runAgain(Act.RunAgain act) {
        String why = words(act.reason(), act.words());
        movements.runAgain(
                attempt(act.number()),
                OutcomeKind.VOID_RE_RUN.word(),
                "Void, to be run again: " + who.person() + ", " + why);
    }

    private void runStationAgain(Act.RunStationAgain act) {
        StationRun run = situation.course().station(act.station()).orElseThrow();
        String why = words(act.reason(), act.words());
        new StationAgain(situation.course(), nowMicros, out)
                .setAside(attempt(act.number()), run, who.person() + ", " + why);
    }

    private Turn turn(Attempt attempt, String station) {
        return attempt.turnAt(station).orElseThrow();
    }

    private void hold(Act.HoldCandidate act) {
        movements.hold(attempt(act.number()), press(), words(act.reason(), act.words()));
    }

    private void resume(int number) {
        movements.resume(attempt(number), press());
    }

    private String reason(Act.HoldCourse act) {
        return words(act.reason(), act.words());
    }

    private String stop(Act.StopAll act) {
        String words = act.words() == null ? "" : act.words().strip();
        return "Stopped by " + who.person() + (words.isEmpty() ? "" : ": " + words);
    }

    private void ready(String station) {
        movements.ready(
                situation.course().station(station).orElseThrow(), request.receivedMicros());
    }

    private void withdraw(Act.Withdraw act) {
        end(act.number(), OutcomeKind.WITHDRAWN, act.words() == null ? "" : act.words());
    }

    private void end(int number, OutcomeKind outcome, String words) {
        Attempt attempt = attempt(number);
        movements.end(attempt, outcome.word(), words);
        concludeIfDone(attempt);
    }

    private void handOver(Act.HandOver act) {
        movements.handOver(attempt(act.number()), act.proctorDevice());
    }

    private void identify(Act.Identify act) {
        out.ask(new Effect.Blink(act.unit(), act.seconds()));
    }

    private void begin(Act.BeginCalibration act) {
        SensorRef reference = new SensorRef(act.referenceUnit(), act.referenceSensor());
        SensorRef other = new SensorRef(act.unit(), act.sensor());
        situation.calibrations().begin(reference, other, nowMicros, out);
    }

    private void end(Act.EndCalibration act) {
        if (act.accept()) {
            situation.calibrations().accept(nowMicros, out);
        } else {
            situation.calibrations().breakOff("Given up by " + who.person() + ".", out);
        }
    }

    private void adjust(Act.AdjustTrigger act) {
        new Adjusting(situation.course(), nowMicros, out)
                .adjust(act.station(), act.point(), TriggerAdmission.times(act));
    }

    private void goOnByHand(Act.GoOnByHand act) {
        String why = words(act.reason(), act.words());
        situation.watch().goOnByHand(act.station(), who.person() + ", " + why);
    }

    private void concludeIfDone(Attempt attempt) {
        CourseRun course = situation.course();
        if (attempt.isDone()) {
            String outcome = Results.standing(course.plan(), attempt).outcome();
            out.conclude(Fact.of(FactKind.OUTCOME, attempt.number(), "", outcome));
        }
    }

    /** The ruling as it goes into a turn's file. */
    private Ruling ruling(Reason reason, String words) {
        RuledBy by =
                new RuledBy(
                        who.person(),
                        who.role().word(),
                        request.device(),
                        request.tick(),
                        request.receivedMicros(),
                        request.basis(),
                        request.shownMicros());
        Ruling.What what =
                new Ruling.What(
                        request.act().kind().word(),
                        reason == null ? "" : reason.word(),
                        words == null ? "" : words.strip());
        return Ruling.made(request.entry(), what, by, request.supersedes());
    }

    private static Reason reasonOf(Reason reason) {
        return reason == null ? Reason.OTHER : reason;
    }

    private static String words(Reason reason, String words) {
        String code = reasonOf(reason).word();
        return words == null || words.isBlank() ? code : code + ": " + words.strip();
    }
}
