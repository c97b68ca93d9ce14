package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.board.BenchFrame;
import yardclock.core.fact.Effect;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Act;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/** Field units that are silent, away, new, confused or not yet compared. */
class UnitTroubleTest {
    private static final long SECOND = 1_000_000;
    private final Yard yard = Yard.open(new TestPlan().make());
    private final Walk walk = new Walk(yard, 101, "proctor1");

    @Test
    void a_silent_unit_is_seen_within_its_deadline() {
        yard.at(10).health("u1");
        yard.at(15.9);
        assertThat(status("u1")).isEqualTo("up");
        yard.at(16);
        assertThat(status("u1")).isEqualTo("silent");
        yard.at(24.9);
        assertThat(status("u1")).isEqualTo("silent");
        yard.at(25);
        assertThat(status("u1")).isEqualTo("off-line");
        assertThat(trouble("walk")).startsWith("u1: Off line");
        yard.health("u1");
        assertThat(status("u1")).isEqualTo("up");
        assertThat(trouble("walk")).isEmpty();
        assertThat(yard.facts(FactKind.UNIT_BACK)).extracting(Fact::station).contains("u1");
    }

    @Test
    void silence_is_measured_in_real_time() {
        Yard fast = Yard.begun(new TestPlan().make(), 30);
        fast.at(10).health("u1");
        fast.at(10 + 179);
        assertThat(fast.engine().bench(fast.view()).units().get(0).status()).isEqualTo("up");
        fast.at(10 + 181);
        assertThat(fast.engine().bench(fast.view()).units().get(0).status()).isEqualTo("silent");
    }

    @Test
    void a_last_will_takes_a_unit_off_line_at_once() {
        yard.at(10).health("u1");
        yard.take(new Input.UnitDown("u1"));
        assertThat(status("u1")).isEqualTo("off-line");
    }

    @Test
    void a_unit_that_still_holds_edges_is_told_again_what_is_kept() {
        yard.at(10).edge("u2/1", 1);
        yard.edge("u2/1", 0);
        String boot = yard.unit("u2").boot();
        long upto = yard.unit("u2").health(0).nextSeq() - 1;
        int before = told(boot, upto);
        yard.health("u2");
        assertThat(told(boot, upto)).as("nothing is held").isEqualTo(before);
        yard.unit("u2").holds(2);
        yard.health("u2");
        assertThat(told(boot, upto)).as("two are held").isEqualTo(before + 1);
    }

    private int told(String boot, long upto) {
        return Collections.frequency(yard.effects(), new Effect.Kept("u2", boot, upto));
    }

    @Test
    void one_never_heard_of_says_so_and_names_no_deadline() {
        Yard quiet = Yard.begun(new TestPlan().make(), 1);
        assertThat(quiet.engine().bench(quiet.view()).units())
                .extracting(BenchFrame.UnitView::status)
                .containsOnly("never-seen");
        assertThat(quiet.engine().nextDeadlineMicros()).isEmpty();
    }

    @Test
    void edges_before_the_first_exchange_wait_and_count_after_it() {
        Yard late = Yard.begun(new TestPlan().make(), 1);
        late.exchange("u1");
        Walk first = new Walk(late, 101, "proctor1").at(10).release().station("walk").after(5);
        first.station("drag");
        assertThat(late.result(101).splits()).as("u2 was never compared").hasSize(1);
        long finish = Math.round((late.now() - 2) * SECOND);
        late.after(3).exchange("u2");
        late.after(1);
        assertThat(late.split(101, "drag").state()).isEqualTo("proposed");
        assertThat(late.split(101, "drag").finishMicros()).isEqualTo(finish);
    }

    @Test
    void a_unit_that_is_never_compared_holds_up_nobody_and_fills_no_memory() {
        Yard late = Yard.begun(new TestPlan().make(), 1);
        late.exchange("u1");
        new Walk(late, 101, "proctor1").at(10).release().station("walk").after(5);
        for (int i = 0; i < 2_100; i++) {
            late.after(0.01).edge("u2/1", 1);
            late.after(0.01).edge("u2/1", 0);
        }
        assertThat(late.facts(FactKind.ALARM)).as("said once").hasSize(1);
        late.ok("proctor1", new Act.Tap(101, "drag", "start"));
        late.after(10).ok("proctor1", new Act.Tap(101, "drag", "finish"));
        late.after(12);
        assertThat(late.split(101, "drag").state()).isEqualTo("ambiguous");
    }

    @Test
    void a_gap_is_asked_for_again_and_its_closing_is_said() {
        yard.at(10).edge("u2/1", 1);
        Input.Edge lost = yard.after(0.1).happens("u2/1", 0);
        yard.after(0.1).edge("u2/1", 1);
        assertThat(yard.effects()).contains(ask(1, 1));
        yard.after(0.5).health("u2");
        assertThat(asked()).as("not more than once a second").isEqualTo(1);
        yard.after(0.6).health("u2");
        assertThat(asked()).isEqualTo(2);
        assertThat(gaps("u2")).containsExactly("1");
        yard.after(0.3).take(lost);
        assertThat(gaps("u2")).isEmpty();
        assertThat(yard.facts(FactKind.GAP_CLOSED)).hasSize(1);
        assertThat(yard.effects()).contains(new Effect.Kept("u2", yard.unit("u2").boot(), 2));
    }

    @Test
    void a_lost_last_edge_is_missed_by_the_second_sign_of_life() {
        yard.at(10).edge("u2/1", 1);
        yard.after(0.1).happens("u2/1", 0);
        yard.after(0.1).health("u2");
        assertThat(asked()).as("it may still be under way").isZero();
        yard.after(2).health("u2");
        assertThat(asked()).isEqualTo(1);
    }

    @Test
    void the_same_number_with_other_content_raises_an_alarm_and_changes_no_mark() {
        walk.at(10).release().station("walk").after(5).station("drag");
        var before = yard.result(101);
        Input.Edge copy = new Input.Edge("u2", yard.unit("u2").boot(), 0, 3, 0, 77);
        yard.take(copy);
        assertThat(yard.result(101)).isEqualTo(before);
        assertThat(yard.engine().control(yard.view()).alarms()).hasSize(1);
        assertThat(yard.engine().bench(yard.view()).units().get(1).conflicts()).isEqualTo(1);
    }

    @Test
    void an_unknown_unit_is_refused_and_changes_nothing() {
        yard.at(10).take(new Input.Edge("u9", "x", 0, 1, 1, 5));
        yard.take(new Input.UnitDown("u9"));
        assertThat(yard.facts(FactKind.EDGE_REFUSED)).hasSize(2);
        assertThat(yard.effects()).noneMatch(e -> e.toString().contains("u9"));
    }

    @Test
    void a_wide_interval_is_said() {
        Yard wide = Yard.begun(new TestPlan().make(), 1);
        wide.at(10).take(wide.unit("u2").exchange(9 * SECOND, 400_000, 400_000));
        wide.edge("u2/1", 1);
        assertThat(wide.facts(FactKind.WIDE_BOUND)).extracting(Fact::station).containsExactly("u2");
    }

    @Test
    void a_reboot_in_the_middle_of_a_turn_goes_on_with_a_new_clock() {
        walk.at(10).release().station("walk").after(5).leaveMat("u2/1").after(3);
        yard.unit("u2").reboot(Math.round(yard.now() * SECOND) - 2 * SECOND);
        yard.health("u2");
        yard.edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(0.5).exchange("u2");
        yard.after(2).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        long finish = Math.round(yard.now() * SECOND);
        yard.after(2);
        assertThat(yard.facts(FactKind.UNIT_BOOTED)).isNotEmpty();
        assertThat(yard.split(101, "drag").finishMicros()).isEqualTo(finish);
        assertThat(yard.split(101, "drag").why())
                .as("what the boot before still held is lost, and nobody can vouch for it")
                .startsWith("a field unit of this station may still hold");
    }

    @Test
    void a_unit_six_minutes_off_line_delivers_its_buffer_and_all_is_as_if_it_had_not_been() {
        walk.at(10).release().station("walk").after(5);
        List<Input> buffer = new ArrayList<>();
        buffer.add(yard.happens("u2/1", 1));
        buffer.add(yard.after(1).happens("u2/1", 0));
        buffer.add(yard.after(5).happens("u2/2", 1));
        buffer.add(yard.after(0.5).happens("u2/2", 0));
        buffer.add(yard.after(3.5).happens("u2/3", 1));
        buffer.add(yard.after(1).happens("u2/3", 0));
        long finish = Math.round(yard.now() * SECOND);
        walk.after(5).station("poles").after(5).station("bag");
        assertThat(yard.result(101).splits()).as("nothing is known of the drag").hasSize(1);
        yard.after(360);
        buffer.forEach(yard::take);
        yard.after(2);
        assertThat(yard.split(101, "drag").finishMicros()).isEqualTo(finish);
        assertThat(yard.split(101, "poles").state()).isEqualTo("proposed");
        assertThat(yard.split(101, "bag").state()).isEqualTo("proposed");
        assertThat(yard.split(101, "bag").splitMicros()).isEqualTo(10 * SECOND);
    }

    @Test
    void an_edge_sent_again_is_no_news_of_the_present_state() {
        Input.Edge lost = yard.at(10).happens("u3/2", 1);
        yard.after(0.1).edge("u3/2", 0);
        yard.after(1).take(lost);
        assertThat(view("u3").sensors().get(1).state()).isZero();
        yard.unit("u3").reboot(Math.round(yard.now() * SECOND) - 1_000);
        yard.health("u3");
        yard.after(1).edge("u3/2", 1);
        assertThat(view("u3").sensors().get(1).state()).isEqualTo(1);
    }

    @Test
    void edges_of_one_unit_keep_their_order_though_the_clocks_estimate_moves() {
        Yard moved = Yard.begun(new TestPlan().make(), 1);
        moved.at(9).take(moved.unit("u2").exchange(8_900_000, 1_000, 60_000));
        moved.at(10);
        moved.edge("u2/1", 1);
        Input.Edge lost = moved.at(10.002).happens("u2/1", 0);
        moved.at(10.004).edge("u2/1", 1);
        moved.at(10.1).take(moved.unit("u2").exchange(10_090_000, 1_000, 1_000));
        moved.at(11).take(lost);
        List<BenchFrame.EdgeView> edges =
                moved.engine().bench(moved.view()).edges().stream()
                        .sorted((a, b) -> Long.compare(a.seq(), b.seq()))
                        .toList();
        assertThat(edges).hasSize(3);
        assertThat(edges).extracting(BenchFrame.EdgeView::micros).isSorted();
    }

    private String status(String unit) {
        return view(unit).status();
    }

    private List<String> gaps(String unit) {
        return view(unit).gaps();
    }

    private BenchFrame.UnitView view(String unit) {
        return yard.engine().bench(yard.view()).units().stream()
                .filter(u -> u.id().equals(unit))
                .findFirst()
                .orElseThrow();
    }

    private String trouble(String station) {
        return yard.engine().control(yard.view()).stations().stream()
                .filter(s -> s.id().equals(station))
                .findFirst()
                .orElseThrow()
                .trouble();
    }

    private Effect.AskAgain ask(long from, long to) {
        return new Effect.AskAgain("u2", yard.unit("u2").boot(), from, to);
    }

    private long asked() {
        return yard.effects().stream().filter(Effect.AskAgain.class::isInstance).count();
    }
}
