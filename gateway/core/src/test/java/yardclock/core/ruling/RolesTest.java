package yardclock.core.ruling;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import yardclock.core.engine.TestPlan;
import yardclock.core.engine.Yard;
import yardclock.core.proof.ProofWhy;
import yardclock.core.readiness.Ground;
import yardclock.core.readiness.Team;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Who may do what: every act by every role. */
class RolesTest {
    /** Columns: coordinator, technician, proctor, crew, safety. */
    private static final String TABLE =
            """
            release            C - - - -
            give-start         - - P - -
            tap                - - P - -
            call               - - P - -
            confirm            C - P - -
            choose-reading     C - P - -
            void-split         C - P - -
            hand-time          C - P - -
            hold-candidate     C - P - -
            resume-candidate   C - P - -
            hold-course        C - - - S
            resume-course      C - - - -
            stop-all           C T P W S
            restart            - - - - S
            station-ready      C - - W -
            withdraw           C - P - -
            no-show            C - - - -
            tell               C - P - -
            hand-over          C - - - -
            identify           - T - - -
            begin-calibration  - T - - -
            end-calibration    - T - - -
            adjust-trigger     - T - - -
            begin-proof-run    - T - - -
            proof-tap          - T P - -
            proof-signal       - T P - -
            sign-proof-run     C T P - -
            end-proof-run      C T - - -
            go-on-by-hand      C T - - -
            note               C T P W S
            confirm-clean      C - P - -
            strike             C - P - -
            assign             C - P - -
            add-mark           C - P - -
            withdraw-ruling    C - P - -
            equipment-fault    C - P W -
            stop-one           C T P W S
            swap-order         C - - - -
            run-again          C - - - -
            run-station-again  C - - - -
            acknowledge-heat   C - - - S
            hand-reading       C - - - S
            lightning-seen     C T P W S
            gust-read          C - - - S
            team-away          C - - W S
            team-back          C - - W S
            checklist-done     C - - - S
            checklist-open     C - - - S
            note-surface       C - - - S
            """;

    static List<Arguments> table() {
        List<Arguments> all = new ArrayList<>();
        for (String line : TABLE.lines().toList()) {
            String[] words = line.split("\\s+");
            ActKind kind = ActKind.valueOf(words[0].toUpperCase(Locale.ROOT).replace('-', '_'));
            for (Role role : Role.values()) {
                all.add(Arguments.of(kind, role, !words[1 + role.ordinal()].equals("-")));
            }
        }
        return all;
    }

    @Test
    void the_table_knows_every_act_and_role() {
        assertThat(table()).hasSize(ActKind.values().length * Role.values().length);
        assertThat(TABLE.lines().map(line -> line.split("\\s+")[0]))
                .containsExactlyElementsOf(
                        List.of(ActKind.values()).stream().map(ActKind::word).toList());
    }

    @ParameterizedTest
    @MethodSource("table")
    void only_the_roles_in_the_table_may(ActKind kind, Role role, boolean may) {
        Yard yard = Yard.open(new TestPlan().make());
        Refusal refusal = yard.at(10).rule(role.word() + "1", some(kind)).refusal();
        if (may) {
            assertThat(refusal).isNotEqualTo(Refusal.NOT_YOUR_ROLE);
        } else {
            assertThat(refusal).isEqualTo(Refusal.NOT_YOUR_ROLE);
        }
    }

    @Test
    void each_act_is_carried_by_its_own_record() {
        for (ActKind kind : ActKind.values()) {
            assertThat(some(kind)).isInstanceOf(kind.type());
            assertThat(some(kind).kind()).isEqualTo(kind);
        }
    }

    private static Act some(ActKind kind) {
        return switch (kind) {
            case RELEASE -> new Act.Release(101, "proctor1");
            case GIVE_START -> new Act.GiveStart(101);
            case TAP -> new Act.Tap(101, "walk", "start");
            case CALL -> new Act.Call(101, "walk", "rough", false, "");
            case CONFIRM -> new Act.Confirm(101, "walk");
            case CHOOSE_READING -> new Act.ChooseReading(101, "walk", 0);
            case VOID_SPLIT -> new Act.VoidSplit(101, "walk", Reason.OTHER, "");
            case HAND_TIME -> new Act.HandTime(101, "walk", 0, Reason.OTHER, "");
            case HOLD_CANDIDATE -> new Act.HoldCandidate(101, Reason.OTHER, "");
            case RESUME_CANDIDATE -> new Act.ResumeCandidate(101);
            case HOLD_COURSE -> new Act.HoldCourse(Reason.WEATHER, "");
            case RESUME_COURSE -> new Act.ResumeCourse();
            case STOP_ALL -> new Act.StopAll("");
            case RESTART -> new Act.Restart();
            case STATION_READY -> new Act.StationReady("walk");
            case WITHDRAW -> new Act.Withdraw(101, "");
            case NO_SHOW -> new Act.NoShow(101);
            case TELL -> new Act.Tell(101);
            case HAND_OVER -> new Act.HandOver(101, "proctor2");
            case IDENTIFY -> new Act.Identify("u1", 5);
            case BEGIN_CALIBRATION -> new Act.BeginCalibration("u1", 1, "u2", 1);
            case END_CALIBRATION -> new Act.EndCalibration(false);
            case ADJUST_TRIGGER ->
                    new Act.AdjustTrigger("laps", "start", 0, 0, 0, 0, 0, 0, 0, 0, 0, "wind");
            case BEGIN_PROOF_RUN -> new Act.BeginProofRun("", ProofWhy.START_OF_DAY);
            case PROOF_TAP -> new Act.ProofTap("walk", "start");
            case PROOF_SIGNAL -> new Act.ProofSignal();
            case SIGN_PROOF_RUN -> new Act.SignProofRun("");
            case END_PROOF_RUN -> new Act.EndProofRun("");
            case GO_ON_BY_HAND -> new Act.GoOnByHand("walk", Reason.SENSOR_FAILED, "");
            case NOTE -> new Act.Note(0, "wet grass");
            case CONFIRM_CLEAN -> new Act.ConfirmClean(101);
            case STRIKE -> new Act.Strike("u1", "b", 1, Reason.OTHER, "");
            case ASSIGN -> new Act.Assign("u1", "b", 1, 101, "walk", "start", Reason.OTHER, "");
            case ADD_MARK -> new Act.AddMark(101, "walk", "start", 0, Reason.OTHER, "");
            case WITHDRAW_RULING -> new Act.WithdrawRuling(101, "walk", 1, "");
            case EQUIPMENT_FAULT -> new Act.EquipmentFault(101, "walk", "");
            case STOP_ONE -> new Act.StopOne(101, Reason.MEDICAL, "");
            case SWAP_ORDER -> new Act.SwapOrder(101, 102, Reason.OTHER, "");
            case RUN_AGAIN -> new Act.RunAgain(101, Reason.EQUIPMENT_FAULT, "");
            case RUN_STATION_AGAIN ->
                    new Act.RunStationAgain(101, "drag", Reason.EQUIPMENT_FAULT, "");
            case ACKNOWLEDGE_HEAT -> new Act.AcknowledgeHeat();
            case HAND_READING -> new Act.HandReading(2_500, 5_000, null, "sling psychrometer");
            case LIGHTNING_SEEN -> new Act.LightningSeen();
            case GUST_READ -> new Act.GustRead(4_000);
            case TEAM_AWAY -> new Act.TeamAway(Team.COURSE_CREW, "");
            case TEAM_BACK -> new Act.TeamBack(Team.COURSE_CREW, "");
            case CHECKLIST_DONE -> new Act.ChecklistDone("cooling", "");
            case CHECKLIST_OPEN -> new Act.ChecklistOpen("cooling", "the ice has melted");
            case NOTE_SURFACE -> new Act.NoteSurface("walk", Ground.WET, false, false, "");
        };
    }
}
