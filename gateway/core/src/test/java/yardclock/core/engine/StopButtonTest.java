package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import yardclock.core.account.Cause;
import yardclock.core.board.Head.CourseStatus;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.passage.EdgeKey;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Verdict;

/** A wired stop button, the test plan's u1/8, stops as the stop on a tablet does. */
class StopButtonTest {
    private static final String BUTTON = "u1/8";
    private static final long SECOND = 1_000_000;

    private final Yard yard = Yard.open(new TestPlan().make());
    private final Walk walk = new Walk(yard, 101, "proctor1");

    @Test
    void a_press_stops_everybody_and_is_the_buttons_by_name() {
        walk.at(10).release().station("walk");
        yard.after(1).edge(BUTTON, 1);
        assertThat(status()).isEqualTo(CourseStatus.STOPPED);
        assertThat(words()).isEqualTo("Stopped by s8 (u1/8)");
        assertThat(yard.facts(FactKind.STOPPED)).hasSize(1);
        assertThat(yard.engine().control(yard.view()).onCourse().get(0).phase()).isEqualTo("held");
        assertThat(release(102)).isEqualTo(Refusal.STOPPED);
    }

    @Test
    void the_hold_it_begins_is_credited_from_the_press_and_not_from_its_arrival() {
        walk.at(10).release().station("walk").after(2);
        Input.Edge press = yard.happens(BUTTON, 1);
        yard.after(4).take(press);
        yard.edge(BUTTON, 0);
        yard.after(20).ok("safety1", new Act.Restart());
        yard.ok("proctor1", new Act.ResumeCandidate(101));
        yard.after(3);
        for (String station : TestPlan.stations().subList(1, 6)) {
            walk.station(station).after(5);
        }
        assertThat(yard.result(101).creditedHoldMicros()).isCloseTo(24 * SECOND, within(20_000L));
    }

    @Test
    void nobody_restarts_while_it_is_pressed_and_after_its_release_only_the_entitled_role() {
        yard.edge(BUTTON, 1);
        assertThat(restart("safety1")).isEqualTo(Refusal.STOP_BUTTON_PRESSED);
        assertThat(restart("crew1")).isEqualTo(Refusal.NOT_YOUR_ROLE);
        yard.after(1).edge(BUTTON, 0);
        assertThat(status()).as("a release restarts nobody").isEqualTo(CourseStatus.STOPPED);
        assertThat(restart("crew1")).isEqualTo(Refusal.NOT_YOUR_ROLE);
        assertThat(restart("safety1")).isNull();
        assertThat(status()).isEqualTo(CourseStatus.HELD);
    }

    @Test
    void one_that_is_pressed_or_cut_when_its_unit_starts_stops_without_an_edge() {
        yard.happens(BUTTON, 1);
        yard.after(1).health("u1");
        assertThat(status()).isEqualTo(CourseStatus.STOPPED);
        yard.after(1).health("u1");
        assertThat(yard.facts(FactKind.STOPPED)).hasSize(1);
    }

    @Test
    void a_press_and_its_release_that_overtake_each_other_stop_all_the_same() {
        Input.Edge press = yard.happens(BUTTON, 1);
        Input.Edge release = yard.after(0.2).happens(BUTTON, 0);
        yard.take(release);
        yard.take(press);
        assertThat(status()).isEqualTo(CourseStatus.STOPPED);
        assertThat(restart("safety1")).as("it is not pressed any more").isNull();
    }

    @Test
    void a_press_that_its_unit_could_not_tell_in_time_warns_and_stops_nobody() {
        Input.Edge press = yard.happens(BUTTON, 1);
        Input.Edge release = yard.after(0.5).happens(BUTTON, 0);
        yard.after(60);
        yard.take(press);
        yard.take(release);
        yard.health("u1");
        assertThat(status()).isEqualTo(CourseStatus.RUNNING);
        assertThat(yard.facts(FactKind.ALARM))
                .extracting(Fact::words)
                .anyMatch(words -> words.startsWith("s8 (u1/8) was pressed 60 s ago"));
    }

    @Test
    void a_late_press_that_is_still_held_stops_with_the_units_next_sign_of_life() {
        Input.Edge press = yard.happens(BUTTON, 1);
        yard.after(60).take(press);
        assertThat(status()).isEqualTo(CourseStatus.RUNNING);
        yard.after(1).health("u1");
        assertThat(status()).isEqualTo(CourseStatus.STOPPED);
    }

    @Test
    void a_unit_that_is_gone_keeps_nobody_from_restarting() {
        yard.edge(BUTTON, 1);
        assertThat(restart("safety1")).isEqualTo(Refusal.STOP_BUTTON_PRESSED);
        yard.take(new Input.UnitDown("u1"));
        assertThat(restart("safety1")).isNull();
        yard.after(1).health("u1");
        assertThat(status()).as("back, and still pressed").isEqualTo(CourseStatus.STOPPED);
    }

    @Test
    void a_second_press_while_stopped_is_noted_and_changes_nothing() {
        yard.ok("crew1", new Act.StopAll("she fell"));
        yard.after(1).edge(BUTTON, 1);
        assertThat(words()).contains("she fell");
        assertThat(yard.facts(FactKind.STOP_BUTTON))
                .extracting(Fact::words)
                .containsExactly("s8 (u1/8): pressed");
    }

    @Test
    void its_edge_is_accounted_for_as_a_stop_buttons() {
        Input.Edge press = yard.happens(BUTTON, 1);
        yard.take(press);
        EdgeKey key = new EdgeKey(press.unit(), press.boot(), press.seq());
        assertThat(yard.engine().edgeCauses().apply(key)).contains(Cause.STOP_BUTTON);
    }

    private CourseStatus status() {
        return yard.engine().control(yard.view()).head().course();
    }

    private String words() {
        return yard.engine().control(yard.view()).head().courseWords();
    }

    private Refusal restart(String device) {
        Verdict verdict = yard.rule(device, new Act.Restart());
        return verdict.refusal();
    }

    private Refusal release(int number) {
        return yard.rule("coordinator1", new Act.Release(number, "proctor2")).refusal();
    }
}
