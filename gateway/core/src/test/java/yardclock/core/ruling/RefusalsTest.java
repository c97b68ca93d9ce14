package yardclock.core.ruling;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.engine.TestPlan;
import yardclock.core.engine.Walk;
import yardclock.core.engine.Yard;
import yardclock.core.proof.ProofWhy;
import yardclock.core.readiness.Ground;
import yardclock.core.readiness.Team;

/** Every reason to refuse, provoked; and which one is given when several hold. */
class RefusalsTest {
    private final Yard yard = Yard.open(new TestPlan().make());
    private final Walk walk = new Walk(yard, 101, "proctor1").at(10);

    @ParameterizedTest
    @EnumSource(Refusal.class)
    void each_reason_can_be_met(Refusal refusal) {
        assertThat(provoke(refusal).refusal()).isEqualTo(refusal);
        assertThat(refusal.words()).endsWith(".").hasSizeLessThan(120);
        assertThat(refusal.code()).matches("[a-z-]+");
    }

    private Verdict provoke(Refusal refusal) {
        return switch (refusal) {
            case UNKNOWN_DEVICE, NOT_YOUR_ROLE, WORDS_TOO_LONG, NO_PLAN -> whoAndWhether(refusal);
            case UNKNOWN_NUMBER, UNKNOWN_STATION, UNKNOWN_POINT, UNKNOWN_UNIT -> what(refusal);
            case UNKNOWN_CRITERION, ADVICE_ONLY -> criterion(refusal);
            case STOPPED, COURSE_HELD, NOT_NEXT, STATION_NOT_READY, PROCTOR_BUSY ->
                    release(refusal);
            case INTERVAL_NOT_OVER, NO_SUCH_PROCTOR -> release(refusal);
            case HEAT_HOLDS, HEAT_UNKNOWN, HEAT_SILENT, READING_IMPOSSIBLE -> heat(refusal);
            case TEAM_AWAY, ALREADY_AWAY, NOT_AWAY -> standBy(refusal);
            case CHECKLIST_OPEN, UNKNOWN_ITEM, ALREADY_SIGNED, NOT_SIGNED -> checklist(refusal);
            case SURFACE_HOLDS -> surface();
            case NOT_YOUR_CANDIDATE, NOT_RELEASED, ALREADY_STARTED, NOT_ON_COURSE -> where(refusal);
            case NO_SUCH_SPLIT, ALREADY_RULED, OUT_OF_DATE -> split(refusal);
            case CLOCK_STARTS_HERE, HOLD_ENDS_AT_START -> stationAgain(refusal);
            case NO_SUCH_EDGE -> takeBack(new Act.Strike("u1", "b", 99, Reason.OTHER, ""));
            case PASSAGE_ELSEWHERE -> hornAsFinish();
            case NO_SUCH_RULING -> takeBack(new Act.WithdrawRuling(101, "walk", 1, ""));
            case NO_HAND_MARKS, TIME_NOT_PLAUSIBLE -> handTime(refusal);
            case NOT_IN_USE, NOT_HOME -> station(refusal);
            case ALREADY_HELD, NOT_HELD, NOT_STOPPED -> hold(refusal);
            case STOP_BUTTON_PRESSED -> stopButton();
            case STATION_HELD, STATION_NOT_HELD -> sensorTrouble(refusal);
            case NOT_DONE, NOT_OVER, ALREADY_TOLD, ALREADY_DONE -> done(refusal);
            case UNKNOWN_SENSOR, SAME_UNIT, UNIT_NOT_READY, STATION_AWAITS ->
                    CalibrationRefusals.beginning(refusal);
            case CALIBRATED_IN_A_RING, ALREADY_CALIBRATING ->
                    CalibrationRefusals.beginning(refusal);
            case NOT_CALIBRATING, UNIT_CHANGED, TOO_FEW_TRIPS ->
                    CalibrationRefusals.accepting(refusal);
            case TOO_SCATTERED, STILL_UNSETTLED, LIMITS_EXCLUDE ->
                    CalibrationRefusals.accepting(refusal);
            case NO_WORDS, GUARDS_IMPOSSIBLE, STATION_TAKEN -> adjusting(refusal);
            case PROOF_RUN_UNDER_WAY, PROOF_RUN_MISSING, PROOF_RUN_NOT_CLEAR -> proving(refusal);
            case NOT_PROVING, SIGNED_BY_YOU -> proving(refusal);
            case ALREADY_ENROLLED, UNKNOWN_CODE -> enrol(refusal);
        };
    }

    private Verdict heat(Refusal refusal) {
        if (refusal == Refusal.READING_IMPOSSIBLE) {
            return yard.rule("safety1", new Act.HandReading(9_000, 5_000, null, "a thermometer"));
        }
        if (refusal == Refusal.HEAT_HOLDS) {
            yard.ok("crew1", new Act.LightningSeen());
        } else {
            yard.ok("safety1", new Act.HandReading(2_800, 4_500, null, "a thermometer"));
            yard.after(refusal == Refusal.HEAT_SILENT ? 62 * 60 : 40 * 60);
        }
        return yard.rule("coordinator1", new Act.Release(101, "proctor1"));
    }

    private Verdict stopButton() {
        yard.edge("u1/8", 1);
        return yard.rule("safety1", new Act.Restart());
    }

    private Verdict standBy(Refusal refusal) {
        if (refusal == Refusal.NOT_AWAY) {
            return yard.rule("safety1", new Act.TeamBack(Team.MEDICAL, ""));
        }
        yard.ok("safety1", new Act.TeamAway(Team.MEDICAL, ""));
        return refusal == Refusal.ALREADY_AWAY
                ? yard.rule("coordinator1", new Act.TeamAway(Team.MEDICAL, ""))
                : yard.rule("coordinator1", new Act.Release(101, "proctor1"));
    }

    private Verdict checklist(Refusal refusal) {
        Yard early = Yard.open(new TestPlan().startOfDay().make()).at(10);
        if (refusal == Refusal.ALREADY_SIGNED) {
            early.ok("safety1", new Act.ChecklistDone("cooling", ""));
        }
        return switch (refusal) {
            case UNKNOWN_ITEM -> early.rule("safety1", new Act.ChecklistDone("moat", ""));
            case ALREADY_SIGNED -> early.rule("safety2", new Act.ChecklistDone("cooling", ""));
            case NOT_SIGNED -> early.rule("safety1", new Act.ChecklistOpen("cooling", "no ice"));
            default -> early.rule("coordinator1", new Act.Release(101, "proctor1"));
        };
    }

    private static Verdict surface() {
        Yard icy = Yard.open(new TestPlan().holdIce().make()).at(10);
        icy.ok("safety1", new Act.NoteSurface("drag", Ground.ICE, false, false, ""));
        return icy.rule("coordinator1", new Act.Release(101, "proctor1"));
    }

    private Verdict whoAndWhether(Refusal refusal) {
        return switch (refusal) {
            case UNKNOWN_DEVICE -> yard.rule("stranger", new Act.Note(0, ""));
            case NOT_YOUR_ROLE -> yard.rule("crew1", new Act.Restart());
            case WORDS_TOO_LONG -> yard.rule("crew1", new Act.Note(0, "x".repeat(501)));
            default -> withoutPlan();
        };
    }

    private static Verdict withoutPlan() {
        Engine empty = new Engine();
        empty.apply(new Entry(1, 0, new Input.CodeIssued("c", Role.CREW, "")));
        empty.apply(new Entry(2, 0, new Input.Enrolled("d", "P", Role.CREW, "c", "t")));
        Input ruling = new Input.Ruling("k", "d", "", 0, 0, -1, new Act.Note(0, ""));
        return empty.apply(new Entry(3, 0, ruling)).verdict();
    }

    private Verdict what(Refusal refusal) {
        walk.release();
        return switch (refusal) {
            case UNKNOWN_NUMBER -> yard.rule("coordinator1", new Act.NoShow(999));
            case UNKNOWN_STATION -> yard.rule("crew1", new Act.StationReady("moat"));
            case UNKNOWN_POINT -> yard.rule("proctor1", new Act.Tap(101, "walk", null));
            default -> yard.rule("technician1", new Act.Identify("u99", 3));
        };
    }

    private Verdict criterion(Refusal refusal) {
        walk.release();
        String criterion = refusal == Refusal.ADVICE_ONLY ? "advice" : "style";
        return yard.rule("proctor1", new Act.Call(101, "walk", criterion, true, ""));
    }

    private Verdict release(Refusal refusal) {
        switch (refusal) {
            case STOPPED -> yard.ok("crew1", new Act.StopAll(""));
            case COURSE_HELD -> yard.ok("safety1", new Act.HoldCourse(Reason.WEATHER, ""));
            case STATION_NOT_READY -> walk.release().station("walk");
            case INTERVAL_NOT_OVER -> walk.release().station("walk").reset("walk");
            case PROCTOR_BUSY -> walk.release().station("walk").reset("walk").after(60);
            default -> {}
        }
        int number = refusal == Refusal.NOT_NEXT ? 105 : next();
        String proctor =
                switch (refusal) {
                    case NO_SUCH_PROCTOR -> "crew1";
                    case PROCTOR_BUSY -> "proctor1";
                    default -> "proctor2";
                };
        return yard.rule("coordinator1", new Act.Release(number, proctor));
    }

    private int next() {
        return yard.engine().control(yard.view()).next().number();
    }

    private Verdict sensorTrouble(Refusal refusal) {
        if (refusal == Refusal.STATION_NOT_HELD) {
            Act act = new Act.GoOnByHand("drag", Reason.SENSOR_FAILED, "");
            return yard.rule("coordinator1", act);
        }
        yard.edge("u2/3", 1);
        yard.after(5).health("u2");
        yard.after(5).health("u2");
        return yard.after(1).rule("coordinator1", new Act.Release(101, "proctor1"));
    }

    private Verdict where(Refusal refusal) {
        if (refusal == Refusal.NOT_RELEASED) {
            return yard.rule("coordinator1", new Act.HandOver(101, "proctor2"));
        }
        if (refusal == Refusal.NOT_ON_COURSE) {
            return yard.rule("coordinator1", new Act.HoldCandidate(101, Reason.OTHER, ""));
        }
        walk.release().station("walk");
        return refusal == Refusal.ALREADY_STARTED
                ? yard.rule("proctor1", new Act.GiveStart(101))
                : yard.rule("proctor2", new Act.Tap(101, "walk", "cap"));
    }

    private Verdict stationAgain(Refusal refusal) {
        walk.release().station("walk").after(5).station("drag");
        yard.ok("proctor1", new Act.EquipmentFault(101, "drag", ""));
        String station = refusal == Refusal.CLOCK_STARTS_HERE ? "walk" : "drag";
        Act again = new Act.RunStationAgain(101, station, Reason.EQUIPMENT_FAULT, "");
        Verdict first = yard.rule("coordinator1", again);
        return first.isAccepted() ? yard.rule("coordinator1", again) : first;
    }

    private Verdict hornAsFinish() {
        walk.release().station("walk");
        Input.Edge horn =
                yard.journal().stream()
                        .map(Entry::input)
                        .filter(Input.Edge.class::isInstance)
                        .map(Input.Edge.class::cast)
                        .findFirst()
                        .orElseThrow();
        return yard.rule(
                "proctor1",
                new Act.Assign(
                        "u1", horn.boot(), horn.seq(), 101, "walk", "finish", Reason.OTHER, ""));
    }

    private Verdict takeBack(Act act) {
        walk.release().station("walk");
        return yard.rule("proctor1", act);
    }

    private Verdict split(Refusal refusal) {
        walk.release().station("walk");
        return switch (refusal) {
            case NO_SUCH_SPLIT -> yard.rule("proctor1", new Act.Confirm(101, "fan"));
            case OUT_OF_DATE -> yard.rule("proctor1", new Act.Confirm(101, "walk"), 0);
            default -> {
                yard.ok("proctor1", new Act.Confirm(101, "walk"));
                yield yard.rule("proctor1", new Act.Confirm(101, "walk"));
            }
        };
    }

    private Verdict handTime(Refusal refusal) {
        walk.release().station("walk");
        long micros = refusal == Refusal.NO_HAND_MARKS ? 0 : 999_999;
        return yard.rule("proctor1", new Act.HandTime(101, "walk", micros, Reason.OTHER, ""));
    }

    private Verdict station(Refusal refusal) {
        walk.release();
        if (refusal == Refusal.NOT_HOME) {
            walk.station("walk").after(5).station("drag").after(5).station("poles");
        }
        return yard.rule("crew1", new Act.StationReady("poles"));
    }

    private Verdict hold(Refusal refusal) {
        walk.release();
        return switch (refusal) {
            case NOT_HELD -> yard.rule("proctor1", new Act.ResumeCandidate(101));
            case NOT_STOPPED -> yard.rule("safety1", new Act.Restart());
            default -> {
                yard.ok("proctor1", new Act.HoldCandidate(101, Reason.OTHER, ""));
                yield yard.rule("coordinator1", new Act.HoldCandidate(101, Reason.OTHER, ""));
            }
        };
    }

    private Verdict done(Refusal refusal) {
        walk.release();
        if (refusal == Refusal.NOT_DONE) {
            return yard.rule("proctor1", new Act.Tell(101));
        }
        if (refusal == Refusal.NOT_OVER) {
            return yard.rule("coordinator1", new Act.RunAgain(101, Reason.OTHER, ""));
        }
        yard.ok("proctor1", new Act.Withdraw(101, ""));
        if (refusal == Refusal.ALREADY_DONE) {
            return yard.rule("coordinator1", new Act.NoShow(101));
        }
        yard.ok("proctor1", new Act.Tell(101));
        return yard.rule("coordinator1", new Act.Tell(101));
    }

    private Verdict adjusting(Refusal refusal) {
        walk.release();
        long lockout = refusal == Refusal.GUARDS_IMPOSSIBLE ? 99_000_000 : 1_000_000;
        String station = refusal == Refusal.STATION_TAKEN ? "walk" : "laps";
        long micros = station.equals("walk") ? 0 : lockout;
        String words = refusal == Refusal.NO_WORDS ? "" : "wind";
        Act act = new Act.AdjustTrigger(station, "finish", 0, micros, 0, 0, 0, 0, 0, 0, 0, words);
        return yard.rule("technician1", act);
    }

    private Verdict proving(Refusal refusal) {
        Act begin = new Act.BeginProofRun("", ProofWhy.START_OF_DAY);
        Act sign = new Act.SignProofRun("nothing wired yet");
        if (refusal == Refusal.PROOF_RUN_MISSING) {
            Yard strict = Yard.open(new TestPlan().proofRequired().make());
            return strict.rule("coordinator1", new Act.Release(101, "proctor1"));
        }
        if (refusal == Refusal.NOT_PROVING) {
            return yard.rule("technician1", sign);
        }
        if (refusal == Refusal.PROOF_RUN_NOT_CLEAR) {
            walk.release();
            return yard.rule("technician1", begin);
        }
        yard.ok("technician1", begin).ok("technician1", sign);
        return refusal == Refusal.SIGNED_BY_YOU
                ? yard.rule("technician1", sign)
                : yard.rule("coordinator1", new Act.Release(101, "proctor1"));
    }

    private Verdict enrol(Refusal refusal) {
        String code = refusal == Refusal.UNKNOWN_CODE ? "code-none" : "code-crew1";
        return yard.take(new Input.Enrolled("new", "P", Role.CREW, code, "token")).verdict();
    }

    @Test
    void a_code_works_once_and_for_its_role_only() {
        yard.take(new Input.CodeIssued("fresh", Role.CREW, "coordinator1"));
        assertThat(enrol("a", Role.SAFETY, "fresh").refusal()).isEqualTo(Refusal.UNKNOWN_CODE);
        assertThat(enrol("a", Role.CREW, "fresh").isAccepted()).isTrue();
        assertThat(enrol("b", Role.CREW, "fresh").refusal()).isEqualTo(Refusal.ALREADY_ENROLLED);
        assertThat(enrol("b", Role.SAFETY, "fresh").refusal())
                .as("used before wrong role")
                .isEqualTo(Refusal.ALREADY_ENROLLED);
        assertThat(yard.engine().holder("token-a").orElseThrow().device()).isEqualTo("a");
        assertThat(yard.engine().holder("token-b")).isEmpty();
    }

    private Verdict enrol(String device, Role role, String code) {
        return yard.take(new Input.Enrolled(device, "P", role, code, "token-" + device)).verdict();
    }

    @Test
    void of_several_reasons_against_a_release_the_first_in_the_list_is_given() {
        walk.release().station("walk");
        yard.ok("crew1", new Act.StopAll(""));
        Act wrong = new Act.Release(105, "crew1");
        assertThat(yard.rule("stranger", wrong).refusal()).isEqualTo(Refusal.UNKNOWN_DEVICE);
        assertThat(yard.rule("crew1", wrong).refusal()).isEqualTo(Refusal.NOT_YOUR_ROLE);
        assertThat(release(999, "crew1")).isEqualTo(Refusal.UNKNOWN_NUMBER);
        assertThat(release(105, "crew1")).isEqualTo(Refusal.STOPPED);
        yard.ok("safety1", new Act.Restart());
        assertThat(release(105, "crew1")).isEqualTo(Refusal.COURSE_HELD);
        yard.ok("coordinator1", new Act.ResumeCourse());
        assertThat(release(105, "crew1")).isEqualTo(Refusal.NOT_NEXT);
        assertThat(release(102, "proctor1")).isEqualTo(Refusal.STATION_NOT_READY);
        walk.reset("walk");
        assertThat(release(102, "proctor1")).isEqualTo(Refusal.PROCTOR_BUSY);
        assertThat(release(102, "crew1")).isEqualTo(Refusal.INTERVAL_NOT_OVER);
        yard.after(60);
        assertThat(release(102, "crew1")).isEqualTo(Refusal.NO_SUCH_PROCTOR);
        assertThat(release(102, "proctor2")).isNull();
    }

    private Refusal release(int number, String proctor) {
        return yard.rule("coordinator1", new Act.Release(number, proctor)).refusal();
    }

    @Test
    void and_so_with_a_split() {
        walk.release().station("walk");
        String long501 = "x".repeat(501);
        assertThat(voided("crew1", 999, "moat", long501)).isEqualTo(Refusal.NOT_YOUR_ROLE);
        assertThat(voided("proctor2", 999, "moat", long501)).isEqualTo(Refusal.WORDS_TOO_LONG);
        assertThat(voided("proctor2", 999, "moat", "")).isEqualTo(Refusal.UNKNOWN_NUMBER);
        assertThat(voided("proctor2", 101, "moat", "")).isEqualTo(Refusal.UNKNOWN_STATION);
        assertThat(voided("proctor2", 101, "fan", "")).isEqualTo(Refusal.NOT_YOUR_CANDIDATE);
        assertThat(voided("proctor1", 101, "fan", "")).isEqualTo(Refusal.NO_SUCH_SPLIT);
        assertThat(voided("proctor1", 101, "walk", "")).isEqualTo(Refusal.OUT_OF_DATE);
        yard.ok("proctor1", new Act.Confirm(101, "walk"));
        assertThat(voided("proctor1", 101, "walk", "")).isEqualTo(Refusal.ALREADY_RULED);
    }

    private Refusal voided(String device, int number, String station, String words) {
        Act act = new Act.VoidSplit(number, station, Reason.OTHER, words);
        return yard.rule(device, act, 0).refusal();
    }

    @Test
    void without_a_plan_who_comes_before_what() {
        Engine empty = new Engine();
        empty.apply(new Entry(1, 0, new Input.CodeIssued("c", Role.CREW, "")));
        empty.apply(new Entry(2, 0, new Input.Enrolled("d", "P", Role.CREW, "c", "t")));
        Input stranger = new Input.Ruling("k1", "x", "", 0, 0, -1, new Act.Restart());
        Input wrongRole = new Input.Ruling("k2", "d", "", 0, 0, -1, new Act.Restart());
        assertThat(empty.apply(new Entry(3, 0, stranger)).verdict().refusal())
                .isEqualTo(Refusal.UNKNOWN_DEVICE);
        assertThat(empty.apply(new Entry(4, 0, wrongRole)).verdict().refusal())
                .isEqualTo(Refusal.NOT_YOUR_ROLE);
    }
}
