package yardclock.core.ruling;

import yardclock.core.readiness.StandBy;
import yardclock.core.readiness.StandBy.Absence;
import yardclock.core.readiness.Team;

import java.util.ArrayList;
import java.util.List;

/** What people say of the teams that stand by, judged and carried out. */
final class StandByActs {
    private StandByActs() {}

    /** The station crew speaks for itself only; the safety officer and the coordinator for all. */
    static List<Refusal> against(Act act, Role role, StandBy standBy) {
        Team team = team(act);
        List<Refusal> against = new ArrayList<>();
        if (role == Role.CREW && team != Team.COURSE_CREW) {
            against.add(Refusal.NOT_YOUR_ROLE);
        }
        boolean isLeaving = act.kind() == ActKind.TEAM_AWAY;
        if (isLeaving == standBy.isAway(team)) {
            against.add(isLeaving ? Refusal.ALREADY_AWAY : Refusal.NOT_AWAY);
        }
        return against;
    }

    static void carryOut(Act act, Devices.Holder who, StandBy standBy, long nowMicros) {
        if (act instanceof Act.TeamAway away) {
            String words = away.words() == null ? "" : away.words().strip();
            standBy.leave(new Absence(away.team(), words, who.person(), nowMicros));
        } else {
            standBy.comeBack(team(act));
        }
    }

    static String words(Act act) {
        return act instanceof Act.TeamAway away ? away.words() : ((Act.TeamBack) act).words();
    }

    private static Team team(Act act) {
        return act instanceof Act.TeamAway away ? away.team() : ((Act.TeamBack) act).team();
    }
}
