package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.board.ControlFrame;
import yardclock.core.board.Head.ReleaseHold;
import yardclock.core.board.SurfaceView;
import yardclock.core.course.Condition;
import yardclock.core.course.Text;
import yardclock.core.readiness.Ground;
import yardclock.core.result.Result.SplitLine;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Verdict;

import java.util.List;

/**
 * What is noted of the ground and the weather: what it holds, what it leaves alone, and what of it
 * stands with each attempt. The rules are this project's own; no outside source gives them.
 */
class SurfacesTest {
    private final Yard yard = Yard.open(new TestPlan().holdIce().make()).at(10);

    @Test
    void nothing_noted_is_not_dry() {
        SurfaceView first = surfaces().get(0);
        assertThat(first.where()).isEqualTo("walk");
        assertThat(first.conditions()).isEmpty();
        assertThat(first.atMicros()).isEqualTo(-1);
        note("walk", Ground.DRY);
        assertThat(surfaces().get(0).conditions()).containsExactly(Condition.DRY);
        assertThat(surfaces().get(1).conditions()).isEmpty();
    }

    @Test
    void a_note_about_the_whole_yard_is_one_about_every_station_and_the_climb() {
        note("drag", Ground.DRY);
        yard.after(5).ok("safety1", new Act.NoteSurface("yard", Ground.WET, true, true, " rain "));
        assertThat(surfaces())
                .hasSize(7)
                .allSatisfy(
                        spot -> {
                            assertThat(spot.conditions())
                                    .containsExactly(
                                            Condition.WET, Condition.GLARE, Condition.GUST);
                            assertThat(spot.words()).isEqualTo("rain");
                            assertThat(spot.person()).isEqualTo("P. safety1");
                        });
        assertThat(surfaces().get(6).where()).isEqualTo("climb");
        assertThat(surfaces().get(6).name()).isEqualTo(new Text("Climb", "Subida"));
        note("drag", Ground.DRY);
        assertThat(surfaces().get(1).conditions()).containsExactly(Condition.DRY);
        assertThat(surfaces().get(2).conditions()).contains(Condition.WET);
    }

    @Test
    void a_condition_the_plan_holds_for_holds_releases_until_it_is_noted_to_be_otherwise() {
        note("drag", Ground.WET);
        assertThat(control().head().holds()).as("wet is advice in this plan").isEmpty();
        note("drag", Ground.ICE);
        assertThat(release().refusal()).isEqualTo(Refusal.SURFACE_HOLDS);
        assertThat(control().next().blockers()).containsExactly("surface-holds");
        assertThat(control().head().holds()).containsExactly(new ReleaseHold("surface-holds", ""));
        assertThat(control().surfaces().get(1).holds()).isTrue();
        assertThat(control().surfaces().get(2).holds()).isFalse();
        note("drag", Ground.WET);
        assertThat(release().isAccepted()).isTrue();
    }

    @Test
    void ice_at_the_climb_holds_nobody_on_the_timed_course() {
        note("climb", Ground.ICE);
        assertThat(surfaces().get(6).holds()).isFalse();
        assertThat(release().isAccepted()).isTrue();
    }

    @Test
    void who_waits_at_an_icy_station_is_not_started_there_and_who_is_at_one_goes_on() {
        Walk walk = new Walk(yard, 101, "proctor1").release();
        note("walk", Ground.ICE);
        assertThat(yard.rule("proctor1", new Act.GiveStart(101)).refusal())
                .isEqualTo(Refusal.SURFACE_HOLDS);
        note("walk", Ground.WET);
        walk.station("walk");
        note("drag", Ground.ICE);
        assertThat(yard.rule("proctor1", new Act.Tap(101, "drag", "start")).refusal())
                .isEqualTo(Refusal.SURFACE_HOLDS);
        note("drag", Ground.DRY);
        yard.ok("proctor1", new Act.Tap(101, "drag", "start"));
        note("drag", Ground.ICE);
        yard.after(20).ok("proctor1", new Act.Tap(101, "drag", "finish"));
    }

    @Test
    void each_split_keeps_what_was_in_force_when_its_station_was_begun() {
        note("yard", Ground.DRY);
        Walk walk = new Walk(yard, 101, "proctor1").release().station("walk").after(5);
        note("yard", Ground.WET);
        walk.station("drag").after(5);
        note("drag", Ground.DRY);
        assertThat(conditions("walk")).containsExactly(Condition.DRY);
        assertThat(conditions("drag")).containsExactly(Condition.WET);
    }

    @Test
    void what_was_noted_after_a_station_was_begun_is_not_told_of_it() {
        new Walk(yard, 101, "proctor1").release().station("walk");
        note("walk", Ground.WET);
        assertThat(conditions("walk")).isEmpty();
    }

    @Test
    void only_a_spot_of_this_yard_can_be_noted_of_and_in_few_words() {
        assertThat(yard.rule("safety1", noting("moat", "")).refusal())
                .isEqualTo(Refusal.UNKNOWN_STATION);
        assertThat(yard.rule("safety1", noting(null, "")).refusal())
                .isEqualTo(Refusal.UNKNOWN_STATION);
        assertThat(yard.rule("safety1", noting("walk", "x".repeat(501))).refusal())
                .isEqualTo(Refusal.WORDS_TOO_LONG);
        assertThat(yard.rule("crew1", noting("walk", "")).refusal())
                .isEqualTo(Refusal.NOT_YOUR_ROLE);
    }

    @Test
    void notes_outlast_a_restart_and_a_replay_comes_to_the_same() {
        String before = yard.engine().digest();
        note("yard", Ground.ICE);
        assertThat(yard.engine().digest()).isNotEqualTo(before);
        yard.after(5).loseGateway().after(20).replaceBoard("m2", 20_000_000);
        assertThat(release().refusal()).isEqualTo(Refusal.SURFACE_HOLDS);
        Engine again = new Engine();
        yard.journal().forEach(again::apply);
        assertThat(again.digest()).isEqualTo(yard.engine().digest());
        assertThat(again.watch(yard.view()).surfaces()).isEqualTo(surfaces());
    }

    private static Act noting(String where, String words) {
        return new Act.NoteSurface(where, Ground.WET, false, false, words);
    }

    private void note(String where, Ground ground) {
        yard.after(1).ok("safety1", new Act.NoteSurface(where, ground, false, false, ""));
    }

    private Verdict release() {
        return yard.rule("coordinator1", new Act.Release(101, "proctor1"));
    }

    private ControlFrame control() {
        return yard.engine().control(yard.view());
    }

    private List<SurfaceView> surfaces() {
        return yard.engine().watch(yard.view()).surfaces();
    }

    private List<Condition> conditions(String station) {
        return yard.result(101).splits().stream()
                .filter(split -> split.station().equals(station))
                .findFirst()
                .map(SplitLine::conditions)
                .orElseThrow();
    }
}
