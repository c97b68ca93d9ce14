package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import yardclock.core.board.ControlFrame;
import yardclock.core.board.PostFrame;
import yardclock.core.fact.FactKind;
import yardclock.core.result.Result;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Refusal;
import yardclock.core.run.Attempt;

import java.util.ArrayList;

/**
 * One station run again after an equipment fault. That the credit reaches from the fault to the
 * re-start is the exam day's own rule; that one turn is set aside and the other counts is this
 * project's way to do it.
 */
class StationAgainTest {
    private static final long SECOND = 1_000_000;
    private final Yard yard = Yard.open(new TestPlan().make());
    private final Walk walk = new Walk(yard, 101, "proctor1");

    @Test
    void the_hold_reaches_from_the_fault_to_the_new_start_and_no_further() {
        fault();
        yard.after(8).ok("coordinator1", again(101, "drag"));
        walk.after(6).reset("drag").after(20).station("drag");
        assertThat(yard.facts(FactKind.HOLD_OUT)).hasSize(1);
        walk.stations(2, 6);
        Result result = yard.result(101);
        assertThat(result.creditedHoldMicros()).isCloseTo(35_500_000, within(20_000L));
        assertThat(result.splits()).hasSize(TestPlan.stations().size());
        assertThat(yard.split(101, "drag").splitMicros()).isCloseTo(10 * SECOND, within(20_000L));
    }

    @Test
    void the_first_turn_stays_on_record_and_counts_in_nothing() {
        fault();
        yard.ok("coordinator1", again(101, "drag"));
        Attempt attempt = attempt();
        assertThat(attempt.turns()).hasSize(1);
        assertThat(attempt.allTurns()).hasSize(2);
        walk.after(3).reset("drag").after(3).station("drag");
        assertThat(attempt.turns()).hasSize(2);
        assertThat(attempt.allTurns()).hasSize(3);
        assertThat(attempt.turns().get(1).startTap()).isNull();
        assertThat(yard.result(101).splits()).hasSize(2);
    }

    @Test
    void edges_of_the_first_turn_that_come_late_do_not_reach_the_second() {
        walk.at(10).release().station("walk").after(5).leaveMat("u2/1");
        yard.after(2);
        Input.Edge post = yard.happens("u2/2", 1);
        yard.after(1).ok("proctor1", new Act.EquipmentFault(101, "drag", "strap torn"));
        yard.ok("coordinator1", again(101, "drag"));
        walk.after(3).reset("drag").after(3).leaveMat("u2/1");
        yard.take(post);
        assertThat(post().station().checkpoints())
                .as("the post was not turned in the turn that counts")
                .allMatch(point -> point.seen() == 0);
    }

    @Test
    void a_station_just_left_is_walked_back_to() {
        walk.at(10).release().station("walk").after(5).station("drag");
        yard.after(2).ok("proctor1", new Act.EquipmentFault(101, "drag", "line mark gone"));
        yard.ok("coordinator1", again(101, "drag"));
        assertThat(onCourse().station()).isEqualTo("drag");
        walk.after(3).reset("drag").after(5).station("drag").stations(2, 6);
        assertThat(yard.result(101).splits()).hasSize(TestPlan.stations().size());
        assertThat(yard.result(101).creditedHoldMicros()).isPositive();
    }

    @Test
    void a_start_that_only_the_proctor_saw_ends_the_hold_at_their_tap() {
        fault();
        yard.ok("coordinator1", again(101, "drag"));
        walk.after(3).reset("drag").after(5).tap("drag", "start");
        assertThat(onCourse().phase()).isEqualTo("at-station");
        assertThat(attempt().holds()).allMatch(hold -> !hold.isOpen());
        assertThat(attempt().heldMicros(attempt().holds().get(0)))
                .isCloseTo(8_500_000, within(20_000L));
    }

    @Test
    void the_pages_say_that_the_hold_ends_at_the_start() {
        fault();
        assertThat(onCourse().canRunAgain()).isEqualTo("drag");
        assertThat(post().startsAgain()).isFalse();
        yard.ok("coordinator1", again(101, "drag"));
        assertThat(onCourse().startsAgain()).isTrue();
        assertThat(onCourse().canRunAgain()).as("asked for already").isEmpty();
        assertThat(post().phase()).isEqualTo("held");
        assertThat(post().startsAgain()).isTrue();
        assertThat(post().station().id()).isEqualTo("drag");
        assertThat(post().station().started()).isFalse();
        walk.after(3).reset("drag").after(5).station("drag");
        assertThat(post().startsAgain()).isFalse();
        assertThat(post().phase()).isEqualTo("walking");
    }

    @Test
    void only_the_held_one_and_only_their_last_station_can_be_run_again() {
        walk.at(10).release().station("walk").after(5).station("drag").after(1);
        assertThat(refused(101, "drag")).isEqualTo(Refusal.NOT_HELD);
        yard.ok("proctor1", new Act.EquipmentFault(101, "drag", ""));
        assertThat(refused(101, "poles")).isEqualTo(Refusal.NO_SUCH_SPLIT);
        assertThat(refused(101, "walk")).isEqualTo(Refusal.CLOCK_STARTS_HERE);
        assertThat(refused(102, "drag")).isEqualTo(Refusal.NOT_ON_COURSE);
        yard.ok("coordinator1", again(101, "drag"));
        assertThat(refused(101, "drag")).isEqualTo(Refusal.HOLD_ENDS_AT_START);
        assertThat(yard.rule("proctor1", new Act.ResumeCandidate(101)).refusal())
                .isEqualTo(Refusal.HOLD_ENDS_AT_START);
    }

    @Test
    void who_withdraws_instead_is_out_and_nothing_waits_for_them() {
        fault();
        yard.ok("coordinator1", again(101, "drag"));
        yard.after(3).ok("proctor1", new Act.Withdraw(101, "enough"));
        assertThat(yard.result(101).outcome()).isEqualTo("withdrawn");
        assertThat(attempt().startsAgain()).isFalse();
        walk.after(3).reset("drag");
        walk.after(3).leaveMat("u2/1");
        assertThat(attempt().turns()).hasSize(1);
    }

    @Test
    void the_same_journal_gives_the_same_state() {
        fault();
        yard.ok("coordinator1", again(101, "drag"));
        walk.after(3).reset("drag").after(3).station("drag");
        Engine other = new Engine();
        new ArrayList<>(yard.journal()).forEach(other::apply);
        assertThat(other.digest()).isEqualTo(yard.engine().digest());
    }

    /** A strap tears three seconds after the start of the second station. */
    private void fault() {
        walk.at(10).release().station("walk").after(5).leaveMat("u2/1");
        yard.after(3).ok("proctor1", new Act.EquipmentFault(101, "drag", "strap torn"));
    }

    private static Act again(int number, String station) {
        return new Act.RunStationAgain(number, station, Reason.EQUIPMENT_FAULT, "strap torn");
    }

    private Refusal refused(int number, String station) {
        return yard.rule("coordinator1", again(number, station)).refusal();
    }

    private Attempt attempt() {
        return yard.engine().attempts().stream()
                .filter(a -> a.number() == 101)
                .findFirst()
                .orElseThrow();
    }

    private ControlFrame.OnCourse onCourse() {
        return yard.engine().control(yard.view()).onCourse().get(0);
    }

    private PostFrame.Candidate post() {
        return yard.engine().post(yard.view(), "proctor1").candidate();
    }
}
