package yardclock.app.stations;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.engine.Input;
import yardclock.core.intake.AnswerRefusal;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;

/** Whom the gateway asks for the time, when, and which answers it takes. Time is moved by hand. */
class ExchangesTest {
    private static final long SEED = 20260101;
    private static final long MILLI = TimeUnit.MILLISECONDS.toNanos(1);

    private int ids;
    private long now = TimeUnit.HOURS.toNanos(1);

    @Test
    void aUnitNobodyHeardIsNotAsked() {
        assertThat(exchanges(1).due(now)).isEmpty();
    }

    @Test
    void afterABurstOfFourQuestionsComeEveryFiveSecondsGiveOrTakeTwo() {
        Exchanges exchanges = exchanges(1);
        List<Long> gaps = gapsMillis(exchanges, "fu-01", 300_000);
        assertThat(gaps.subList(0, 3)).as("seed %d", SEED).containsOnly(100L);
        assertThat(gaps.subList(3, gaps.size()))
                .as("seed %d", SEED)
                .allMatch(gap -> gap >= 3_000 && gap <= 7_010)
                .hasSizeBetween(50, 70);
        assertThat(gaps.stream().distinct().count()).isGreaterThan(30);
    }

    @Test
    void atSixtyTimesTheSpeedTheyComeSixtyTimesAsOften() {
        List<Long> gaps = gapsMillis(exchanges(60), "fu-01", 5_000);
        assertThat(gaps).as("seed %d", SEED).allMatch(gap -> gap <= 120).hasSizeBetween(45, 75);
    }

    @Test
    void aNewBootAndAReturnGetABurst() {
        Exchanges exchanges = exchanges(1);
        askAll(exchanges, "00000000000000a1", 1_000);
        assertThat(askAll(exchanges, "00000000000000a1", 1_000)).isLessThan(2);
        assertThat(askAll(exchanges, "00000000000000a2", 1_000)).isEqualTo(Exchanges.BURST);
        exchanges.down("fu-01");
        assertThat(exchanges.due(now)).isEmpty();
        assertThat(askAll(exchanges, "00000000000000a2", 1_000)).isEqualTo(Exchanges.BURST);
        exchanges.linkUp();
        assertThat(askAll(exchanges, "00000000000000a2", 1_000)).isEqualTo(Exchanges.BURST);
    }

    @Test
    void aUnitThatFellSilentIsAskedNoMore() {
        Exchanges exchanges = exchanges(1);
        exchanges.heard("fu-01", "00000000000000a1", now);
        now += 16_000 * MILLI;
        assertThat(exchanges.due(now)).isEmpty();
    }

    @Test
    void anAnswerIsTakenOnce() {
        Exchanges exchanges = exchanges(1);
        String id = exchanges.ask("fu-01", 1_000, now);
        Decoded first = exchanges.answered(answer("fu-01", id), 1_900, now + 3 * MILLI);
        assertThat(first.inputs())
                .containsExactly(
                        new Input.ExchangeAnswered(
                                "fu-01", "00000000000000a1", id, 1_000, 50, 60, 1_900));
        assertThat(refusal(exchanges.answered(answer("fu-01", id), 2_000, now + 4 * MILLI)))
                .isEqualTo(RejectionReason.EXCHANGE_AGAIN);
    }

    @Test
    void questionsOfOneUnitAreNumberedInASeriesOfItsOwn() {
        Exchanges exchanges = exchanges(1);
        assertThat(List.of(ask(exchanges, "fu-01"), ask(exchanges, "fu-02")))
                .containsExactly("id-0-1", "id-1-1");
        exchanges.linkUp();
        assertThat(List.of(ask(exchanges, "fu-01"), ask(exchanges, "fu-02")))
                .containsExactly("id-0-2", "id-1-2");
    }

    @Test
    void refusedAnswersAreJournalledAsCountsAtMostOnceASecond() {
        Exchanges exchanges = exchanges(1);
        List<Input> told = new ArrayList<>();
        for (int i = 0; i < 25; i++, now += 100 * MILLI) {
            told.addAll(exchanges.answered(answer("fu-01", "nobody-" + i), 1, now).inputs());
        }
        assertThat(told)
                .containsExactly(
                        refused("nobody-0", 1), refused("nobody-10", 10), refused("nobody-20", 10));
    }

    @Test
    void anAnswerToAnotherUnitsQuestionIsRefusedAndLeavesTheQuestionOpen() {
        Exchanges exchanges = exchanges(1);
        String id = exchanges.ask("fu-01", 1_000, now);
        assertThat(refusal(exchanges.answered(answer("fu-02", id), 1_900, now)))
                .isEqualTo(RejectionReason.EXCHANGE_UNKNOWN);
        assertThat(exchanges.answered(answer("fu-01", id), 1_900, now).inputs()).hasSize(1);
    }

    @Test
    void anAnswerThatTookLongerThanTwoSecondsIsRefused() {
        Exchanges exchanges = exchanges(1);
        String inTime = exchanges.ask("fu-01", 1_000, now);
        String late = exchanges.ask("fu-01", 1_000, now);
        assertThat(exchanges.answered(answer("fu-01", inTime), 1, now + 2_000 * MILLI).inputs())
                .hasSize(1);
        assertThat(refusal(exchanges.answered(answer("fu-01", late), 1, now + 2_001 * MILLI)))
                .isEqualTo(RejectionReason.EXCHANGE_LATE);
    }

    private Exchanges exchanges(int speed) {
        return new Exchanges(speed, new Random(SEED), () -> "id-" + ids++);
    }

    private List<Long> gapsMillis(Exchanges exchanges, String unit, int millis) {
        List<Long> gaps = new ArrayList<>();
        long last = -1;
        for (int i = 0; i < millis; i++, now += MILLI) {
            exchanges.heard(unit, "00000000000000a1", now);
            if (exchanges.due(now).isPresent()) {
                if (last >= 0) {
                    gaps.add((now - last) / MILLI);
                }
                last = now;
            }
        }
        return gaps;
    }

    private int askAll(Exchanges exchanges, String boot, int millis) {
        int asked = 0;
        for (int i = 0; i < millis; i++, now += MILLI) {
            exchanges.heard("fu-01", boot, now);
            asked += exchanges.due(now).isPresent() ? 1 : 0;
        }
        return asked;
    }

    private static Decoded.Answer answer(String unit, String id) {
        return new Decoded.Answer(unit, "00000000000000a1", id, 50, 60);
    }

    private String ask(Exchanges exchanges, String unit) {
        return exchanges.ask(unit, 1_000, now);
    }

    private static Input refused(String id, long count) {
        return new Input.AnswerRefused(
                "fu-01", "00000000000000a1", id, AnswerRefusal.UNKNOWN, count);
    }

    private static RejectionReason refusal(Decoded decoded) {
        assertThat(decoded.inputs()).allMatch(Input.AnswerRefused.class::isInstance);
        return decoded.rejections().get(0).reason();
    }
}
