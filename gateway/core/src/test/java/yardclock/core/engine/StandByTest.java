package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.board.Head.ReleaseHold;
import yardclock.core.board.TeamView;
import yardclock.core.board.WatchFrame;
import yardclock.core.readiness.Team;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Refusal;

import java.util.List;

/**
 * Teams that are called away and come back: what that holds, and whom it leaves alone. The rules
 * are this project's design of the exam day; no outside source gives them.
 */
class StandByTest {
    private final Yard yard = Yard.open(new TestPlan().make());

    @Test
    void without_the_medical_team_nobody_new_is_released_and_those_who_move_go_on() {
        Walk walk = new Walk(yard, 101, "proctor1").at(10).release();
        yard.ok("safety1", new Act.TeamAway(Team.MEDICAL, " to the gate "));
        assertThat(releases(102)).isEqualTo(Refusal.TEAM_AWAY);
        assertThat(yard.engine().control(yard.view()).next().blockers()).contains("team-away");
        walk.station("walk");
        assertThat(yard.result(101).splits()).hasSize(1);
        WatchFrame watch = yard.engine().watch(yard.view());
        assertThat(watch.moving())
                .singleElement()
                .satisfies(
                        one -> {
                            assertThat(one.number()).isEqualTo(101);
                            assertThat(one.station().en()).isEqualTo("drag");
                        });
        TeamView medical = watch.teams().get(0);
        assertThat(medical.away() && medical.holds()).isTrue();
        assertThat(medical.words()).isEqualTo("to the gate");
        assertThat(medical.person()).isEqualTo("P. safety1");
    }

    @Test
    void back_again_releases_are_possible_at_once_unless_something_else_holds() {
        yard.at(10).ok("coordinator1", new Act.TeamAway(Team.COURSE_CREW, ""));
        yard.ok("safety1", new Act.TeamAway(Team.MEDICAL, ""));
        yard.ok("crew1", new Act.TeamBack(Team.COURSE_CREW, ""));
        assertThat(releases(101)).as("one of two is back").isEqualTo(Refusal.TEAM_AWAY);
        yard.ok("safety1", new Act.LightningSeen());
        yard.ok("safety1", new Act.TeamBack(Team.MEDICAL, ""));
        assertThat(releases(101)).isEqualTo(Refusal.HEAT_HOLDS);
        yard.after(31 * 60).ok("safety1", new Act.TeamAway(Team.MEDICAL, ""));
        assertThat(releases(101)).isEqualTo(Refusal.TEAM_AWAY);
        yard.ok("coordinator1", new Act.TeamBack(Team.MEDICAL, ""));
        assertThat(releases(101)).isNull();
    }

    @Test
    void the_climb_crews_absence_holds_nobody_on_the_timed_course() {
        yard.at(10).ok("safety1", new Act.TeamAway(Team.CLIMB_CREW, ""));
        assertThat(yard.engine().watch(yard.view()).head().holds()).isEmpty();
        TeamView climb = yard.engine().watch(yard.view()).teams().get(2);
        assertThat(climb.away()).isTrue();
        assertThat(climb.holds()).isFalse();
        assertThat(releases(101)).isNull();
    }

    @Test
    void every_staff_page_says_who_is_away_and_the_public_only_that_releases_are_held() {
        yard.at(10).ok("safety1", new Act.TeamAway(Team.MEDICAL, "to 104"));
        List<ReleaseHold> medical = List.of(new ReleaseHold("team-away", "medical"));
        Engine.View view = yard.view();
        assertThat(yard.engine().control(view).head().holds()).isEqualTo(medical);
        assertThat(yard.engine().post(view, "proctor1").head().holds()).isEqualTo(medical);
        assertThat(yard.engine().crew(view).head().holds()).isEqualTo(medical);
        assertThat(yard.engine().bench(view).head().holds()).isEqualTo(medical);
        assertThat(yard.engine().board(view).toString())
                .contains("course-held")
                .doesNotContain("medical")
                .doesNotContain("to 104");
    }

    @Test
    void the_crew_speaks_for_itself_only() {
        yard.at(10);
        assertThat(yard.rule("crew1", new Act.TeamAway(Team.MEDICAL, "")).refusal())
                .isEqualTo(Refusal.NOT_YOUR_ROLE);
        yard.ok("crew1", new Act.TeamAway(Team.COURSE_CREW, ""));
        yard.ok("safety1", new Act.TeamAway(Team.MEDICAL, ""));
        assertThat(yard.rule("crew1", new Act.TeamBack(Team.MEDICAL, "")).refusal())
                .isEqualTo(Refusal.NOT_YOUR_ROLE);
        assertThat(yard.rule("safety1", new Act.TeamAway(Team.CLIMB_CREW, "x".repeat(501))))
                .extracting("refusal")
                .isEqualTo(Refusal.WORDS_TOO_LONG);
    }

    @Test
    void one_who_moves_may_be_stopped_while_the_team_is_away() {
        new Walk(yard, 101, "proctor1").at(10).release();
        yard.ok("safety1", new Act.TeamAway(Team.MEDICAL, ""));
        yard.ok("safety1", new Act.StopOne(101, Reason.STAFFING, ""));
        assertThat(yard.engine().watch(yard.view()).moving()).isEmpty();
        assertThat(yard.result(101).outcome()).isEqualTo("safety-stop");
    }

    @Test
    void an_absence_outlasts_a_restart_and_a_replay_comes_to_the_same() {
        yard.at(10).ok("safety1", new Act.TeamAway(Team.MEDICAL, ""));
        yard.after(5).loseGateway().after(20).replaceBoard("m2", 20_000_000);
        assertThat(releases(101)).isEqualTo(Refusal.TEAM_AWAY);
        Engine again = new Engine();
        yard.journal().forEach(again::apply);
        assertThat(again.digest()).isEqualTo(yard.engine().digest());
        String before = yard.engine().digest();
        yard.ok("safety1", new Act.TeamBack(Team.MEDICAL, ""));
        assertThat(yard.engine().digest()).isNotEqualTo(before);
    }

    private Refusal releases(int number) {
        return yard.rule("coordinator1", new Act.Release(number, "proctor3")).refusal();
    }
}
