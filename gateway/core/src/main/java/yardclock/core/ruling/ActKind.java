package yardclock.core.ruling;

import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** Every act, with its word in JSON and the roles that may do it. */
public enum ActKind {
    RELEASE(Act.Release.class, Role.COORDINATOR),
    GIVE_START(Act.GiveStart.class, Role.PROCTOR),
    TAP(Act.Tap.class, Role.PROCTOR),
    CALL(Act.Call.class, Role.PROCTOR),
    CONFIRM(Act.Confirm.class, Role.PROCTOR, Role.COORDINATOR),
    CHOOSE_READING(Act.ChooseReading.class, Role.PROCTOR, Role.COORDINATOR),
    VOID_SPLIT(Act.VoidSplit.class, Role.PROCTOR, Role.COORDINATOR),
    HAND_TIME(Act.HandTime.class, Role.PROCTOR, Role.COORDINATOR),
    HOLD_CANDIDATE(Act.HoldCandidate.class, Role.PROCTOR, Role.COORDINATOR),
    RESUME_CANDIDATE(Act.ResumeCandidate.class, Role.PROCTOR, Role.COORDINATOR),
    HOLD_COURSE(Act.HoldCourse.class, Role.COORDINATOR, Role.SAFETY),
    RESUME_COURSE(Act.ResumeCourse.class, Role.COORDINATOR),
    STOP_ALL(Act.StopAll.class, Role.values()),
    RESTART(Act.Restart.class, Role.SAFETY),
    STATION_READY(Act.StationReady.class, Role.CREW, Role.COORDINATOR),
    WITHDRAW(Act.Withdraw.class, Role.PROCTOR, Role.COORDINATOR),
    NO_SHOW(Act.NoShow.class, Role.COORDINATOR),
    TELL(Act.Tell.class, Role.PROCTOR, Role.COORDINATOR),
    HAND_OVER(Act.HandOver.class, Role.COORDINATOR),
    IDENTIFY(Act.Identify.class, Role.TECHNICIAN),
    BEGIN_CALIBRATION(Act.BeginCalibration.class, Role.TECHNICIAN),
    END_CALIBRATION(Act.EndCalibration.class, Role.TECHNICIAN),
    ADJUST_TRIGGER(Act.AdjustTrigger.class, Role.TECHNICIAN),
    BEGIN_PROOF_RUN(Act.BeginProofRun.class, Role.TECHNICIAN),
    PROOF_TAP(Act.ProofTap.class, Role.PROCTOR, Role.TECHNICIAN),
    PROOF_SIGNAL(Act.ProofSignal.class, Role.PROCTOR, Role.TECHNICIAN),
    SIGN_PROOF_RUN(Act.SignProofRun.class, Role.PROCTOR, Role.COORDINATOR, Role.TECHNICIAN),
    END_PROOF_RUN(Act.EndProofRun.class, Role.COORDINATOR, Role.TECHNICIAN),
    GO_ON_BY_HAND(Act.GoOnByHand.class, Role.COORDINATOR, Role.TECHNICIAN),
    NOTE(Act.Note.class, Role.values()),
    CONFIRM_CLEAN(Act.ConfirmClean.class, Role.PROCTOR, Role.COORDINATOR),
    STRIKE(Act.Strike.class, Role.PROCTOR, Role.COORDINATOR),
    ASSIGN(Act.Assign.class, Role.PROCTOR, Role.COORDINATOR),
    ADD_MARK(Act.AddMark.class, Role.PROCTOR, Role.COORDINATOR),
    WITHDRAW_RULING(Act.WithdrawRuling.class, Role.PROCTOR, Role.COORDINATOR),
    EQUIPMENT_FAULT(Act.EquipmentFault.class, Role.PROCTOR, Role.CREW, Role.COORDINATOR),
    STOP_ONE(Act.StopOne.class, Role.values()),
    SWAP_ORDER(Act.SwapOrder.class, Role.COORDINATOR),
    RUN_AGAIN(Act.RunAgain.class, Role.COORDINATOR),
    RUN_STATION_AGAIN(Act.RunStationAgain.class, Role.COORDINATOR),
    ACKNOWLEDGE_HEAT(Act.AcknowledgeHeat.class, Role.COORDINATOR, Role.SAFETY),
    HAND_READING(Act.HandReading.class, Role.COORDINATOR, Role.SAFETY),
    LIGHTNING_SEEN(Act.LightningSeen.class, Role.values()),
    GUST_READ(Act.GustRead.class, Role.COORDINATOR, Role.SAFETY),
    TEAM_AWAY(Act.TeamAway.class, Role.COORDINATOR, Role.SAFETY, Role.CREW),
    TEAM_BACK(Act.TeamBack.class, Role.COORDINATOR, Role.SAFETY, Role.CREW),
    CHECKLIST_DONE(Act.ChecklistDone.class, Role.COORDINATOR, Role.SAFETY),
    CHECKLIST_OPEN(Act.ChecklistOpen.class, Role.COORDINATOR, Role.SAFETY),
    NOTE_SURFACE(Act.NoteSurface.class, Role.COORDINATOR, Role.SAFETY);

    private static final Map<Class<? extends Act>, ActKind> KINDS = new LinkedHashMap<>();

    static {
        for (ActKind kind : values()) {
            KINDS.put(kind.type, kind);
        }
    }

    private final Class<? extends Act> type;
    private final Set<Role> roles;

    ActKind(Class<? extends Act> type, Role... roles) {
        this.type = type;
        this.roles = EnumSet.noneOf(Role.class);
        for (Role role : roles) {
            this.roles.add(role);
        }
    }

    static ActKind of(Act act) {
        return KINDS.get(act.getClass());
    }

    /** The record that carries this act. */
    public Class<? extends Act> type() {
        return type;
    }

    public boolean allows(Role role) {
        return roles.contains(role);
    }

    /** The word in JSON, as {@code give-start}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
