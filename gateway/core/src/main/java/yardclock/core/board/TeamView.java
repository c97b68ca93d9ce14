package yardclock.core.board;

import yardclock.core.readiness.StandBy;
import yardclock.core.readiness.Team;

import java.util.Arrays;
import java.util.List;

/**
 * One of the teams that stand by.
 *
 * @param team medical, course-crew or climb-crew
 * @param away whether it was called away; the rest is empty, or −1, while it is here
 * @param holds whether its absence holds new releases
 * @param words why, as it was said
 * @param person who said so
 */
public record TeamView(
        Team team, boolean away, boolean holds, String words, String person, long sinceMicros) {

    static List<TeamView> all(StandBy standBy) {
        return Arrays.stream(Team.values()).map(team -> of(team, standBy)).toList();
    }

    private static TeamView of(Team team, StandBy standBy) {
        return standBy.absence(team)
                .map(
                        absence ->
                                new TeamView(
                                        team,
                                        true,
                                        team.isNeededOnCourse(),
                                        absence.words(),
                                        absence.person(),
                                        absence.sinceMicros()))
                .orElseGet(() -> new TeamView(team, false, false, "", "", -1));
    }
}
