package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.board.PostFrame;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Act;

/**
 * What is not certain is shown as such: an order inside the bounds, evidence that comes after a
 * ruling, a tap that was awaited. The values are this project's own test course.
 */
class TiesAndLateEvidenceTest {
    private static final long SECOND = 1_000_000;

    /** No later than it arrived, and up to 4 s before: the unit's clock is not known better. */
    @Test
    void marks_of_two_candidates_inside_the_bounds_are_shown_as_a_tie() {
        Yard yard = Yard.begun(new TestPlan().firstMovement().releaseEvery(1).make(), 1);
        yard.at(10);
        for (int unit = 1; unit <= 7; unit++) {
            long leg = unit == 2 ? 4 * SECOND : 4_000;
            yard.take(yard.unit("u" + unit).exchange(10 * SECOND - 2 * leg, leg, leg));
        }
        assertThat(tied(yard, 3)).as("3 s between them, known to 4 s").isTrue();
    }

    @Test
    void marks_further_apart_than_their_bounds_are_no_tie() {
        Yard yard = Yard.begun(new TestPlan().firstMovement().releaseEvery(1).make(), 1);
        yard.at(10);
        for (int unit = 1; unit <= 7; unit++) {
            yard.exchange("u" + unit);
        }
        assertThat(tied(yard, 3)).as("3 s between them, known to some milliseconds").isFalse();
    }

    /** Whether the drag of 101 is shown as a tie with 102, who starts so long after its finish. */
    private static boolean tied(Yard yard, double secondsAfter) {
        Walk first = new Walk(yard, 101, "proctor1").release();
        yard.after(1).edge("u2/1", 1);
        yard.after(1).edge("u2/1", 0);
        yard.after(5).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(3.5).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        yard.after(2).ok("crew1", new Act.StationReady("drag"));
        yard.ok("coordinator1", new Act.Release(102, "proctor2"));
        yard.edge("u2/1", 1);
        yard.after(secondsAfter - 2).edge("u2/1", 0);
        yard.after(2);
        first.stations(2, 6);
        PostFrame.Split drag = split(yard, "proctor1", "drag");
        assertThat(yard.result(102).splits()).as("102 has started").hasSize(1);
        assertThat(split(yard, "proctor1", "poles").tie()).isFalse();
        return drag.tie();
    }

    /** By the tap the split was 10.5 s or so; the mat, heard of later, says 8.5 s. */
    @Test
    void evidence_after_a_confirmation_is_shown_beside_the_split_and_changes_nothing_by_itself() {
        Yard yard = Yard.open(new TestPlan().make());
        Walk walk = new Walk(yard, 101, "proctor1").at(10).release().station("walk");
        yard.after(5).ok("proctor1", new Act.Tap(101, "drag", "start"));
        Input.Edge pressed = yard.after(1).happens("u2/1", 1);
        Input.Edge left = yard.after(1).happens("u2/1", 0);
        yard.after(5).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(2).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        yard.after(3);
        walk.stations(2, 6).confirmAll();
        PostFrame.Split confirmed = split(yard, "proctor1", "drag");
        assertThat(confirmed.late()).isNull();
        yard.take(pressed);
        yard.take(left);
        PostFrame.Split after = split(yard, "proctor1", "drag");
        assertThat(after.state()).isEqualTo("confirmed");
        assertThat(after.splitMicros()).isEqualTo(confirmed.splitMicros());
        assertThat(after.late().splitMicros()).isEqualTo(8_500_000);
        assertThat(yard.facts(FactKind.LATE_EVIDENCE)).hasSize(1);
        assertThat(yard.facts(FactKind.MARK_CHANGED)).isEmpty();
    }

    @Test
    void a_finish_whose_tap_never_comes_is_open_until_the_wait_is_over_and_counts_then() {
        Yard yard = Yard.open(new TestPlan().make());
        new Walk(yard, 101, "proctor1").at(10).release().station("walk");
        yard.after(5).edge("u2/1", 1);
        yard.after(1).edge("u2/1", 0);
        yard.after(0.1).ok("proctor1", new Act.Tap(101, "drag", "start"));
        yard.after(5).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(2).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        yard.after(5.5);
        assertThat(yard.split(101, "drag").why()).contains("the tap is awaited");
        yard.after(1);
        assertThat(yard.split(101, "drag").why()).isEqualTo("SINGLE");
        assertThat(yard.split(101, "drag").splitMicros()).isEqualTo(8_600_000);
    }

    private static PostFrame.Split split(Yard yard, String proctor, String station) {
        return yard.engine().post(yard.view(), proctor).candidate().splits().stream()
                .filter(split -> split.station().equals(station))
                .findFirst()
                .orElseThrow();
    }
}
