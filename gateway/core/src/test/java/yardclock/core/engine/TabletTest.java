package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import yardclock.core.board.PostFrame;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Refusal;

/**
 * A tap's time is that of its press by its tablet's clock, however late it arrives; and where that
 * clock was never compared, it has none and says so.
 */
class TabletTest {
    private static final long SECOND = 1_000_000;

    /** The judged finish's hand interval: −0.25 … +0.03 s (exam-day.md), the plan's 0.1 s added. */
    private static final long HAND = 480_000;

    private static final String NO_TIME = "no time: this tablet's clock was never compared";
    private final Yard yard = Yard.open(new TestPlan().make());
    private final Walk walk = new Walk(yard, 101, "proctor1");
    private final TestTablet tablet = yard.tablet("proctor1");

    @Test
    void a_tap_made_in_a_gap_and_delivered_a_minute_later_has_the_time_of_its_press() {
        tablet.runsFastBy(30);
        exchanges(12);
        toTheJudgedFinish();
        TestTablet.Press press = finish(nowMicros());
        long pressed = nowMicros();
        yard.after(60);
        deliver(press);
        Result split = split("walk");
        assertThat(split.line.state()).isEqualTo("proposed");
        assertThat(split.line.finishMicros()).isCloseTo(pressed, within(20_000L));
        long truth = pressed - split.line.startMicros();
        assertThat(truth).isBetween(split.line.lowerMicros(), split.line.upperMicros());
        assertThat(split.width()).as("hand and clock, not the minute").isBetween(HAND, 2 * HAND);
        assertThat(split.line.why()).isEqualTo("JUDGED");
        replaysTheSame();
    }

    @Test
    void exchanges_after_the_gap_alone_date_a_tap_of_it_too() {
        yard.at(5);
        tablet.load(nowMicros());
        toTheJudgedFinish();
        TestTablet.Press press = finish(nowMicros());
        long pressed = nowMicros();
        yard.after(60);
        exchanges(6);
        deliver(press);
        Result split = split("walk");
        long truth = pressed - split.line.startMicros();
        assertThat(truth).isBetween(split.line.lowerMicros(), split.line.upperMicros());
    }

    @Test
    void a_tap_without_exchanges_on_either_side_ends_the_station_and_has_no_time() {
        toTheJudgedFinish();
        tablet.load(nowMicros());
        deliver(finish(nowMicros()));
        assertThat(split("walk").line.state()).isEqualTo("incomplete");
        assertThat(split("walk").line.why()).isEqualTo(NO_TIME);
        assertThat(split("walk").line.splitMicros()).isEqualTo(-1);
        assertThat(post().phase()).as("the station is over all the same").isEqualTo("walking");
        Act confirm = new Act.Confirm(101, "walk");
        assertThat(yard.ruleWithoutClock("proctor1", "c", confirm, -1).refusal())
                .isEqualTo(Refusal.NO_SUCH_SPLIT);
        replaysTheSame();
    }

    @Test
    void a_tap_that_waits_is_dated_by_the_first_exchange() {
        toTheJudgedFinish();
        tablet.load(nowMicros());
        deliver(finish(nowMicros()));
        long pressed = nowMicros();
        yard.after(2).compare("proctor1");
        assertThat(split("walk").line.state()).isEqualTo("proposed");
        assertThat(split("walk").line.finishMicros()).isCloseTo(pressed, within(10_000L));
        replaysTheSame();
    }

    @Test
    void a_page_loaded_anew_in_the_gap_leaves_the_tap_to_the_clock_it_was_made_by() {
        exchanges(12);
        toTheJudgedFinish();
        TestTablet.Press press = finish(nowMicros());
        long pressed = nowMicros();
        yard.after(20);
        tablet.load(nowMicros());
        yard.after(20);
        exchanges(4);
        deliver(press);
        assertThat(split("walk").line.finishMicros()).isCloseTo(pressed, within(20_000L));
        assertThat(split("walk").line.why()).isEqualTo("JUDGED");
    }

    @Test
    void taps_that_arrive_in_another_order_count_in_the_order_of_their_presses() {
        exchanges(4);
        walk.at(30).release().horn().after(8);
        TestTablet.Press early = finish(nowMicros());
        yard.after(4);
        TestTablet.Press cap = tablet.press("cap", new Act.Tap(101, "walk", "cap"), nowMicros());
        yard.after(2);
        TestTablet.Press second = finish(nowMicros());
        long pressed = nowMicros();
        yard.after(30);
        deliver(second);
        deliver(early);
        deliver(cap);
        assertThat(split("walk").line.finishMicros()).isCloseTo(pressed, within(20_000L));
    }

    @Test
    void a_device_without_a_clock_has_its_checkpoint_seen_and_the_split_says_why_it_is_not_clean() {
        walk.at(10).release().horn().after(4);
        yard.ruleWithoutClock("proctor1", "k", new Act.Tap(101, "walk", "cap"), -1);
        yard.after(5).edge("u1/3", 1);
        assertThat(split("walk").line.state()).isEqualTo("proposed");
        assertThat(split("walk").line.why()).isEqualTo(NO_TIME);
    }

    @Test
    void a_start_without_a_time_begins_the_turn_and_times_nothing() {
        walk.at(10).release().station("walk").after(5);
        yard.ruleWithoutClock("proctor1", "k", new Act.Tap(101, "drag", "start"), -1);
        assertThat(post().phase()).isEqualTo("at-station");
        assertThat(post().station().started()).isTrue();
        yard.after(5).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(3.5).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        yard.after(2);
        assertThat(post().phase()).isEqualTo("walking");
        assertThat(split("drag").line.state()).isEqualTo("incomplete");
        assertThat(split("drag").line.why()).isEqualTo(NO_TIME);
        assertThat(split("drag").line.startMicros()).isEqualTo(-1);
        assertThat(split("drag").line.finishMicros()).isPositive();
        replaysTheSame();
    }

    @Test
    void a_hold_without_a_time_leaves_no_official_time_and_says_so() {
        walk.at(10).release().station("walk");
        Act hold = new Act.HoldCandidate(101, Reason.WEATHER, "rain");
        yard.after(1).ruleWithoutClock("proctor1", "k", hold, -1);
        yard.after(20).ok("proctor1", new Act.ResumeCandidate(101));
        walk.stations(1, 6);
        walk.confirmAll();
        assertThat(yard.result(101).officialMicros()).isEqualTo(-1);
        assertThat(yard.result(101).outcome()).isEqualTo("undecided");
        assertThat(yard.result(101).outcomeWords()).contains("clock was never compared");
    }

    @Test
    void a_hold_counts_from_press_to_press_however_late_they_arrive() {
        exchanges(12);
        walk.at(70).release().station("walk").after(1);
        TestTablet.Press in =
                tablet.press("in", new Act.HoldCandidate(101, Reason.WEATHER, "rain"), nowMicros());
        yard.after(20);
        TestTablet.Press out = tablet.press("out", new Act.ResumeCandidate(101), nowMicros());
        yard.after(9);
        deliver(in);
        deliver(out);
        walk.stations(1, 6);
        assertThat(yard.result(101).creditedHoldMicros()).isCloseTo(20 * SECOND, within(20_000L));
        assertThat(yard.facts(FactKind.HOLD_OUT).get(0).valueMicros())
                .isCloseTo(20 * SECOND, within(20_000L));
    }

    @Test
    void a_tablet_that_ran_on_over_a_replaced_board_ties_its_time_line_to_the_old_one() {
        exchanges(12);
        walk.at(70).release().station("walk");
        long start = 70_200_000;
        yard.loseGateway().after(20);
        for (int unit = 1; unit <= 7; unit++) {
            yard.unit("u" + unit).reboot(nowMicros());
        }
        yard.replaceBoard("m2", 5 * SECOND);
        exchanges(6);
        for (int unit = 1; unit <= 7; unit++) {
            yard.exchange("u" + unit);
        }
        walk.stations(1, 6);
        long truth = nowMicros() - 100_000 - start;
        assertThat(yard.result(101).officialMicros()).isCloseTo(truth, within(30_000L));
        assertThat(truth).isBetween(yard.result(101).lowerMicros(), yard.result(101).upperMicros());
        replaysTheSame();
    }

    @Test
    void a_tap_made_while_the_gateway_was_away_has_the_time_of_its_press() {
        exchanges(12);
        yard.at(70);
        toTheJudgedFinish();
        yard.loseGateway().after(3);
        TestTablet.Press press = finish(nowMicros());
        long pressed = nowMicros();
        yard.after(20).replaceBoard("m2", 5 * SECOND);
        exchanges(6);
        yard.take(press.receivedAt("proctor1", yard.view().gatewayMicros()));
        long truth = pressed - 71_200_000;
        assertThat(split("walk").line.splitMicros()).isCloseTo(truth, within(30_000L));
        assertThat(truth)
                .isBetween(split("walk").line.lowerMicros(), split("walk").line.upperMicros());
    }

    @Test
    void a_press_is_never_later_than_its_receipt() {
        exchanges(4);
        toTheJudgedFinish();
        deliver(tablet.press("ahead", tap("walk", "finish"), nowMicros() + 30 * SECOND));
        assertThat(split("walk").line.why()).isEqualTo(NO_TIME);
    }

    @Test
    void exchanges_of_a_stranger_change_nothing() {
        yard.take(new TestTablet("stranger").exchange(nowMicros(), 1_000, 1_000));
        assertThat(yard.facts(FactKind.EXCHANGE_TAKEN))
                .extracting(f -> f.station())
                .doesNotContain("stranger");
    }

    private record Result(yardclock.core.result.Result.SplitLine line) {
        long width() {
            return line.upperMicros() - line.lowerMicros();
        }
    }

    private Result split(String station) {
        return new Result(yard.split(101, station));
    }

    private void toTheJudgedFinish() {
        yard.after(1);
        walk.release().horn().after(4).tap("walk", "cap").after(5);
    }

    private static Act tap(String station, String point) {
        return new Act.Tap(101, station, point);
    }

    private TestTablet.Press finish(long trueMicros) {
        return tablet.press("finish" + trueMicros, tap("walk", "finish"), trueMicros);
    }

    private void deliver(TestTablet.Press press) {
        yard.take(press.receivedAt("proctor1", nowMicros()));
    }

    /** One in five seconds. */
    private void exchanges(int count) {
        for (int i = 0; i < count; i++) {
            yard.after(5).compare("proctor1");
        }
    }

    private long nowMicros() {
        return Math.round(yard.now() * SECOND);
    }

    private PostFrame.Candidate post() {
        return yard.engine().post(yard.view(), "proctor1").candidate();
    }

    private void replaysTheSame() {
        Engine again = new Engine();
        yard.journal().forEach(again::apply);
        assertThat(again.digest()).isEqualTo(yard.engine().digest());
        assertThat(again.results()).isEqualTo(yard.engine().results());
    }
}
