package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.result.Result;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Refusal;

import java.util.ArrayList;
import java.util.List;

/**
 * A whole attempt run again for cause. That the first one stays on record, void with cause and
 * authority, is the exam day's own rule; that the candidate then waits behind everybody is this
 * project's choice, for "after full rest".
 */
class RunAgainTest {
    private final Yard yard = Yard.open(new TestPlan().make());

    @Test
    void the_first_attempt_stays_void_with_cause_and_authority_and_the_second_one_counts() {
        finish(101, "proctor1");
        long first = yard.result(101).officialMicros();
        yard.ok("coordinator1", again(101));
        assertThat(yard.result(101).run()).isEqualTo(2);
        assertThat(yard.result(101).outcome()).as("nothing of it is known yet").isEmpty();

        nobodyElseComes();
        finish(101, "proctor1");
        List<Result> both = runs(101);
        assertThat(both).extracting(Result::run).containsExactly(2, 1);
        assertThat(both.get(0).outcome()).isEqualTo("passed");
        assertThat(both.get(0).splits()).hasSize(TestPlan.stations().size());
        assertThat(both.get(1).outcome()).isEqualTo("void-re-run");
        assertThat(both.get(1).outcomeWords()).contains("equipment-fault").contains("maul head");
        assertThat(both.get(1).outcomeWords())
                .contains(
                        yard.engine()
                                .holder("coordinator1")
                                .map(holder -> holder.person())
                                .orElse("coordinator"));
        assertThat(both.get(1).officialMicros()).as("its time stays as evidence").isEqualTo(first);
    }

    @Test
    void who_runs_again_waits_behind_everybody() {
        finish(101, "proctor1");
        yard.ok("coordinator1", again(101));
        assertThat(yard.engine().control(yard.view()).next().number()).isEqualTo(102);
        assertThat(yard.engine().control(yard.view()).waiting())
                .extracting(waiting -> waiting.number())
                .last()
                .isEqualTo(101);
    }

    @Test
    void an_attempt_that_is_not_over_is_not_run_again() {
        assertThat(yard.rule("coordinator1", again(101)).refusal()).isEqualTo(Refusal.NOT_OVER);
        Walk walk = new Walk(yard, 101, "proctor1").at(10).wholeCourse();
        assertThat(yard.rule("coordinator1", again(101)).refusal()).isEqualTo(Refusal.NOT_OVER);
        walk.confirmAll();
        yard.ok("coordinator1", again(101));
        assertThat(yard.rule("coordinator1", again(101)).refusal()).isEqualTo(Refusal.NOT_OVER);
    }

    @Test
    void a_late_reading_of_the_first_run_changes_nothing_of_the_second() {
        new Walk(yard, 101, "proctor1").at(10).release().station("walk");
        yard.ok("coordinator1", new Act.Withdraw(101, "sick"));
        yard.ok("coordinator1", again(101));
        yard.ok("crew1", new Act.StationReady("walk"));
        yard.after(1).edge("u1/3", 1);
        yard.after(0.2).edge("u1/3", 0);
        assertThat(yard.result(101).splits()).isEmpty();
        assertThat(runs(101).get(1).splits()).hasSize(1);
    }

    @Test
    void the_same_journal_gives_the_same_state() {
        finish(101, "proctor1");
        yard.ok("coordinator1", again(101));
        finish(102, "proctor2");
        yard.ok("coordinator1", new Act.SwapOrder(101, 103, Reason.OTHER, ""));
        finish(101, "proctor1");
        Engine other = new Engine();
        new ArrayList<>(yard.journal()).forEach(other::apply);
        assertThat(other.digest()).isEqualTo(yard.engine().digest());
        assertThat(other.results()).isEqualTo(yard.engine().results());
    }

    private static Act again(int number) {
        return new Act.RunAgain(number, Reason.EQUIPMENT_FAULT, "maul head loose");
    }

    private void finish(int number, String proctor) {
        Walk walk = new Walk(yard, number, proctor).after(40).wholeCourse().confirmAll();
        TestPlan.stations().forEach(walk::reset);
    }

    private void nobodyElseComes() {
        for (int number = 102; number <= 110; number++) {
            yard.ok("coordinator1", new Act.NoShow(number));
        }
    }

    private List<Result> runs(int number) {
        return yard.engine().results().stream().filter(r -> r.number() == number).toList();
    }
}
