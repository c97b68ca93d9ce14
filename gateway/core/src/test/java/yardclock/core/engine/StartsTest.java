package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.fact.Effect;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Refusal;

/** What starts a clock, what only looks like it, and what replaces what. */
class StartsTest {
    private static final long SECOND = 1_000_000;
    private final Yard yard = Yard.open(new TestPlan().make());
    private final Walk walk = new Walk(yard, 101, "proctor1");

    @Test
    void the_horns_own_edge_starts_the_clock_and_not_the_proctors_finger() {
        walk.at(10).release();
        yard.ok("proctor1", new Act.GiveStart(101));
        assertThat(yard.effects()).contains(new Effect.Show("u1", 9, "start", 3_000));
        assertThat(phase()).isEqualTo("released");
        yard.after(0.35).edge("u1/9", 1);
        assertThat(phase()).isEqualTo("at-station");
        assertThat(yard.split(101, "walk").startMicros()).isEqualTo(10_350_000);
    }

    @Test
    void a_horn_that_nobody_asked_for_starts_nobody() {
        walk.at(10).release();
        yard.after(1).edge("u1/9", 1);
        yard.after(1).edge("u1/9", 0);
        assertThat(phase()).isEqualTo("released");
        yard.after(5).ok("proctor1", new Act.GiveStart(101));
        assertThat(phase()).as("the old blast does not count").isEqualTo("released");
        yard.after(0.2).edge("u1/9", 1);
        assertThat(yard.split(101, "walk").startMicros()).isEqualTo(17_200_000);
    }

    @Test
    void a_horn_that_does_not_answer_raises_an_alarm_and_may_be_asked_again() {
        walk.at(10).release();
        yard.ok("proctor1", new Act.GiveStart(101));
        assertThat(yard.rule("proctor1", new Act.GiveStart(101)).refusal())
                .isEqualTo(Refusal.ALREADY_STARTED);
        yard.after(2.9);
        assertThat(yard.facts(FactKind.ALARM)).isEmpty();
        yard.after(0.2);
        assertThat(yard.facts(FactKind.ALARM)).extracting(Fact::number).containsExactly(101);
        assertThat(yard.engine().control(yard.view()).alarms().get(0)).startsWith("101 walk: The");
        yard.ok("proctor1", new Act.GiveStart(101));
        yard.after(0.3).edge("u1/9", 1);
        assertThat(yard.split(101, "walk").startMicros()).isEqualTo(13_400_000);
    }

    @Test
    void a_spoken_start_is_a_tap_with_its_own_interval() {
        walk.at(10).release().after(3).tap("walk", "start");
        walk.after(9).tap("walk", "cap").tap("walk", "finish");
        yard.after(1);
        assertThat(yard.split(101, "walk").splitMicros()).isEqualTo(9 * SECOND);
        long width = yard.split(101, "walk").upperMicros() - yard.split(101, "walk").lowerMicros();
        // Two taps by one person: ± 0.20 s, and the plan's 0.1 s for the judged one (exam-day.md);
        // and a little for the tablet's clock.
        assertThat(width).isBetween(600_000L, 620_000L);
    }

    @Test
    void a_horn_heard_late_replaces_the_tap() {
        walk.at(10).release();
        yard.ok("proctor1", new Act.GiveStart(101));
        Input.Edge horn = yard.after(0.3).happens("u1/9", 1);
        walk.after(0.4).tap("walk", "start");
        assertThat(yard.split(101, "walk").startMicros()).isEqualTo(10_700_000);
        yard.after(20).take(horn);
        assertThat(yard.split(101, "walk").startMicros()).isEqualTo(10_300_000);
        assertThat(yard.facts(FactKind.MARK_CHANGED)).hasSize(1);
    }

    @Test
    void a_tap_before_the_automatic_edge_gives_way_to_it() {
        toDrag();
        yard.edge("u2/1", 1);
        yard.after(2);
        walk.tap("drag", "start");
        long tapped = yard.split(101, "drag").startMicros();
        yard.after(0.4).edge("u2/1", 0);
        assertThat(yard.split(101, "drag").startMicros()).isEqualTo(tapped + 400_000);
    }

    @Test
    void with_a_dead_mat_the_tap_stands_and_a_later_step_on_it_makes_the_split_doubtful() {
        toDrag();
        walk.tap("drag", "start");
        long tapped = yard.split(101, "drag").startMicros();
        yard.after(25);
        walk.leaveMat("u2/1"); // the proctor, on the way round
        yard.after(5).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(3).edge("u2/3", 1);
        yard.after(0.5).edge("u2/3", 0);
        yard.after(3);
        assertThat(yard.split(101, "drag").why()).contains("disagree");
        assertThat(yard.split(101, "drag").startMicros()).isEqualTo(tapped);
    }

    @Test
    void after_the_finish_no_step_on_the_mat_moves_a_tapped_start() {
        toDrag();
        walk.tap("drag", "start");
        long tapped = yard.split(101, "drag").startMicros();
        yard.after(10).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(3).edge("u2/3", 1);
        yard.after(0.5).edge("u2/3", 0);
        yard.after(3);
        assertThat(yard.split(101, "drag").state()).isEqualTo("ambiguous");
        walk.leaveMat("u2/1"); // the crew, resetting
        yard.after(3);
        assertThat(yard.split(101, "drag").startMicros()).isEqualTo(tapped);
        assertThat(yard.split(101, "drag").splitMicros()).isEqualTo(14 * SECOND);
    }

    @Test
    void a_start_before_the_finish_before_it_was_final_is_not_lost() {
        toDrag();
        walk.leaveMat("u2/1");
        yard.after(5).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(3).edge("u2/3", 1);
        yard.after(0.5).edge("u2/3", 0);
        long finish = Math.round(yard.now() * SECOND);
        // The line must be clear for 1.5 s and 0.4 s to settle; this one is on the next mat sooner.
        yard.after(0.2).edge("u3/1", 1);
        yard.after(0.4).edge("u3/1", 0);
        long start = Math.round(yard.now() * SECOND);
        assertThat(yard.split(101, "drag").state()).isEqualTo("incomplete");
        yard.after(3);
        assertThat(yard.split(101, "drag").finishMicros()).isEqualTo(finish);
        assertThat(yard.split(101, "poles").startMicros()).isEqualTo(start);
    }

    @Test
    void nobody_starts_on_a_station_that_is_not_ready() {
        walk.at(10).wholeCourse();
        Walk second = new Walk(yard, 102, "proctor2");
        walk.reset("walk");
        second.release().station("walk").after(5);
        second.leaveMat("u2/1");
        yard.after(1);
        assertThat(yard.result(102).splits()).hasSize(1);
        yard.ok("crew1", new Act.StationReady("drag"));
        yard.after(1);
        assertThat(yard.result(102).splits()).as("the step before ready").hasSize(1);
        second.leaveMat("u2/1");
        assertThat(yard.split(102, "drag").startMicros())
                .isEqualTo(Math.round(yard.now() * SECOND));
    }

    @Test
    void passages_while_nobody_is_expected_belong_to_nobody_and_are_said_so() {
        walk.at(10).release();
        walk.leaveMat("u2/1");
        assertThat(yard.facts(FactKind.PASSAGE_UNASSIGNED))
                .extracting(Fact::station)
                .containsExactly("drag");
        walk.station("walk").after(5).station("drag");
        assertThat(yard.split(101, "drag").startMicros()).isGreaterThan(20 * SECOND);
    }

    @Test
    void where_the_first_movement_starts_the_clock_no_signal_can_be_given() {
        Yard still = Yard.open(new TestPlan().firstMovement().make());
        still.at(10).ok("coordinator1", new Act.Release(101, "proctor1"));
        assertThat(still.rule("proctor1", new Act.GiveStart(101)).refusal())
                .isEqualTo(Refusal.UNKNOWN_POINT);
        new Walk(still, 101, "proctor1").after(4).leaveMat("u2/1");
        assertThat(still.split(101, "drag").startMicros()).isEqualTo(15 * SECOND);
    }

    @Test
    void one_who_withdrew_gets_no_alarm_about_the_horn() {
        walk.at(10).release();
        yard.ok("proctor1", new Act.GiveStart(101)).ok("proctor1", new Act.Withdraw(101, ""));
        yard.after(10);
        assertThat(yard.facts(FactKind.ALARM)).isEmpty();
        assertThat(yard.engine().control(yard.view()).onCourse()).isEmpty();
    }

    private void toDrag() {
        walk.at(10).release().station("walk").after(5);
    }

    private String phase() {
        return yard.engine().control(yard.view()).onCourse().get(0).phase();
    }
}
