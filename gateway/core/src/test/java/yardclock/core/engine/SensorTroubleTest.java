package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.board.StationView;
import yardclock.core.course.Checkpoint;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Site;
import yardclock.core.course.Station;
import yardclock.core.course.Trigger;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Refusal;

import java.util.ArrayList;
import java.util.List;

/** A sensor in trouble holds its station until it is well, or a person goes on by hand. */
class SensorTroubleTest {
    private final Yard yard = Yard.open(plan());

    /** The drag's line is stuck after 45 s; u2/4 is a button for when it fails. */
    private static ExamPlan plan() {
        ExamPlan plain = new TestPlan().make();
        List<Station> stations = new ArrayList<>(plain.stations());
        Station drag = stations.get(1);
        Site site = new Site(0, 0, List.of(), 45_000_000, new SensorRef("u2", 4), 0, 0);
        stations.set(1, withFinish(drag, drag.finish().standing(site)));
        return new ExamPlan(
                plain.name(), plain.timing(), plain.day(), stations, plain.fieldUnits());
    }

    private static Station withFinish(Station station, Trigger finish) {
        List<Checkpoint> points = station.checkpoints();
        return new Station(
                station.id(),
                station.name(),
                station.task(),
                station.timing(),
                station.start(),
                points,
                finish,
                station.criteria(),
                station.homeContacts());
    }

    /** To so many seconds; the unit says every two of them that it lives. */
    private Yard live(double seconds) {
        while (yard.now() + 2 < seconds) {
            yard.after(2).health("u2");
        }
        return yard.at(seconds);
    }

    private Refusal release() {
        return yard.rule("coordinator1", new Act.Release(101, "proctor1")).refusal();
    }

    private StationView drag() {
        return yard.engine().control(yard.view()).stations().get(1);
    }

    @Test
    void a_beam_not_at_rest_for_ten_seconds_keeps_the_next_candidate_from_being_released() {
        yard.at(10).edge("u2/3", 1);
        live(19);
        assertThat(drag().held()).isFalse();
        live(21);
        assertThat(release()).isEqualTo(Refusal.STATION_HELD);
        assertThat(drag().trouble()).isEqualTo("s3 (u2/3) " + NOT_AT_REST);
        assertThat(yard.engine().control(yard.view()).next().blockers()).contains("station-held");
        yard.edge("u2/3", 0);
        assertThat(drag().held()).isFalse();
        assertThat(release()).isNull();
    }

    private static final String NOT_AT_REST = "is not at rest though nobody is meant to be there.";

    @Test
    void after_the_longest_plausible_block_it_is_stuck_and_both_screens_say_so() {
        yard.at(10).edge("u2/3", 1);
        live(56);
        String words = "s3 (u2/3) is stuck: so for longer than the plan thinks possible.";
        assertThat(yard.engine().control(yard.view()).alarms()).containsExactly("drag: " + words);
        assertThat(yard.engine().bench(yard.view()).alarms()).containsExactly("drag: " + words);
        yard.edge("u2/3", 0);
        assertThat(yard.engine().bench(yard.view()).alarms()).isEmpty();
        assertThat(yard.facts(FactKind.ALARM_OVER)).hasSize(2);
    }

    @Test
    void a_person_goes_on_by_hand_and_a_new_trouble_holds_again() {
        yard.at(10).edge("u2/3", 1);
        live(21).ok("technician1", new Act.GoOnByHand("drag", Reason.SENSOR_FAILED, "bent"));
        assertThat(drag().held()).isFalse();
        assertThat(drag().trouble()).endsWith("By hand: P. technician1, sensor-failed: bent");
        yard.edge("u2/2", 1);
        live(33);
        assertThat(release()).isEqualTo(Refusal.STATION_HELD);
        yard.edge("u2/2", 0);
        assertThat(release()).isNull();
    }

    @Test
    void standing_on_the_start_mat_is_no_trouble() {
        yard.at(10).edge("u2/1", 1);
        live(200);
        assertThat(drag().held()).isFalse();
        assertThat(yard.facts(FactKind.ALARM)).isEmpty();
    }

    @Test
    void sensors_nobody_saw_while_three_candidates_went_through_hold_until_they_are_tripped() {
        for (int number = 101; number <= 103; number++) {
            assertThat(yard.facts(FactKind.ALARM)).isEmpty();
            Walk walk = new Walk(yard, number, "proctor1").release().station("walk").after(5);
            walk.tap("drag", "start").after(20).tap("drag", "finish").after(15);
            yard.ok("proctor1", new Act.Withdraw(number, ""));
            yard.ok("crew1", new Act.StationReady("walk"));
            yard.ok("crew1", new Act.StationReady("drag"));
            yard.after(40);
        }
        yard.health("u2");
        assertThat(yard.facts(FactKind.ALARM))
                .extracting(Fact::words)
                .containsExactly(
                        "s1 (u2/1) was never seen today, though candidates went through.",
                        "s2 (u2/2) was never seen today, though candidates went through.",
                        "s3 (u2/3) was never seen today, though candidates went through.");
        assertThat(drag().held()).isTrue();
        for (String sensor : List.of("u2/1", "u2/2", "u2/3")) {
            yard.after(1).edge(sensor, 1);
            yard.after(1).edge(sensor, 0);
        }
        assertThat(drag().held()).isFalse();
    }

    @Test
    void when_the_line_fails_the_named_button_finishes_after_the_wait_of_a_tap() {
        Walk walk = new Walk(yard, 101, "proctor1").at(10).release().station("walk").after(5);
        yard.edge("u2/1", 1);
        yard.after(1).edge("u2/1", 0);
        yard.after(4).edge("u2/2", 1);
        yard.after(0.2).edge("u2/2", 0);
        yard.after(5).edge("u2/4", 1);
        yard.after(0.3).edge("u2/4", 0);
        assertThat(yard.split(101, "drag").splitMicros()).isEqualTo(-1);
        walk.after(12);
        assertThat(yard.split(101, "drag").splitMicros()).isEqualTo(9_200_000);
        assertThat(yard.split(101, "drag").why()).contains("named button");
    }
}
