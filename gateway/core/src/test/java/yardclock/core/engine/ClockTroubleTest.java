package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.board.BenchFrame;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.health.ClockTrouble;
import yardclock.core.intake.AnswerRefusal;

import java.util.List;

/** Whatever is wrong with a unit's clock stands on the bench, and harms no mark. */
class ClockTroubleTest {
    private static final long SECOND = 1_000_000;
    private final Yard yard = Yard.begun(new TestPlan().make(), 1);
    private int asked;

    @Test
    void a_unit_that_was_never_compared_has_no_bound_yet_and_its_edges_wait() {
        yard.at(10).health("u2");
        assertThat(troubles()).containsExactly(ClockTrouble.NO_BOUND_YET);
        yard.edge("u2/1", 1);
        yard.after(1).edge("u2/1", 0);
        assertThat(troubles()).containsExactly(ClockTrouble.NO_BOUND_YET, ClockTrouble.EDGES_WAIT);
        assertThat(unit().waiting()).isEqualTo(2);
        assertThat(yard.engine().bench(yard.view()).edges()).isEmpty();
        answers(1);
        assertThat(troubles()).isEmpty();
        assertThat(yard.engine().bench(yard.view()).edges()).hasSize(2);
    }

    @Test
    void a_sound_clock_has_no_trouble() {
        compared(40);
        assertThat(troubles()).isEmpty();
        assertThat(unit().clock().ratePartsPerBillion()).isBetween(-100L, 100L);
        assertThat(unit().answers()).isEqualTo(new BenchFrame.AnswersView(40, 0, 0, 0, 0, 0));
    }

    @Test
    void answers_whose_ticks_run_backwards_are_counted_and_move_nothing() {
        compared(10);
        yard.after(5);
        long width = unit().clock().boundWidthMicros();
        Input.ExchangeAnswered good = answer(4_000, 4_000);
        long back = 30 * SECOND;
        yard.take(with(good, good.unitReceivedTick() - back, good.unitSentTick() - back));
        assertThat(troubles()).containsExactly(ClockTrouble.BACKWARDS);
        assertThat(unit().clock().backwards()).isEqualTo(1);
        assertThat(unit().clock().boundWidthMicros()).isEqualTo(width);
    }

    @Test
    void an_answer_received_before_it_was_asked_for_is_counted_as_impossible() {
        compared(10);
        yard.take(answer(4_000, -9_000));
        assertThat(troubles()).containsExactly(ClockTrouble.IMPOSSIBLE);
        assertThat(unit().clock().exchanges()).isEqualTo(10);
        assertThat(unit().clock().impossible()).isEqualTo(1);
    }

    @Test
    void a_question_answered_twice_counts_once() {
        compared(10);
        yard.after(2.5);
        Input.ExchangeAnswered once = answer(4_000, 4_000);
        yard.take(once);
        yard.take(with(once, once.unitReceivedTick() + 50_000, once.unitSentTick() + 50_000));
        assertThat(troubles()).containsExactly(ClockTrouble.ANSWERED_TWICE);
        assertThat(unit().clock().exchanges()).isEqualTo(11);
        assertThat(unit().clock().faults()).isZero();
        assertThat(yard.facts(FactKind.EXCHANGE_REFUSED)).hasSize(1);
    }

    @Test
    void an_answer_from_another_boot_says_nothing_of_the_present_clock() {
        compared(10);
        long width = unit().clock().boundWidthMicros();
        Input.ExchangeAnswered a = answer(4_000, 4_000);
        yard.take(
                new Input.ExchangeAnswered(
                        "u2",
                        "ghost",
                        a.id(),
                        a.gatewaySentMicros(),
                        5,
                        5,
                        a.gatewayReceivedMicros()));
        assertThat(troubles()).containsExactly(ClockTrouble.OTHER_BOOT);
        assertThat(unit().clock().exchanges()).isEqualTo(10);
        assertThat(unit().clock().boundWidthMicros()).isEqualTo(width);
    }

    @Test
    void boots_made_up_by_answers_do_not_push_out_the_present_clock() {
        compared(10);
        for (int i = 0; i < 20; i++) {
            Input.ExchangeAnswered a = answer(4_000, 4_000);
            long g4 = a.gatewayReceivedMicros();
            yard.take(
                    new Input.ExchangeAnswered(
                            "u2", "ghost" + i, a.id(), a.gatewaySentMicros(), 5, 5, g4));
        }
        assertThat(unit().clock().exchanges()).isEqualTo(10);
        assertThat(unit().answers().otherBoot()).isEqualTo(20);
    }

    @Test
    void what_the_link_turned_away_is_counted_under_its_reason() {
        compared(10);
        yard.take(new Input.AnswerRefused("u2", "b", "s-4", AnswerRefusal.AGAIN, 1));
        yard.take(new Input.AnswerRefused("u2", "b", "s-5", AnswerRefusal.LATE, 3));
        yard.take(new Input.AnswerRefused("u2", "b", "zz", AnswerRefusal.UNKNOWN, 7));
        assertThat(troubles())
                .containsExactly(
                        ClockTrouble.ANSWERED_TWICE, ClockTrouble.UNASKED, ClockTrouble.LATE);
        assertThat(unit().answers()).isEqualTo(new BenchFrame.AnswersView(10, 0, 1, 3, 7, 0));
    }

    @Test
    void a_clock_200_ppm_off_is_named_and_its_edges_still_lie_within_their_limits() {
        yard.unit("u2").runsFastBy(200);
        compared(60);
        assertThat(troubles()).containsExactly(ClockTrouble.RATE_TOO_FAR);
        assertThat(unit().clock().ratePartsPerBillion()).isBetween(-205_000L, -195_000L);
        long truth = Math.round(yard.now() * SECOND);
        yard.edge("u2/1", 1);
        BenchFrame.EdgeView edge = yard.engine().bench(yard.view()).edges().get(0);
        assertThat(Math.abs(edge.micros() - truth)).isLessThan(edge.widthMicros());
    }

    @Test
    void a_20_ms_step_without_a_reboot_is_flagged_within_six_answers() {
        compared(30);
        yard.unit("u2").stepsBy(20_000);
        answers(6);
        assertThat(troubles()).containsExactly(ClockTrouble.JUMPED);
        assertThat(unit().clock().faults()).isEqualTo(1);
        assertThat(unit().clock().lastFaultMicros()).isGreaterThan(150 * SECOND);
        assertThat(alarms()).singleElement().asString().contains("jumped without a restart");
    }

    @Test
    void a_counter_that_jumps_all_the_time_does_not_fill_the_bench_with_alarms() {
        compared(10);
        for (int i = 0; i < 60; i++) {
            yard.unit("u2").stepsBy(i % 2 == 0 ? 500_000 : 300_000);
            answers(1);
        }
        assertThat(unit().clock().faults()).isGreaterThan(30);
        assertThat(alarms()).hasSizeBetween(5, 7);
    }

    @Test
    void unanswered_questions_are_seen_in_the_numbers_of_those_answered() {
        compared(40);
        for (int i = 0; i < 20; i++) {
            asked++;
            yard.after(5).health("u2");
            answers(1);
        }
        assertThat(unit().answers().asked()).isEqualTo(60);
        assertThat(unit().answers().lost()).isEqualTo(20);
        assertThat(troubles()).containsExactly(ClockTrouble.MANY_LOST);
        answers(40);
        assertThat(unit().answers().lost()).as("of the newest sixty").isEqualTo(10);
        assertThat(troubles()).isEmpty();
    }

    @Test
    void a_unit_that_is_up_and_answers_no_more_is_named() {
        compared(10);
        yard.after(29).health("u2");
        assertThat(troubles()).isEmpty();
        yard.after(2).health("u2");
        assertThat(troubles()).containsExactly(ClockTrouble.NOT_ANSWERING);
    }

    @Test
    void a_bound_that_grew_too_wide_raises_one_alarm_that_goes_when_it_is_over() {
        compared(30);
        yard.after(200).health("u2");
        assertThat(alarms()).isEmpty();
        yard.after(400).health("u2");
        assertThat(unit().clock().boundWidthMicros()).isGreaterThan(50_000);
        assertThat(troubles()).startsWith(ClockTrouble.BOUND_TOO_WIDE);
        yard.after(200).health("u2");
        assertThat(alarms()).as("raised by time alone, once").hasSize(1);
        assertThat(alarms().get(0))
                .contains("the plan allows 50.0 ms", "nearer to the access point");
        assertThat(yard.engine().bench(yard.view()).alarms())
                .containsExactly("u2: " + alarms().get(0));
        answers(3);
        assertThat(alarms()).hasSize(1);
        assertThat(yard.facts(FactKind.ALARM_OVER)).hasSize(1);
        assertThat(yard.engine().bench(yard.view()).alarms()).isEmpty();
        assertThat(troubles()).isEmpty();
    }

    @Test
    void a_unit_that_answers_needs_no_deadline_for_its_bound() {
        compared(30);
        int before = yard.journal().size();
        for (int i = 0; i < 100; i++) {
            yard.after(5).health("u2");
            answers(1);
        }
        assertThat(yard.journal().subList(before, yard.journal().size()))
                .extracting(entry -> entry.input().kind())
                .doesNotContain(InputKind.DEADLINE);
    }

    @Test
    void a_unit_left_alone_for_hours_costs_few_deadlines() {
        compared(30);
        int before = yard.journal().size();
        yard.after(4 * 3_600);
        assertThat(yard.journal().subList(before, yard.journal().size()))
                .hasSizeLessThan(20)
                .extracting(entry -> entry.input().kind())
                .containsOnly(InputKind.DEADLINE);
        assertThat(alarms()).hasSize(1);
    }

    @Test
    void slow_first_answers_raise_no_alarm_that_the_next_would_clear() {
        yard.at(10).health("u2");
        yard.take(answer(40_000, 40_000));
        for (int i = 0; i < 4; i++) {
            yard.after(0.1).take(answer(4_000, 4_000));
        }
        yard.after(5).take(answer(4_000, 4_000));
        yard.after(20);
        assertThat(alarms()).isEmpty();
    }

    @Test
    void a_wide_first_answer_that_stays_alone_is_told_after_ten_seconds() {
        yard.at(10).health("u2");
        yard.take(answer(40_000, 40_000));
        assertThat(alarms()).isEmpty();
        yard.after(10.1);
        assertThat(alarms()).hasSize(1);
    }

    /** Compared every five seconds from the start, with a sign of life before each. */
    private void compared(int exchanges) {
        yard.at(10).health("u2");
        answers(exchanges);
    }

    private void answers(int count) {
        for (int i = 0; i < count; i++) {
            yard.after(2.5).health("u2");
            yard.after(2.5).take(answer(4_000, 4_000));
            yard.health("u2");
        }
    }

    private Input.ExchangeAnswered answer(long downMicros, long upMicros) {
        asked++;
        long sent = Math.round(yard.now() * SECOND) - downMicros - Math.max(0, upMicros);
        Input.ExchangeAnswered a = yard.unit("u2").exchange(sent, downMicros, upMicros);
        return new Input.ExchangeAnswered(
                a.unit(),
                a.boot(),
                "s-" + asked,
                a.gatewaySentMicros(),
                a.unitReceivedTick(),
                a.unitSentTick(),
                a.gatewayReceivedMicros());
    }

    private static Input.ExchangeAnswered with(
            Input.ExchangeAnswered a, long receivedTick, long sentTick) {
        return new Input.ExchangeAnswered(
                a.unit(),
                a.boot(),
                a.id(),
                a.gatewaySentMicros(),
                receivedTick,
                sentTick,
                a.gatewayReceivedMicros());
    }

    private List<ClockTrouble> troubles() {
        return unit().clockTroubles();
    }

    private BenchFrame.UnitView unit() {
        return yard.engine().bench(yard.view()).units().stream()
                .filter(u -> u.id().equals("u2"))
                .findFirst()
                .orElseThrow();
    }

    private List<String> alarms() {
        return yard.facts(FactKind.ALARM).stream().map(Fact::words).toList();
    }
}
