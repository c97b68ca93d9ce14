package yardclock.core.ruling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import yardclock.core.board.PostFrame;
import yardclock.core.engine.TestPlan;
import yardclock.core.engine.Walk;
import yardclock.core.engine.Yard;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.result.Result;

/** Rulings as tablets send them: again, late, from two at once, on something that has changed. */
class DecisionsTest {
    private static final long SECOND = 1_000_000;
    private final Yard yard = Yard.open(new TestPlan().make());
    private final Walk walk = new Walk(yard, 101, "proctor1").at(10);

    @Test
    void the_same_key_again_gives_the_first_answer_and_does_nothing() {
        Act release = new Act.Release(101, "proctor1");
        Verdict first = yard.rule("coordinator1", "k1", release, -1);
        Verdict again = yard.after(1).rule("coordinator1", "k1", release, -1);
        assertThat(again).isEqualTo(first);
        assertThat(again.isAccepted()).isTrue();
        assertThat(yard.facts(FactKind.RELEASED)).hasSize(1);
    }

    @Test
    void a_refusal_is_remembered_too() {
        Act ready = new Act.StationReady("walk");
        Verdict first = yard.rule("crew1", "k1", ready, -1);
        walk.release().station("walk");
        assertThat(yard.rule("crew1", "k1", ready, -1)).isEqualTo(first);
        assertThat(yard.rule("crew1", "k2", ready, -1).isAccepted()).isTrue();
    }

    @Test
    void two_devices_may_happen_upon_the_same_key() {
        walk.release();
        assertThat(yard.rule("proctor1", "k1", new Act.Note(0, "a"), -1).isAccepted()).isTrue();
        assertThat(yard.rule("crew1", "k1", new Act.Restart(), -1).refusal())
                .isEqualTo(Refusal.NOT_YOUR_ROLE);
    }

    @Test
    void of_two_tablets_that_confirm_the_second_is_told_so() {
        walk.wholeCourse();
        long seen = post("proctor1").revision();
        yard.ok("coordinator1", new Act.HandOver(101, "proctor2"));
        assertThat(yard.rule("proctor1", new Act.Confirm(101, "walk"), seen).refusal())
                .isEqualTo(Refusal.NOT_YOUR_CANDIDATE);
        long now = post("proctor2").revision();
        assertThat(yard.rule("proctor2", new Act.Confirm(101, "walk"), now).isAccepted()).isTrue();
        assertThat(yard.rule("proctor2", new Act.Confirm(101, "walk"), now).refusal())
                .isEqualTo(Refusal.ALREADY_RULED);
        Verdict late = yard.rule("proctor1", new Act.Confirm(101, "walk"), seen);
        assertThat(late.refusal()).isEqualTo(Refusal.NOT_YOUR_CANDIDATE);
        assertThat(late.standing().by().device()).isEqualTo("proctor2");
        assertThat(yard.facts(FactKind.SPLIT_CONFIRMED)).hasSize(1);
    }

    @Test
    void all_splits_can_be_confirmed_from_one_look() {
        walk.wholeCourse();
        long seen = post("proctor1").revision();
        for (String station : TestPlan.stations()) {
            assertThat(yard.rule("proctor1", new Act.Confirm(101, station), seen).isAccepted())
                    .isTrue();
        }
        assertThat(yard.result(101).outcome()).isEqualTo("passed");
    }

    @Test
    void a_mark_that_moved_since_the_look_makes_the_ruling_out_of_date() {
        walk.release().station("walk").after(5);
        var late = yard.happens("u2/1", 1);
        var start = yard.after(1).happens("u2/1", 0);
        walk.tap("drag", "start");
        yard.after(8).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(1).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        yard.after(3);
        long seen = post("proctor1").revision();
        yard.take(late);
        yard.take(start);
        assertThat(yard.rule("proctor1", new Act.Confirm(101, "drag"), seen).refusal())
                .isEqualTo(Refusal.OUT_OF_DATE);
        assertThat(yard.rule("proctor1", new Act.Confirm(101, "drag"), seen + 1).isAccepted())
                .isTrue();
    }

    @Test
    void what_a_ruling_was_about_stays_when_evidence_comes_after_it() {
        walk.release().station("walk").after(5);
        var pressed = yard.happens("u2/1", 1);
        var start = yard.after(1).happens("u2/1", 0);
        walk.tap("drag", "start");
        yard.after(8).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(1).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        yard.after(3).ok("proctor1", new Act.Confirm(101, "drag"));
        Result.SplitLine before = yard.split(101, "drag");
        yard.after(30).take(pressed);
        yard.take(start);
        Result.SplitLine after = yard.split(101, "drag");
        assertThat(after.splitMicros()).isEqualTo(before.splitMicros());
        assertThat(after.state()).isEqualTo("confirmed");
        assertThat(after.why()).contains("late readings");
        assertThat(yard.facts(FactKind.LATE_EVIDENCE))
                .extracting(Fact::number)
                .containsExactly(101);
    }

    @Test
    void one_warning_too_many_is_a_fault_and_the_rule_for_it_is_the_plans() {
        walk.release().station("walk");
        call(yard);
        assertThat(yard.result(101).calls())
                .extracting(Result.CallLine::fault)
                .containsExactly(false);
        call(yard);
        assertThat(yard.result(101).calls())
                .extracting(Result.CallLine::fault)
                .containsExactly(false, true);
        assertThat(yard.result(101).outcome()).as("may finish").isEmpty();

        Yard strict = Yard.open(new TestPlan().stopNow().make());
        new Walk(strict, 101, "proctor1").at(10).release().station("walk");
        call(strict);
        assertThat(strict.result(101).outcome()).isEmpty();
        call(strict);
        assertThat(strict.result(101).outcome()).isEqualTo("failed-criterion");
        assertThat(strict.facts(FactKind.OUTCOME)).hasSize(1);
    }

    private static void call(Yard where) {
        where.ok("proctor1", new Act.Call(101, "walk", "rough", false, ""));
    }

    @Test
    void a_fault_outweighs_a_good_time() {
        walk.wholeCourse();
        yard.ok("proctor1", new Act.Call(101, "laps", "once", false, "no warning first"));
        walk.confirmAll();
        assertThat(yard.result(101).outcome()).isEqualTo("failed-criterion");
        assertThat(yard.result(101).decision()).isEqualTo("within");
    }

    @Test
    void one_who_did_not_come_makes_way_and_is_not_sent_later() {
        yard.ok("coordinator1", new Act.NoShow(101));
        assertThat(yard.rule("coordinator1", new Act.Release(101, "proctor1")).refusal())
                .isEqualTo(Refusal.NOT_NEXT);
        yard.ok("coordinator1", new Act.Release(102, "proctor1"));
        assertThat(yard.result(101).outcome()).isEqualTo("no-show");
        assertThat(yard.rule("coordinator1", new Act.NoShow(102)).refusal())
                .isEqualTo(Refusal.ALREADY_STARTED);
    }

    @Test
    void hand_times_stand_in_the_splits_place_and_never_move_the_clock_of_the_course() {
        walk.wholeCourse();
        long official = yard.result(101).officialMicros();
        Act hand = new Act.HandTime(101, "poles", 9_500_000, Reason.SENSOR_FAILED, "stop-watch");
        yard.ok("proctor1", hand);
        assertThat(yard.split(101, "poles").splitMicros()).isEqualTo(9_500_000);
        assertThat(yard.split(101, "poles").why()).isEqualTo("sensor-failed: stop-watch");
        assertThat(yard.result(101).officialMicros()).isEqualTo(official);
        yard.ok("proctor1", new Act.VoidSplit(101, "drag", Reason.EQUIPMENT_FAULT, ""));
        assertThat(yard.split(101, "drag").splitMicros()).isEqualTo(-1);
        assertThat(yard.result(101).officialMicros()).isEqualTo(official);
        yard.ok("proctor1", new Act.VoidSplit(101, "laps", Reason.OTHER, ""));
        assertThat(yard.result(101).officialMicros()).as("its end is void").isEqualTo(-1);
        for (String station : new String[] {"walk", "bag", "fan"}) {
            yard.ok("proctor1", new Act.Confirm(101, station));
        }
        assertThat(yard.result(101).outcome()).isEqualTo("undecided");
    }

    @Test
    void a_pair_of_taps_can_stand_by_a_ruling() {
        walk.release()
                .horn()
                .tap("walk", "start")
                .after(8)
                .tap("walk", "cap")
                .tap("walk", "finish");
        yard.after(0.4).edge("u1/3", 1);
        yard.after(0.1).edge("u1/3", 0);
        yard.ok("proctor1", new Act.HandTime(101, "walk", 0, Reason.SENSOR_TRIPPED_BY_OTHER, ""));
        assertThat(yard.split(101, "walk").splitMicros()).isCloseTo(8 * SECOND, within(10_000L));
        assertThat(yard.split(101, "walk").state()).isEqualTo("by-hand");
    }

    private PostFrame.Candidate post(String device) {
        return yard.engine().post(yard.view(), device).candidate();
    }
}
