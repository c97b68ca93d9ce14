package yardclock.app.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import org.junit.jupiter.api.Test;

import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.stream.LongStream;

class LaneTest {
    @Test
    void commitsBeforeItAppliesAndAnswersLast() throws Exception {
        try (LaneBench bench = new LaneBench()) {
            bench.rules = entry -> LaneBench.effect();
            CountDownLatch commit = bench.journal.hold();
            bench.offer("pair", 1, 2);
            bench.start();

            await().until(() -> bench.lane.depth() == 0);
            assertThat(bench.happened).isEmpty();
            commit.countDown();

            await().until(() -> bench.happened.size() == 4);
            assertThat(bench.happened)
                    .containsExactly("applied 1", "applied 2", "effects 2", "pair kept 2");
        }
    }

    @Test
    void keepsABacklogInFewCommitsAndInOrder() throws Exception {
        try (LaneBench bench = new LaneBench()) {
            for (int n = 0; n < 1_000; n++) {
                bench.offer("one", n);
            }
            bench.start();
            await().until(() -> bench.journal.kept().size() == 1_000);
            assertThat(bench.journal.commits()).containsExactly(512, 488);
            assertThat(seqs(bench.journal.kept()))
                    .isEqualTo(LongStream.range(0, 1_000).boxed().toList());
        }
    }

    @Test
    void neverPartsAnOfferOverTwoCommits() throws Exception {
        try (LaneBench bench = new LaneBench()) {
            bench.offer("first", LongStream.range(0, 300).toArray());
            bench.offer("second", LongStream.range(300, 600).toArray());
            bench.start();
            await().until(() -> bench.journal.kept().size() == 600);
            assertThat(bench.journal.commits()).containsExactly(300, 300);
        }
    }

    @Test
    void refusesAnOfferThatDoesNotFitAndTakesTheNextOnceThereIsRoom() throws Exception {
        try (LaneBench bench = new LaneBench(1, 3)) {
            assertThat(bench.offer("a", 1, 2)).isTrue();
            assertThat(bench.offer("b", 3, 4)).isFalse();
            assertThat(bench.offer("c", 5)).isTrue();
            bench.start();
            await().until(() -> bench.lane.depth() == 0);
            assertThat(bench.offer("d", 6, 7, 8)).isTrue();
            await().until(() -> bench.journal.kept().size() == 6);
            assertThat(seqs(bench.journal.kept())).containsExactly(1L, 2L, 5L, 6L, 7L, 8L);
        }
    }

    @Test
    void givesEntriesNumbersWithoutGapAndTimesThatNeverRunBackwards() throws Exception {
        try (LaneBench bench = new LaneBench(60, Limits.INBOX_INPUTS)) {
            bench.start();
            for (int n = 0; n < 200; n++) {
                bench.offer("one", n);
            }
            await().until(() -> bench.journal.kept().size() == 200);
            List<Entry> kept = bench.journal.kept();
            for (int n = 0; n < 200; n++) {
                assertThat(kept.get(n).number()).isEqualTo(n + 1);
            }
            assertThat(kept.stream().map(Entry::gatewayMicros).toList()).isSorted();
        }
    }

    @Test
    void keepsTheOpeningBeforeWhatCameEarlier() throws Exception {
        try (LaneBench bench = new LaneBench()) {
            bench.offer("early", 7);
            bench.start(new Input.UnitDown("fu-12"));
            await().until(() -> bench.journal.kept().size() == 2);
            assertThat(bench.journal.kept().get(0).input()).isEqualTo(new Input.UnitDown("fu-12"));
        }
    }

    @Test
    void saysThatTheDiskIsFullRefusesMeanwhileAndRecovers() throws Exception {
        try (LaneBench bench = new LaneBench()) {
            bench.start();
            bench.journal.fail("The disk is full.");
            bench.offer("during", 1);
            await().until(() -> bench.happened.contains("during lost: The disk is full."));
            await().until(() -> troublesDrawn(bench).contains("The disk is full."));
            assertThat(bench.journal.kept()).isEmpty();
            assertThat(bench.lane.entries()).isZero();

            bench.journal.mend();
            bench.offer("after", 2);
            await().until(() -> bench.happened.contains("after kept 1"));
            await().until(() -> troublesDrawn(bench).isEmpty());
            assertThat(seqs(bench.journal.kept())).containsExactly(2L);
        }
    }

    @Test
    void triesTheOpeningAgainUntilTheDiskTakesIt() throws Exception {
        try (LaneBench bench = new LaneBench()) {
            bench.journal.fail("The disk is full.");
            bench.start(new Input.UnitDown("fu-12"));
            bench.offer("too early", 1);
            await().until(() -> bench.happened.contains("too early lost: The disk is full."));
            bench.journal.mend();
            await().until(() -> bench.journal.kept().size() == 1);
        }
    }

    @Test
    void journalsOneDeadlineWhenItPassesAndNoneBefore() throws Exception {
        try (LaneBench bench = new LaneBench(60, Limits.INBOX_INPUTS)) {
            long due = bench.clock.now().micros() + 12_000_000;
            bench.rules =
                    entry ->
                            entry.input() instanceof Input.Edge
                                    ? LaneBench.deadline(due)
                                    : LaneBench.NOTHING;
            bench.start();
            bench.offer("edge", 1);
            await().until(() -> bench.journal.kept().size() == 2);
            Entry deadline = bench.journal.kept().get(1);
            assertThat(deadline.input()).isEqualTo(new Input.Deadline());
            assertThat(deadline.gatewayMicros()).isGreaterThanOrEqualTo(due);
        }
    }

    @Test
    void doesNotSpinOnADeadlineThatStandsOn() throws Exception {
        try (LaneBench bench = new LaneBench()) {
            bench.rules = entry -> LaneBench.deadline(0);
            bench.start();
            bench.offer("first", 1);
            await().until(() -> bench.journal.kept().size() == 2);
            bench.offer("second", 2);
            await().until(() -> bench.happened.contains("second kept 1"));
            assertThat(bench.journal.kept()).hasSize(3);
        }
    }

    @Test
    void answersQuestionsOnItsOwnThread() throws Exception {
        try (LaneBench bench = new LaneBench().start()) {
            List<CompletableFuture<String>> answers = new ArrayList<>();
            for (int n = 0; n < 20; n++) {
                answers.add(
                        CompletableFuture.supplyAsync(
                                () ->
                                        bench.lane
                                                .ask(e -> Thread.currentThread().getName())
                                                .join()));
            }
            for (CompletableFuture<String> answer : answers) {
                assertThat(answer.get(10, TimeUnit.SECONDS)).isEqualTo("lane");
            }
        }
    }

    @Test
    void failsAQuestionThatThrowsAndGoesOn() throws Exception {
        try (LaneBench bench = new LaneBench().start()) {
            CompletableFuture<Object> broken =
                    bench.lane.ask(
                            engine -> {
                                throw new IllegalStateException("no such thing");
                            });
            assertThatThrownBy(() -> broken.get(10, TimeUnit.SECONDS))
                    .isInstanceOf(ExecutionException.class)
                    .hasRootCauseMessage("no such thing");
            assertThat(bench.lane.ask(engine -> 1).get(10, TimeUnit.SECONDS)).isEqualTo(1);
        }
    }

    @Test
    void refusesQuestionsOnceTooManyWait() {
        LaneBench bench = new LaneBench();
        for (int n = 0; n < Limits.QUESTIONS; n++) {
            assertThat(bench.lane.ask(engine -> 1)).isNotDone();
        }
        assertThat(bench.lane.ask(engine -> 1)).isCompletedExceptionally();
    }

    @Test
    void outlivesEveryAdapterThatThrows() throws Exception {
        try (LaneBench bench = new LaneBench()) {
            bench.frames =
                    (engine, view) -> {
                        throw new IllegalStateException("a frame that can't be drawn");
                    };
            bench.start();
            bench.lane.offer(
                    LaneBench.edge(1),
                    receipt -> {
                        throw new IllegalStateException("a socket that is gone");
                    });
            bench.offer("next", 2);
            await().until(() -> bench.happened.contains("next kept 1"));
            assertThat(bench.deaths).isEmpty();
        }
    }

    @Test
    void drawsFramesAfterAChangeAndEverySecondWithoutOne() throws Exception {
        try (LaneBench bench = new LaneBench().start()) {
            await().until(() -> !bench.drawn.isEmpty());
            int before = bench.drawn.size();
            await().atMost(5, TimeUnit.SECONDS).until(() -> bench.drawn.size() > before);
            assertThat(bench.drawn.get(before).gatewayMicros())
                    .isGreaterThan(bench.drawn.get(before - 1).gatewayMicros());
        }
    }

    @Test
    void keepsWhatWaitsWhenItIsClosedAndTakesNothingAfter() throws Exception {
        LaneBench bench = new LaneBench().start();
        CountDownLatch commit = bench.journal.hold();
        bench.offer("first", 1);
        await().until(() -> bench.lane.depth() == 0);
        bench.offer("second", 2);
        CompletableFuture<Void> closing = CompletableFuture.runAsync(() -> close(bench));
        await().until(() -> !bench.offer("late", 3));
        commit.countDown();
        closing.get(10, TimeUnit.SECONDS);
        assertThat(seqs(bench.journal.kept())).containsExactly(1L, 2L);
        assertThat(bench.lane.ask(engine -> 1)).isCompletedExceptionally();
    }

    private static void close(LaneBench bench) {
        try {
            bench.close();
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static List<String> troublesDrawn(LaneBench bench) {
        synchronized (bench.drawn) {
            return bench.drawn.isEmpty()
                    ? List.of()
                    : bench.drawn.get(bench.drawn.size() - 1).troubles();
        }
    }

    private static List<Long> seqs(List<Entry> entries) {
        return entries.stream()
                .filter(entry -> entry.input() instanceof Input.Edge)
                .map(entry -> ((Input.Edge) entry.input()).seq())
                .toList();
    }
}
