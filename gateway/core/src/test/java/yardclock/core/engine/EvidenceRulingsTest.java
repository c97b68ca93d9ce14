package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import yardclock.core.result.Result;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Refusal;

/** What rulings on evidence, on the queue and on one candidate do, and that they can be undone. */
class EvidenceRulingsTest {
    private final Yard yard = Yard.open(new TestPlan().make());
    private final Walk walk = new Walk(yard, 101, "proctor1").at(10);

    @Test
    void a_struck_finish_is_gone_until_the_strike_is_taken_back() {
        walk.release().station("walk").after(5).station("drag");
        Result.SplitLine before = yard.split(101, "drag");
        Input.Edge finish = lastEdge();
        Act strike =
                new Act.Strike(
                        finish.unit(),
                        finish.boot(),
                        finish.seq(),
                        Reason.SENSOR_TRIPPED_BY_OTHER,
                        "a dog");
        yard.ok("proctor1", strike);
        long entry = yard.journal().size();
        assertThat(before.state()).isEqualTo("proposed");
        assertThat(yard.split(101, "drag").state()).isEqualTo("incomplete");
        assertThat(yard.rule("proctor1", strike).refusal()).isEqualTo(Refusal.ALREADY_RULED);
        yard.ok("proctor1", new Act.WithdrawRuling(101, "drag", entry, "no dog"));
        assertThat(yard.split(101, "drag").state()).isEqualTo("proposed");
        assertThat(yard.split(101, "drag").splitMicros()).isEqualTo(before.splitMicros());
    }

    private Input.Edge lastEdge() {
        return yard.journal().stream()
                .map(Entry::input)
                .filter(Input.Edge.class::isInstance)
                .map(Input.Edge.class::cast)
                .reduce((first, second) -> second)
                .orElseThrow();
    }

    @Test
    void a_finish_that_no_sensor_saw_can_be_added() {
        walk.release().station("walk").after(5).leaveMat("u2/1");
        yard.after(5).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(30);
        long start = yard.split(101, "drag").startMicros();
        Act add = new Act.AddMark(101, "drag", "finish", start + 12_000_000, Reason.OTHER, "");
        yard.ok("proctor1", add).after(20);
        assertThat(yard.split(101, "drag").splitMicros()).isCloseTo(12_000_000, within(10_000L));
        assertThat(yard.split(101, "drag").state()).as("by hand alone").isEqualTo("ambiguous");
    }

    @Test
    void a_candidate_who_is_stopped_by_anyone_is_stopped_by_the_reason() {
        walk.release().station("walk");
        yard.ok("crew1", new Act.StopOne(101, Reason.MEDICAL, "sat down"));
        assertThat(yard.result(101).outcome()).isEqualTo("medical-stop");
        assertThat(yard.rule("safety1", new Act.StopOne(101, Reason.WEATHER, "")).refusal())
                .isEqualTo(Refusal.ALREADY_DONE);
    }

    @Test
    void two_who_wait_change_places_and_one_on_the_course_does_not() {
        yard.ok("coordinator1", new Act.SwapOrder(101, 103, Reason.OTHER, "late"));
        assertThat(yard.engine().control(yard.view()).next().number()).isEqualTo(103);
        yard.ok("coordinator1", new Act.Release(103, "proctor1"));
        Act again = new Act.SwapOrder(103, 104, Reason.OTHER, "");
        assertThat(yard.rule("coordinator1", again).refusal()).isEqualTo(Refusal.ALREADY_STARTED);
    }

    @Test
    void an_equipment_fault_holds_the_candidate_from_the_press_on() {
        walk.release().station("walk").after(2);
        yard.ok("crew1", new Act.EquipmentFault(101, "drag", "strap torn"));
        assertThat(yard.rule("proctor1", new Act.EquipmentFault(101, "drag", "")).refusal())
                .isEqualTo(Refusal.ALREADY_HELD);
        yard.after(9).ok("proctor1", new Act.ResumeCandidate(101));
    }

    @Test
    void all_that_is_clean_is_confirmed_at_once_and_nothing_else() {
        walk.release().station("walk").after(5).station("drag").after(20);
        yard.ok("proctor1", new Act.ConfirmClean(101));
        assertThat(yard.result(101).splits()).allMatch(line -> !line.state().equals("proposed"));
        assertThat(yard.rule("proctor1", new Act.ConfirmClean(101)).refusal())
                .isEqualTo(Refusal.NO_SUCH_SPLIT);
    }
}
