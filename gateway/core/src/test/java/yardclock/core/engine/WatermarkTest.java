package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.board.PostFrame;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Act;

import java.util.List;

/** Clean waits for what units may still hold; a split is shown at once all the same. */
class WatermarkTest {
    private static final String DRAG_UNIT = "u2";

    private static List<String> said(Yard yard, String station) {
        return yard.facts(FactKind.SPLIT_PROPOSED).stream()
                .filter(fact -> fact.station().equals(station))
                .map(Fact::words)
                .toList();
    }

    private static Yard atDrag() {
        Yard yard = Yard.open(new TestPlan().make());
        yard.at(5);
        for (int i = 1; i <= 7; i++) {
            yard.health("u" + i);
        }
        new Walk(yard, 101, "proctor1").at(20).release().station("walk");
        yard.after(5);
        return yard;
    }

    @Test
    void a_split_is_provisional_until_its_unit_has_told_what_it_stamped() {
        Yard yard = atDrag();
        new Walk(yard, 101, "proctor1").station("drag");
        assertThat(said(yard, "drag")).isNotEmpty().noneMatch("clean"::equals);
        yard.after(1).health(DRAG_UNIT);
        assertThat(said(yard, "drag")).last().isEqualTo("clean");
    }

    @Test
    void an_announced_edge_that_did_not_come_holds_the_label_back() {
        Yard yard = atDrag();
        new Walk(yard, 101, "proctor1").station("drag");
        yard.after(1);
        Input.Edge underWay = yard.happens("u2/4", 1);
        yard.health(DRAG_UNIT);
        assertThat(said(yard, "drag")).noneMatch("clean"::equals);
        yard.take(underWay);
        yard.after(1).health(DRAG_UNIT);
        assertThat(said(yard, "drag")).last().isEqualTo("clean");
    }

    @Test
    void a_unit_that_is_off_line_holds_up_its_own_splits_only() {
        Yard yard = atDrag();
        yard.take(new Input.UnitDown(DRAG_UNIT));
        new Walk(yard, 101, "proctor1").station("drag");
        yard.after(5);
        new Walk(yard, 101, "proctor1").station("poles");
        yard.after(1).health("u3");
        assertThat(said(yard, "poles")).last().isEqualTo("clean");
        assertThat(said(yard, "drag")).noneMatch("clean"::equals);
    }

    @Test
    void a_unit_that_restarted_meanwhile_vouches_for_nothing_before() {
        Yard yard = atDrag();
        new Walk(yard, 101, "proctor1").station("drag");
        yard.unit(DRAG_UNIT).reboot(Math.round(yard.now() * 1e6));
        yard.after(1).exchange(DRAG_UNIT);
        yard.health(DRAG_UNIT);
        yard.after(2).health(DRAG_UNIT);
        assertThat(said(yard, "drag")).noneMatch("clean"::equals);
    }

    @Test
    void a_required_act_not_seen_is_named_when_the_finish_is_and_until_the_next_start() {
        Yard yard = Yard.open(new TestPlan().make());
        new Walk(yard, 101, "proctor1").at(20).release().horn();
        yard.after(4);
        assertThat(missing(yard)).isEmpty();
        yard.edge("u1/3", 1);
        yard.after(0.1).edge("u1/3", 0);
        assertThat(missing(yard)).containsExactly("walk/cap");
        yard.after(1).ok("proctor1", new Act.Tap(101, "walk", "cap"));
        assertThat(missing(yard)).isEmpty();
    }

    private static List<String> missing(Yard yard) {
        PostFrame frame = yard.engine().post(yard.view(), "proctor1");
        return frame.candidate().missing().stream()
                .map(each -> each.station() + "/" + each.checkpoint())
                .toList();
    }

    @Test
    void frames_list_the_newest_of_the_tray_and_count_the_rest() {
        Yard yard = Yard.open(new TestPlan().make());
        for (int i = 0; i < 12; i++) {
            yard.at(10 + 4 * i).edge("u2/1", 1);
            yard.after(1).edge("u2/1", 0);
        }
        PostFrame post = yard.engine().post(yard.view(), "proctor1");
        assertThat(post.tray()).hasSize(8);
        assertThat(post.trayRest()).isEqualTo(4);
        assertThat(post.tray().get(0).atMicros()).isGreaterThan(post.tray().get(1).atMicros());
        assertThat(post.tray().get(0).unit()).isEqualTo("u2");
        assertThat(yard.engine().control(yard.view()).tray()).hasSize(12);
    }
}
