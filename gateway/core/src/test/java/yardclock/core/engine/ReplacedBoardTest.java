package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.result.Result;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;

import java.util.Random;

/**
 * The gateway's board is replaced, or reboots, while a candidate is on the course: what the units
 * counted meanwhile says how long it was away, and every interval holds the truth.
 */
class ReplacedBoardTest {
    private static final long SECOND = 1_000_000;
    private static final int SEEDS = 12;
    private static final long DAY_SECONDS = 86_400;

    private Random random;
    private Yard yard;
    private Walk walk;
    private double start;

    @Test
    void the_official_time_holds_the_truth_whatever_the_new_boards_wall_clock_says() {
        long widest = 0;
        for (int seed = 0; seed < SEEDS; seed++) {
            upToTheDrag(seed);
            // From "far in the past" over "right" to a day ahead.
            long later = seed % 3 == 0 ? 0 : seed % 3 == 1 ? 60 * SECOND : DAY_SECONDS * SECOND;
            double dragStart = yard.now();
            yard.after(2).loseGateway();
            yard.after(60).replaceBoard("m2", later);
            yard.after(0.5);
            drag();
            Result.SplitLine drag = yard.split(101, "drag");
            String text = "seed " + seed;
            assertThat(drag.state()).as(text).isEqualTo("proposed");
            assertThat(drag.why()).as(text).contains("the gateway restarted in between");
            assertHolds(text, drag.lowerMicros(), drag.upperMicros(), yard.now() - 3 - dragStart);
            widest = Math.max(widest, finishes(text));
            replaysToTheSameDigest(text);
        }
        assertThat(widest).as("widest official interval, µs").isLessThan(80_000);
    }

    /** The rest of the drag, from the post on; its finish is three seconds ago after it. */
    private void drag() {
        yard.edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(3.5).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        yard.after(3);
    }

    @Test
    void edges_that_a_unit_kept_over_the_restart_are_dated_where_they_belong() {
        for (int seed = 0; seed < SEEDS; seed++) {
            upToTheDrag(seed);
            double matLeft = yard.now();
            yard.after(0.5).loseGateway();
            yard.after(10).edge("u2/2", 1);
            yard.after(0.5).edge("u2/2", 0);
            yard.after(3.5).edge("u2/3", 1);
            yard.after(1).edge("u2/3", 0);
            double lineLeft = yard.now();
            yard.after(20).replaceBoard("m2", seed % 2 * DAY_SECONDS * SECOND);
            if (seed % 4 < 2) {
                yard.deliverKept().after(1);
            } else {
                yard.after(1).deliverKept();
            }
            yard.after(3);
            String text = "seed " + seed;
            Result.SplitLine drag = yard.split(101, "drag");
            assertThat(drag.state()).as(text).isEqualTo("proposed");
            assertHolds(text, drag.lowerMicros(), drag.upperMicros(), lineLeft - matLeft);
            finishes(text);
            replaysToTheSameDigest(text);
        }
    }

    @Test
    void two_restarts_in_one_run_widen_the_interval_and_keep_the_truth_in_it() {
        for (int seed = 0; seed < SEEDS; seed++) {
            upToTheDrag(seed);
            yard.after(5).edge("u2/2", 1);
            yard.after(0.5).edge("u2/2", 0);
            yard.after(3.5).edge("u2/3", 1);
            yard.after(1).edge("u2/3", 0);
            yard.after(3).loseGateway();
            yard.after(30).replaceBoard("m2", seed % 2 * 3_600L * SECOND);
            walk.after(5).station("poles");
            // The second board dies before anybody was compared with the third.
            yard.loseGateway().after(40).replaceBoard("m3", 0);
            walk.after(5).station("bag");
            walk.after(5).station("fan");
            walk.after(5);
            finishAtLaps("seed " + seed);
        }
    }

    @Test
    void a_board_that_died_before_it_compared_any_clock_is_bridged_over() {
        upToTheDrag(1);
        drag();
        yard.loseGateway().after(20).replaceBoard("m2", 5 * SECOND);
        yard.loseGateway().after(20).replaceBoard("m3", 0);
        walk.stations(2, 5);
        walk.after(5);
        finishAtLaps("twice in a row");
    }

    @Test
    void a_hold_over_the_break_needs_no_tie_at_all() {
        upToTheDrag(3);
        drag();
        yard.ok(
                "proctor1",
                new Act.HoldCandidate(101, Reason.EQUIPMENT_FAULT, "the board is dead"));
        double heldFrom = yard.now();
        yard.loseGateway().after(240);
        for (int unit = 1; unit <= 7; unit++) {
            yard.unit("u" + unit).reboot(Math.round(yard.now() * SECOND) - SECOND);
        }
        yard.replaceBoard("m2", 0).after(20);
        double heldFor = yard.now() - heldFrom;
        yard.ok("proctor1", new Act.ResumeCandidate(101));
        walk.stations(2, 6);
        yard.after(5);
        Result result = yard.result(101);
        double truth = yard.now() - 5 - start - heldFor;
        assertHolds("held", result.lowerMicros(), result.upperMicros(), truth);
        assertThat(result.upperMicros() - result.lowerMicros()).isLessThan(500_000);
    }

    @Test
    void units_that_contradict_each_other_give_no_time_and_it_is_said() {
        upToTheDrag(5);
        yard.after(2).loseGateway().after(60);
        yard.unit("u4").stepsBy(2 * SECOND);
        yard.replaceBoard("m2", 0).after(1);
        drag();
        assertThat(yard.split(101, "drag").state()).isEqualTo("incomplete");
        assertThat(yard.facts(FactKind.ALARM))
                .extracting(Fact::words)
                .anyMatch(words -> words.startsWith("Field units contradict each other"));
    }

    @Test
    void what_was_ruled_keeps_the_value_that_was_seen_while_the_tie_gets_better() {
        upToTheDrag(7);
        yard.after(2).loseGateway().after(60).replaceBoard("m2", DAY_SECONDS * SECOND).after(1);
        drag();
        yard.ok("proctor1", new Act.Confirm(101, "drag"));
        Result.SplitLine ruled = yard.split(101, "drag");
        yard.after(400);
        assertThat(yard.split(101, "drag").splitMicros()).isEqualTo(ruled.splitMicros());
        assertThat(yard.split(101, "drag").lowerMicros()).isEqualTo(ruled.lowerMicros());
        assertThat(yard.split(101, "drag").upperMicros()).isEqualTo(ruled.upperMicros());
    }

    @Test
    void what_was_decided_stays_while_the_tie_gets_better() {
        upToTheDrag(8);
        yard.after(2).loseGateway().after(60).replaceBoard("m2", DAY_SECONDS * SECOND).after(1);
        drag();
        finishes("decided");
        walk.confirmAll();
        Result decided = yard.result(101);
        yard.after(400);
        Result later = yard.result(101);
        assertThat(decided.outcome()).isEqualTo("passed");
        assertThat(later.officialMicros()).isEqualTo(decided.officialMicros());
        assertThat(later.lowerMicros()).isEqualTo(decided.lowerMicros());
        assertThat(later.upperMicros()).isEqualTo(decided.upperMicros());
        assertThat(later.settled()).as("beside it").isNotNull();
    }

    @Test
    void a_first_answer_that_is_wild_spoils_nothing_for_long() {
        upToTheDrag(9);
        double matLeft = yard.now();
        yard.after(2).loseGateway().after(60).replaceBoard("m2", 5 * SECOND);
        yard.wildAnswer("u4");
        yard.after(30);
        drag();
        Result.SplitLine drag = yard.split(101, "drag");
        assertThat(drag.state()).isEqualTo("proposed");
        assertHolds("wild", drag.lowerMicros(), drag.upperMicros(), yard.now() - 3 - matLeft);
        finishes("wild");
    }

    /** Ten minutes of comparing, the first station, and the mat of the second just left. */
    private void upToTheDrag(int seed) {
        random = new Random(seed);
        yard = Yard.open(new TestPlan().make());
        for (int unit = 1; unit <= 7; unit++) {
            yard.unit("u" + unit).runsFastBy(random.nextInt(81) - 40);
        }
        walk = new Walk(yard, 101, "proctor1");
        yard.at(1).compareClocks(random).at(300);
        walk.release();
        start = yard.now() + 0.2;
        walk.station("walk").after(5).leaveMat("u2/1");
    }

    /** The rest of the course; returns how wide the official time's interval is. */
    private long finishes(String text) {
        walk.stations(2, 5);
        walk.after(5);
        return finishAtLaps(text);
    }

    private long finishAtLaps(String text) {
        double lapsStart = yard.now();
        walk.station("laps").after(5);
        Result result = yard.result(101);
        double truth = lapsStart + 9.6 - start;
        assertHolds(text, result.lowerMicros(), result.upperMicros(), truth);
        return result.upperMicros() - result.lowerMicros();
    }

    private static void assertHolds(String text, long lower, long upper, double truthSeconds) {
        assertThat(Math.round(truthSeconds * SECOND)).as(text).isBetween(lower, upper);
    }

    private void replaysToTheSameDigest(String text) {
        Engine again = new Engine();
        yard.journal().forEach(again::apply);
        assertThat(again.digest()).as(text).isEqualTo(yard.engine().digest());
    }
}
