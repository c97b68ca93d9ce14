package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.result.Result;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Refusal;

/**
 * What people confirmed at a station today narrows what is plausible there.
 *
 * <p>The factor 1.4826 from the median absolute deviation to a standard deviation is 1 / Φ⁻¹(3/4)
 * of a normal spread: a textbook's figure, from memory. The window's rule is our own choice, and
 * its values here are reckoned by hand.
 */
class UsualTimesTest {
    private final Yard yard =
            Yard.openFor(new TestPlan().firstMovement().releaseEvery(1).make(), 12);

    @Test
    void after_ten_confirmed_splits_one_far_from_all_of_them_is_not_clean_any_more() {
        for (int number = 101; number <= 110; number++) {
            through(number, 3.5);
            confirmAndLeave(number);
        }
        // Ten splits of about 10 s; the window is 5 s to 40 s, by the half and four times of them.
        assertThat(through(111, 35).why()).contains("usual at this station today");
        leave(111);
        assertThat(through(112, 27).why()).as("slow, and no slower than that").isEqualTo("SINGLE");
    }

    @Test
    void before_ten_splits_were_confirmed_the_plan_alone_decides() {
        for (int number = 101; number <= 109; number++) {
            through(number, 3.5);
            confirmAndLeave(number);
        }
        through(110, 3.5);
        leave(110);
        assertThat(through(111, 35).why()).isEqualTo("SINGLE");
    }

    @Test
    void a_confirmation_that_is_taken_back_counts_no_more_and_the_screen_is_let_be() {
        for (int number = 101; number <= 109; number++) {
            through(number, 3.5);
            confirmAndLeave(number);
        }
        through(110, 3.5);
        yard.ok("proctor1", new Act.Confirm(110, "drag"));
        long tenth = yard.journal().size();
        yard.ok("proctor1", new Act.WithdrawRuling(110, "drag", tenth, ""));
        leave(110);
        assertThat(through(111, 35).why()).isEqualTo("SINGLE");
        yard.ok("proctor1", new Act.Confirm(111, "drag"));
        assertThat(yard.rule("proctor1", new Act.Confirm(111, "drag")).refusal())
                .isEqualTo(Refusal.ALREADY_RULED);
        Engine again = new Engine();
        yard.journal().forEach(again::apply);
        assertThat(again.digest()).isEqualTo(yard.engine().digest());
    }

    /**
     * @param seconds from the post to the line
     */
    private Result.SplitLine through(int number, double seconds) {
        yard.after(30).ok("coordinator1", new Act.Release(number, "proctor1"));
        yard.after(2).edge("u2/1", 1);
        yard.after(1).edge("u2/1", 0);
        yard.after(5).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(seconds).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        yard.after(8).exchange("u2");
        return yard.split(number, "drag");
    }

    private void confirmAndLeave(int number) {
        yard.ok("proctor1", new Act.Confirm(number, "drag"));
        leave(number);
    }

    private void leave(int number) {
        yard.ok("proctor1", new Act.Withdraw(number, ""));
        yard.ok("crew1", new Act.StationReady("drag"));
    }
}
