package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Refusal;

/** The gateway stops and starts again: on the same time line, or on another. */
class EpochTest {
    private static final long SECOND = 1_000_000;
    private final Yard yard = Yard.open(new TestPlan().make());
    private final Walk walk = new Walk(yard, 101, "proctor1");

    @Test
    void on_the_same_time_line_everything_goes_on() {
        walk.at(10).release().station("walk").after(5).leaveMat("u2/1");
        begin(true);
        yard.after(5).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(3.5).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        yard.after(2);
        assertThat(yard.split(101, "drag").splitMicros()).isEqualTo(10 * SECOND);
        assertThat(yard.facts(FactKind.ALARM)).isEmpty();
    }

    @Test
    void on_another_time_line_clocks_must_be_compared_anew() {
        walk.at(10).release();
        begin(false);
        yard.ok("proctor1", new Act.GiveStart(101));
        yard.after(0.2).edge("u1/9", 1);
        assertThat(yard.result(101).splits()).isEmpty();
        yard.after(0.5).exchange("u1");
        assertThat(yard.result(101).splits()).as("one answer alone").isEmpty();
        yard.after(0.1).exchange("u1");
        assertThat(yard.split(101, "walk").startMicros()).isEqualTo(10_200_000);
    }

    @Test
    void with_all_units_booted_anew_a_run_across_the_break_has_no_time_but_by_hand() {
        walk.at(10).release().station("walk").after(5).leaveMat("u2/1");
        rebootAll();
        yard.loadTablets();
        begin(false);
        for (int unit = 1; unit <= 7; unit++) {
            yard.exchange("u" + unit);
        }
        assertThat(yard.facts(FactKind.ALARM)).extracting(Fact::number).containsExactly(101);
        yard.after(5).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(3.5).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        yard.after(2);
        assertThat(yard.split(101, "drag").state()).isEqualTo("incomplete");
        assertThat(yard.split(101, "drag").why()).contains("clock was interrupted");
        assertThat(yard.split(101, "drag").automaticMicros()).isEqualTo(-1);
        assertThat(yard.split(101, "walk").state()).as("before the break").isEqualTo("proposed");
        for (String station : TestPlan.stations().subList(2, 6)) {
            walk.after(5).station(station);
            assertThat(yard.split(101, station).splitMicros()).isEqualTo(split(station));
        }
        assertThat(yard.result(101).officialMicros()).isEqualTo(-1);
        assertThat(yard.rule("proctor1", new Act.Confirm(101, "drag")).refusal())
                .isEqualTo(Refusal.NO_SUCH_SPLIT);
        assertThat(yard.rule("proctor1", hand(0)).refusal()).isEqualTo(Refusal.NO_HAND_MARKS);
        yard.ok("proctor1", hand(11 * SECOND));
        for (String station : TestPlan.stations()) {
            if (!station.equals("drag")) {
                yard.ok("proctor1", new Act.Confirm(101, station));
            }
        }
        assertThat(yard.result(101).outcome()).isEqualTo("undecided");
        assertThat(yard.result(101).outcomeWords()).contains("no official time");
    }

    private static long split(String station) {
        return station.equals("laps") ? 9_600_000 : 10 * SECOND;
    }

    private static Act hand(long micros) {
        return new Act.HandTime(101, "drag", micros, Reason.OTHER, "");
    }

    @Test
    void the_speed_of_an_epoch_is_the_speed_of_its_links() {
        yard.at(10).health("u1");
        yard.take(new Input.Epoch("m1", "p2", 1, 1, 10, true, "1"));
        yard.at(10 + 59);
        assertThat(yard.engine().bench(yard.view()).units().get(0).status()).isEqualTo("up");
        yard.at(10 + 61);
        assertThat(yard.engine().bench(yard.view()).units().get(0).status()).isEqualTo("silent");
        assertThat(yard.engine().control(yard.view()).head().speed()).isEqualTo(10);
    }

    @Test
    void setting_the_wall_clock_changes_what_is_shown_and_no_measured_time() {
        walk.at(10).release().station("walk");
        long before = yard.split(101, "walk").splitMicros();
        long wall = yard.engine().control(yard.view()).head().wallMicros();
        long now = yard.view().gatewayMicros();
        yard.take(new Input.WallStepped(now, wall - 7_200 * SECOND, -7_200 * SECOND));
        assertThat(yard.engine().control(yard.view()).head().wallMicros())
                .isEqualTo(wall - 7_200 * SECOND);
        assertThat(yard.split(101, "walk").splitMicros()).isEqualTo(before);
        yard.after(5).health("u1");
        assertThat(yard.engine().control(yard.view()).head().wallMicros())
                .isEqualTo(wall - 7_200 * SECOND + yard.view().gatewayMicros() - now);
        assertThat(yard.facts(FactKind.ALARM))
                .extracting(Fact::words)
                .containsExactly(
                        "The wall clock was set back by 7200 s. No measured time changes.");
    }

    private void rebootAll() {
        for (int unit = 1; unit <= 7; unit++) {
            yard.unit("u" + unit).reboot(Math.round(yard.now() * SECOND) - SECOND);
        }
    }

    private void begin(boolean continuous) {
        yard.take(new Input.Epoch("m1", "p2", 1_700_000_100_000_000L, 0, 1, continuous, "1"));
    }
}
