package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.board.StationView;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Refusal;

/** In use, to be reset, ready: and what a crew and the yard do in between. */
class StationRoundTest {
    private static final long SECOND = 1_000_000;
    private final Yard yard = Yard.open(new TestPlan().make());
    private final Walk walk = new Walk(yard, 101, "proctor1");

    @Test
    void ready_is_refused_while_a_turn_is_unfinished_and_while_nothing_happened() {
        walk.at(10).release();
        assertThat(ready("drag")).isEqualTo(Refusal.NOT_IN_USE);
        walk.station("walk").after(5).leaveMat("u2/1");
        assertThat(state("drag")).isEqualTo(StationView.State.IN_USE);
        assertThat(ready("drag")).isEqualTo(Refusal.NOT_IN_USE);
    }

    @Test
    void ready_is_refused_while_a_home_contact_is_open_and_the_crew_is_told_which() {
        walk.at(10).release();
        walk.stations(0, 3);
        yard.edge("u3/3", 0);
        assertThat(ready("poles")).isEqualTo(Refusal.NOT_HOME);
        assertThat(yard.engine().crew(yard.view()).resets())
                .filteredOn(r -> r.station().equals("poles"))
                .flatExtracting(r -> r.openContacts())
                .extracting(t -> t.en())
                .containsExactly("s2");
        yard.after(1).edge("u3/2", 0);
        assertThat(ready("poles")).isNull();
        assertThat(state("poles")).isEqualTo(StationView.State.READY);
    }

    @Test
    void the_resets_own_edges_start_nobody_and_change_no_split() {
        walk.at(10).wholeCourse();
        var before = yard.result(101);
        walk.reset("walk");
        new Walk(yard, 102, "proctor2").release().station("walk");
        // 102 is on the way while the crew still works at the poles and the drag.
        walk.leaveMat("u3/1").leaveMat("u2/1");
        yard.edge("u3/2", 0);
        yard.after(1).edge("u3/2", 1);
        yard.after(2).edge("u3/2", 0);
        yard.edge("u3/3", 0);
        yard.after(3);
        assertThat(yard.result(101)).isEqualTo(before);
        assertThat(yard.result(102).splits()).hasSize(1);
        assertThat(yard.facts(FactKind.LATE_EVIDENCE)).isEmpty();
    }

    @Test
    void a_second_turn_is_the_next_candidates_and_keeps_out_of_the_firsts() {
        walk.at(10).wholeCourse();
        TestPlan.stations().forEach(walk::reset);
        var before = yard.result(101);
        new Walk(yard, 102, "proctor2").wholeCourse();
        assertThat(yard.result(101)).isEqualTo(before);
        assertThat(yard.result(102).splits()).hasSize(6);
        assertThat(yard.facts(FactKind.SPLIT_PROPOSED))
                .extracting(Fact::words)
                .containsOnly("clean");
    }

    @Test
    void resetting_after_the_last_split_was_confirmed_is_no_late_evidence() {
        walk.at(10).wholeCourse().confirmAll();
        yard.after(1).edge("u7/2", 0);
        yard.after(1).edge("u7/2", 1);
        yard.after(3).edge("u7/2", 0);
        walk.leaveMat("u2/1");
        assertThat(yard.facts(FactKind.LATE_EVIDENCE)).isEmpty();
        assertThat(yard.split(101, "laps").why()).isEqualTo("SINGLE");
    }

    @Test
    void the_next_one_on_the_way_to_a_station_throws_no_doubt_on_a_confirmed_split_there() {
        walk.at(10).wholeCourse().reset("walk").confirmAll();
        new Walk(yard, 102, "proctor2").release().station("walk");
        yard.after(30);
        assertThat(yard.facts(FactKind.LATE_EVIDENCE)).isEmpty();
    }

    @Test
    void a_ready_station_rattling_all_morning_still_sees_its_first_candidate() {
        // Wind in the post's beam and on the mat, long before anyone comes.
        for (int i = 0; i < 3_000; i++) {
            yard.after(0.2).edge("u2/2", 1);
            yard.after(0.2).edge("u2/2", 0);
        }
        walk.after(10).release().station("walk").after(5).station("drag");
        assertThat(yard.split(101, "drag").state()).isEqualTo("proposed");
        assertThat(yard.split(101, "drag").splitMicros()).isEqualTo(10 * SECOND);
    }

    @Test
    void a_sensor_that_rattles_beyond_all_measure_is_said_and_the_taps_still_count() {
        walk.at(10).release().station("walk").after(5).leaveMat("u2/1");
        for (int i = 0; i < 2_100; i++) {
            yard.after(0.002).edge("u2/2", 1);
            yard.after(0.002).edge("u2/2", 0);
        }
        assertThat(yard.facts(FactKind.ALARM)).extracting(Fact::station).containsOnly("drag");
        assertThat(yard.facts(FactKind.ALARM)).hasSize(1);
        walk.tap("drag", "post").tap("drag", "finish");
        yard.after(12);
        assertThat(yard.split(101, "drag").state()).isEqualTo("ambiguous");
    }

    @Test
    void a_split_ruled_void_before_its_finish_lets_the_candidate_go_on() {
        walk.at(10).release().station("walk").after(5).leaveMat("u2/1").after(20);
        yard.ok("proctor1", new Act.VoidSplit(101, "drag", Reason.SENSOR_FAILED, "no beam"));
        assertThat(state("drag")).isEqualTo(StationView.State.TO_BE_RESET);
        walk.after(5).station("poles");
        assertThat(yard.split(101, "poles").state()).isEqualTo("proposed");
    }

    @Test
    void a_hand_time_for_an_unfinished_split_does_not_lose_the_start_that_followed_it() {
        walk.at(10).release().station("walk").after(5).leaveMat("u2/1").after(20);
        walk.leaveMat("u3/1"); // on the next station already: the beam at the drag was dead
        long start = Math.round(yard.now() * SECOND);
        yard.after(3).ok("proctor1", hand("drag", 14 * SECOND));
        assertThat(yard.split(101, "drag").splitMicros()).isEqualTo(14 * SECOND);
        assertThat(yard.split(101, "poles").startMicros()).isEqualTo(start);
    }

    @Test
    void a_hand_time_cannot_reach_into_the_future() {
        walk.at(10).release().station("walk").after(5).leaveMat("u2/1").after(20);
        assertThat(yard.rule("proctor1", hand("drag", 21 * SECOND)).refusal())
                .isEqualTo(Refusal.TIME_NOT_PLAUSIBLE);
        yard.ok("proctor1", hand("drag", 19 * SECOND));
    }

    private static Act hand(String station, long micros) {
        return new Act.HandTime(101, station, micros, Reason.SENSOR_FAILED, "");
    }

    private Refusal ready(String station) {
        return yard.rule("crew1", new Act.StationReady(station)).refusal();
    }

    private StationView.State state(String station) {
        return yard.engine().crew(yard.view()).stations().stream()
                .filter(s -> s.id().equals(station))
                .findFirst()
                .orElseThrow()
                .state();
    }
}
