package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import yardclock.core.board.Head.CourseStatus;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.result.Result;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Refusal;

/**
 * Holds are credited inside the run and nowhere else; a stop holds everyone until a person acts.
 */
class HoldsTest {
    private static final long SECOND = 1_000_000;
    private static final long PAIR = 200_000;
    private final Yard yard = Yard.open(new TestPlan().make());
    private final Walk walk = new Walk(yard, 101, "proctor1");

    @Test
    void a_hold_is_credited_and_widens_the_interval_by_a_pair_of_presses() {
        long plain = wholeCourse(0).officialMicros();
        Result held = wholeCourse(20);
        assertThat(held.officialMicros()).isCloseTo(plain, within(10_000L));
        assertThat(held.creditedHoldMicros()).isCloseTo(20 * SECOND, within(10_000L));
        assertThat(held.officialMicros() - held.lowerMicros()).isGreaterThan(PAIR);
        assertThat(held.upperMicros() - held.officialMicros()).isGreaterThan(PAIR);
        long sum = held.splits().stream().mapToLong(Result.SplitLine::splitMicros).sum();
        assertThat(sum).as("no sum of splits").isNotEqualTo(held.officialMicros());
    }

    /** The whole course, with a hold of so many seconds on the way to the second station. */
    private static Result wholeCourse(double holdSeconds) {
        Yard yard = Yard.open(new TestPlan().make());
        Walk walk = new Walk(yard, 101, "proctor1").at(10).release().station("walk").after(2);
        if (holdSeconds > 0) {
            yard.ok("proctor1", new Act.HoldCandidate(101, Reason.STATION_NOT_READY, ""));
            yard.after(holdSeconds).ok("proctor1", new Act.ResumeCandidate(101));
        }
        yard.after(3);
        for (String station : TestPlan.stations().subList(1, 6)) {
            walk.station(station).after(5);
        }
        return yard.result(101);
    }

    @Test
    void a_hold_before_the_start_is_not_credited() {
        walk.at(10).release();
        yard.after(1).ok("coordinator1", new Act.HoldCandidate(101, Reason.WEATHER, "rain"));
        yard.after(30).ok("coordinator1", new Act.ResumeCandidate(101));
        walk.after(1).station("walk");
        walk.stations(1, 6);
        Result result = yard.result(101);
        assertThat(result.creditedHoldMicros()).isZero();
        assertThat(result.officialMicros()).isEqualTo(90_200_000);
        assertThat(result.officialMicros() - result.lowerMicros())
                .as("it does not make the time less certain either")
                .isLessThan(PAIR);
    }

    @Test
    void a_hold_that_nobody_ended_ends_with_the_run() {
        toTheLastPress();
        yard.ok("proctor1", new Act.HoldCandidate(101, Reason.OTHER, "by mistake"));
        yard.after(3.1).edge("u7/2", 1);
        yard.after(1);
        Result result = yard.result(101);
        assertThat(result.creditedHoldMicros()).isCloseTo(3_100_000, within(10_000L));
        assertThat(yard.rule("proctor1", new Act.ResumeCandidate(101)).refusal())
                .isEqualTo(Refusal.NOT_HELD);
        assertThat(yard.facts(FactKind.OFFICIAL_TIME)).hasSize(1);
        assertThat(yard.facts(FactKind.HOLD_OUT)).hasSize(1);
    }

    @Test
    void a_stop_after_the_last_edge_but_before_it_was_final_credits_nothing() {
        // The course without its last station ends with a finish that must stay.
        walk.at(10).release().station("walk");
        walk.stations(1, 5);
        yard.after(5).edge("u7/1", 1);
        yard.after(4).edge("u7/2", 1);
        yard.after(0.1).edge("u7/2", 0);
        yard.after(4);
        Input.Edge last = yard.happens("u7/2", 1);
        yard.after(0.5).ok("safety1", new Act.StopAll("whistle"));
        yard.after(0.5).take(last);
        Result result = yard.result(101);
        assertThat(result.creditedHoldMicros()).isZero();
        assertThat(result.officialMicros()).isPositive();
        assertThat(yard.engine().control(yard.view()).onCourse().get(0).phase())
                .isEqualTo("finished");
    }

    @Test
    void a_stop_holds_those_on_the_course_and_leaves_the_finished_alone() {
        walk.at(10).wholeCourse().reset("walk").reset("drag");
        Walk second = new Walk(yard, 102, "proctor2").release().station("walk");
        yard.after(1).ok("proctor2", new Act.StopAll("she fell"));
        assertThat(yard.engine().control(yard.view()).onCourse())
                .extracting(line -> line.number() + " " + line.phase())
                .containsExactly("101 finished", "102 held");
        assertThat(yard.engine().control(yard.view()).head().course())
                .isEqualTo(CourseStatus.STOPPED);
        walk.confirmAll();
        assertThat(yard.result(101).outcome()).as("paper work goes on").isEqualTo("passed");
        assertThat(yard.rule("proctor2", new Act.ResumeCandidate(102)).refusal())
                .isEqualTo(Refusal.STOPPED);
        assertThat(yard.rule("coordinator1", new Act.Restart()).refusal())
                .isEqualTo(Refusal.NOT_YOUR_ROLE);
        yard.after(100).ok("safety1", new Act.Restart());
        assertThat(yard.rule("coordinator1", new Act.Release(103, "proctor3")).refusal())
                .isEqualTo(Refusal.COURSE_HELD);
        yard.ok("proctor2", new Act.ResumeCandidate(102));
        yard.ok("coordinator1", new Act.ResumeCourse());
        second.after(3).station("drag");
        assertThat(yard.split(102, "drag").state()).isEqualTo("proposed");
    }

    @Test
    void a_second_stop_holds_nobody_twice() {
        walk.at(10).release().station("walk");
        yard.ok("proctor1", new Act.StopAll("one"));
        yard.after(1).ok("crew1", new Act.StopAll("two"));
        assertThat(yard.facts(FactKind.HOLD_IN)).hasSize(1);
        assertThat(yard.engine().control(yard.view()).head().courseWords()).contains("two");
    }

    @Test
    void one_who_withdraws_while_held_is_out_and_the_hold_is_over() {
        walk.at(10).release().station("walk").after(5).leaveMat("u2/1");
        yard.ok("proctor1", new Act.HoldCandidate(101, Reason.MEDICAL, ""));
        yard.after(5).ok("proctor1", new Act.Withdraw(101, "has had enough"));
        Result result = yard.result(101);
        assertThat(result.outcome()).isEqualTo("withdrawn");
        assertThat(result.outcomeWords()).isEqualTo("has had enough");
        assertThat(yard.facts(FactKind.HOLD_OUT)).hasSize(1);
        assertThat(yard.engine().crew(yard.view()).resets())
                .extracting(r -> r.station())
                .containsExactly("walk", "drag");
        walk.reset("drag");
        yard.after(60).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        yard.after(30);
        assertThat(yard.result(101)).isEqualTo(result);
    }

    @Test
    void what_the_sensors_say_after_a_withdrawal_finishes_nothing() {
        walk.at(10).release().station("walk").after(5).leaveMat("u2/1");
        yard.after(3).ok("proctor1", new Act.Withdraw(101, ""));
        Result before = yard.result(101);
        yard.after(2).edge("u2/2", 1);
        yard.after(1).edge("u2/2", 0);
        yard.edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        yard.after(30);
        assertThat(yard.result(101)).isEqualTo(before);
        assertThat(yard.facts(FactKind.SPLIT_PROPOSED)).extracting(Fact::station).contains("walk");
        assertThat(yard.facts(FactKind.SPLIT_PROPOSED)).hasSize(1);
    }

    @Test
    void two_holds_are_credited_both() {
        walk.at(10).release().station("walk");
        for (int i = 0; i < 2; i++) {
            yard.after(1).ok("proctor1", new Act.HoldCandidate(101, Reason.WEATHER, ""));
            yard.after(7).ok("proctor1", new Act.ResumeCandidate(101));
        }
        for (String station : TestPlan.stations().subList(1, 6)) {
            walk.after(3).station(station);
        }
        assertThat(yard.result(101).creditedHoldMicros()).isCloseTo(14 * SECOND, within(20_000L));
        assertThat(yard.facts(FactKind.HOLD_OUT)).hasSize(2);
    }

    private void toTheLastPress() {
        walk.at(10).release().station("walk");
        walk.stations(1, 5);
        yard.after(5).edge("u7/1", 1);
        yard.after(4).edge("u7/2", 1);
        yard.after(0.1).edge("u7/2", 0);
        yard.after(1);
    }
}
