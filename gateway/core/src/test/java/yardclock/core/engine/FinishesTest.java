package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import yardclock.core.board.PostFrame;
import yardclock.core.fact.FactKind;

/** What ends a split, what was missing, and what stands in for a sensor that said nothing. */
class FinishesTest {
    private static final long SECOND = 1_000_000;
    private final Yard yard = Yard.open(new TestPlan().make());
    private final Walk walk = new Walk(yard, 101, "proctor1");

    @Test
    void a_finish_is_provisional_until_its_time_has_passed() {
        toDrag();
        drag();
        long release = Math.round(yard.now() * SECOND);
        assertThat(yard.engine().nextDeadlineMicros()).hasValue(release + 1_900_000);
        yard.after(1.8);
        assertThat(yard.split(101, "drag").state()).isEqualTo("incomplete");
        yard.after(0.2);
        assertThat(yard.split(101, "drag").state()).isEqualTo("proposed");
    }

    @Test
    void a_checkpoint_that_was_not_seen_keeps_the_split_from_being_clean() {
        toDrag();
        walk.leaveMat("u2/1").after(9);
        overTheLine();
        yard.after(3);
        assertThat(yard.split(101, "drag").why()).isEqualTo("not seen: post");
    }

    @Test
    void what_is_seen_after_the_finish_puts_nothing_right() {
        toDrag();
        walk.leaveMat("u2/1").after(9);
        overTheLine();
        yard.after(3).edge("u2/2", 1); // the crew, fetching the mannequin
        yard.after(1).edge("u2/2", 0);
        yard.after(2);
        assertThat(yard.split(101, "drag").why()).isEqualTo("not seen: post");
        assertThat(yard.facts(FactKind.MARK_PROPOSED)).noneMatch(f -> f.point().equals("post"));
    }

    @Test
    void what_the_proctor_says_was_seen_was_seen() {
        toDrag();
        walk.leaveMat("u2/1").after(9);
        overTheLine();
        walk.after(3).tap("drag", "post");
        assertThat(yard.split(101, "drag").why()).isEqualTo("SINGLE");
    }

    @Test
    void a_required_act_put_right_while_the_clock_runs_moves_a_judged_finish_to_the_second_press() {
        walk.at(10).release().horn();
        yard.after(8).edge("u1/3", 1); // pressed, and only then seen: the cap is still on
        yard.after(0.2).edge("u1/3", 0);
        assertThat(yard.split(101, "walk").why()).isEqualTo("not seen: cap");
        walk.after(4).tap("walk", "cap");
        yard.after(2).edge("u1/3", 1);
        long second = Math.round(yard.now() * SECOND);
        yard.after(0.2).edge("u1/3", 0);
        assertThat(yard.split(101, "walk").finishMicros()).isEqualTo(second);
        assertThat(yard.split(101, "walk").why()).isEqualTo("JUDGED");
    }

    @Test
    void and_so_does_a_second_tap() {
        walk.at(10).release().horn().after(8).tap("walk", "finish");
        walk.after(4).tap("walk", "cap").after(2).tap("walk", "finish");
        long second = Math.round(yard.now() * SECOND);
        assertThat(yard.split(101, "walk").finishMicros()).isCloseTo(second, within(10_000L));
        walk.after(5).tap("walk", "finish");
        assertThat(yard.split(101, "walk").finishMicros()).isCloseTo(second, within(10_000L));
    }

    @Test
    void a_cap_tapped_a_little_late_does_not_undo_the_press() {
        walk.at(10).release().horn();
        yard.after(8).edge("u1/3", 1);
        long press = Math.round(yard.now() * SECOND);
        yard.after(0.2).edge("u1/3", 0);
        walk.after(1).tap("walk", "cap");
        assertThat(yard.split(101, "walk").finishMicros()).isEqualTo(press);
        assertThat(yard.split(101, "walk").why()).isEqualTo("JUDGED");
    }

    @Test
    void a_wired_press_carries_the_hand_interval_and_beats_the_tap() {
        walk.at(10).release().horn().after(8).tap("walk", "cap").tap("walk", "finish");
        yard.after(0.3).edge("u1/3", 1);
        long press = Math.round(yard.now() * SECOND);
        assertThat(yard.split(101, "walk").finishMicros()).isEqualTo(press);
        long width = yard.split(101, "walk").upperMicros() - yard.split(101, "walk").lowerMicros();
        // Press − 0.25 s … + 0.03 s, and the plan's 0.1 s on either side: exam-day.md.
        assertThat(width).isBetween(480_000L, 530_000L);
    }

    @Test
    void a_silent_sensor_is_stood_in_for_by_the_tap_after_ten_seconds() {
        toDrag();
        walk.leaveMat("u2/1").after(9).tap("drag", "post").after(1).tap("drag", "finish");
        long tapped = Math.round(yard.now() * SECOND);
        yard.after(11.4);
        assertThat(yard.split(101, "drag").state()).isEqualTo("incomplete");
        yard.after(0.2);
        assertThat(yard.split(101, "drag").state()).isEqualTo("ambiguous");
        assertThat(yard.split(101, "drag").finishMicros()).isCloseTo(tapped, within(10_000L));
        assertThat(yard.split(101, "drag").why()).contains("tap stands in");
        assertThat(yard.split(101, "drag").automaticMicros()).isEqualTo(-1);
        assertThat(post().phase()).isEqualTo("walking");
    }

    @Test
    void the_sensors_late_word_replaces_the_tap() {
        toDrag();
        walk.leaveMat("u2/1").after(9).tap("drag", "post");
        Input.Edge blocked = yard.after(1).happens("u2/3", 1);
        Input.Edge clear = yard.after(1).happens("u2/3", 0);
        long finish = Math.round(yard.now() * SECOND);
        walk.after(0.1).tap("drag", "finish");
        yard.after(60).take(blocked);
        yard.take(clear);
        yard.after(1);
        assertThat(yard.split(101, "drag").finishMicros()).isEqualTo(finish);
        assertThat(yard.split(101, "drag").why()).isEqualTo("SINGLE");
        assertThat(yard.split(101, "drag").handMicros()).isEqualTo(-1);
    }

    @Test
    void a_finish_that_was_sooner_than_tapped_lets_the_next_start_be_found() {
        toDrag();
        walk.leaveMat("u2/1").after(9).tap("drag", "post");
        Input.Edge blocked = yard.after(1).happens("u2/3", 1);
        Input.Edge clear = yard.after(1).happens("u2/3", 0);
        walk.after(5).leaveMat("u3/1");
        long start = Math.round(yard.now() * SECOND);
        walk.after(20).tap("drag", "finish");
        yard.after(15).take(blocked);
        yard.take(clear);
        yard.after(2);
        assertThat(yard.split(101, "poles").startMicros()).isEqualTo(start);
        assertThat(post().station().id()).isEqualTo("poles");
    }

    @Test
    void a_sensor_that_speaks_long_after_the_tap_makes_the_split_doubtful() {
        toDrag();
        walk.leaveMat("u2/1").after(9).tap("drag", "post").tap("drag", "finish");
        long tapped = Math.round(yard.now() * SECOND);
        yard.after(40);
        overTheLine(); // the crew, or the candidate after a tap by mistake: a person must look
        yard.after(3);
        assertThat(yard.split(101, "drag").why()).contains("disagree");
        assertThat(yard.split(101, "drag").finishMicros()).isCloseTo(tapped, within(10_000L));
    }

    @Test
    void an_unlikely_time_is_shown_and_never_clean() {
        toDrag();
        walk.leaveMat("u2/1");
        yard.after(0.5).edge("u2/2", 1);
        yard.after(0.3).edge("u2/2", 0);
        overTheLine();
        yard.after(3);
        assertThat(yard.split(101, "drag").why()).contains("plausible");
        assertThat(yard.split(101, "drag").splitMicros()).isLessThan(5 * SECOND);
    }

    @Test
    void the_bag_that_never_reached_the_top_has_not_finished() {
        toDrag();
        walk.station("drag").after(5).station("poles").after(5);
        yard.edge("u4/1", 0);
        yard.after(8).edge("u4/1", 1); // let down early
        yard.after(60);
        assertThat(yard.split(101, "bag").state()).isEqualTo("incomplete");
        yard.edge("u4/1", 0);
        yard.after(4).edge("u5/1", 1);
        yard.after(4).edge("u4/1", 1);
        assertThat(yard.split(101, "bag").finishMicros())
                .isEqualTo(Math.round(yard.now() * SECOND));
    }

    private void toDrag() {
        walk.at(10).release().station("walk").after(5);
    }

    private void drag() {
        walk.leaveMat("u2/1");
        yard.after(5).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(3);
        overTheLine();
    }

    private void overTheLine() {
        yard.edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
    }

    private PostFrame.Candidate post() {
        return yard.engine().post(yard.view(), "proctor1").candidate();
    }
}
