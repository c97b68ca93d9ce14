package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import yardclock.core.board.ControlFrame;
import yardclock.core.board.PostFrame;
import yardclock.core.course.ExamPlan;
import yardclock.core.result.OutcomeKind;
import yardclock.core.result.Result;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.TreeSet;

/**
 * Whatever a yard does, the rules never fail and never lose their invariants. A failed rule would
 * leave the whole day in a picture that stands still.
 */
class RandomYardTest {
    private static final int SEEDS = 40;
    private static final int STEPS = 400;

    @Test
    void whatever_happens_the_rules_hold() {
        int started = 0;
        int done = 0;
        for (long seed = 1; seed <= SEEDS; seed++) {
            Yard yard = run(seed);
            started += yard.engine().results().stream().mapToInt(r -> r.splits().size()).sum();
            done +=
                    (int)
                            yard.engine().results().stream()
                                    .filter(r -> !r.outcome().isEmpty())
                                    .count();
            if (seed % 20 == 0) {
                assertSameDigestAgain(yard, seed);
            }
        }
        assertThat(started)
                .as("the chaos is not so great that nobody starts")
                .isGreaterThan(5 * SEEDS);
        assertThat(done).isGreaterThan(SEEDS / 3);
    }

    /** On every fourth day boards are replaced. */
    private static boolean isReplacing(long seed) {
        return seed % 4 == 0;
    }

    private static Yard run(long seed) {
        ExamPlan plan =
                seed % 3 == 0
                        ? new TestPlan().firstMovement().releaseEvery(5).make()
                        : new TestPlan().startOfDay().holdIce().releaseEvery(5).make();
        Yard yard = Yard.open(plan);
        RandomYard random = new RandomYard(seed, isReplacing(seed), yard);
        List<Result> before = yard.engine().results();
        for (int step = 0; step < STEPS; step++) {
            try {
                random.step();
                if (step % 20 == 0) {
                    check(yard, plan, isReplacing(seed));
                    compare(before, yard.engine().results(), isReplacing(seed));
                    before = yard.engine().results();
                }
            } catch (RuntimeException | AssertionError e) {
                Entry last = yard.journal().get(yard.journal().size() - 1);
                fail("seed " + seed + ", step " + step + ", entry " + last, e);
            }
        }
        return yard;
    }

    private static void check(Yard yard, ExamPlan plan, boolean replacing) {
        Engine engine = yard.engine();
        OptionalLong deadline = engine.nextDeadlineMicros();
        long now = yard.view().gatewayMicros();
        deadline.ifPresent(
                at -> assertThat(at).as("a deadline lies ahead").isGreaterThan(now - 31_000_000));
        ControlFrame control = engine.control(yard.view());
        assertThat(control.next().blockers().isEmpty())
                .isEqualTo(control.next().ready() || control.next().number() == 0);
        engine.bench(yard.view());
        engine.crew(yard.view());
        engine.board(yard.view());
        engine.leaderboard(yard.view());
        TreeSet<Integer> besides = new TreeSet<>();
        for (int i = 1; i <= 4; i++) {
            PostFrame post = engine.post(yard.view(), "proctor" + i);
            if (post.candidate() != null) {
                boolean isThrough = List.of("finished", "done").contains(post.candidate().phase());
                assertThat(post.candidate().splits().isEmpty() || isThrough).isTrue();
                assertThat(besides.add(post.candidate().number())).as("one proctor each").isTrue();
            }
        }
        engine.results().forEach(result -> check(result, plan, replacing));
    }

    private static void check(Result result, ExamPlan plan, boolean replacing) {
        if (!result.outcome().isEmpty()) {
            assertThat(Arrays.stream(OutcomeKind.values()).map(OutcomeKind::word))
                    .contains(result.outcome());
        }
        List<String> order = plan.stations().stream().map(s -> s.id()).toList();
        List<String> stations = result.splits().stream().map(Result.SplitLine::station).toList();
        assertThat(stations).as("in course order").isEqualTo(order.subList(0, stations.size()));
        if (result.officialMicros() != -1) {
            Result.SplitLine first = result.splits().get(0);
            Result.SplitLine last = result.splits().get(result.splits().size() - 1);
            assertThat(result.officialMicros())
                    .as("one running clock")
                    .isCloseTo(
                            last.finishMicros() - first.startMicros() - result.creditedHoldMicros(),
                            within(apartMicros(replacing)));
            assertThat(result.officialMicros())
                    .isBetween(result.lowerMicros(), result.upperMicros());
        }
        for (Result.SplitLine line : result.splits()) {
            if (line.splitMicros() >= 0) {
                assertThat(line.splitMicros())
                        .as("%s", line)
                        .isCloseTo(
                                line.finishMicros() - line.startMicros(),
                                within(apartMicros(replacing)))
                        .isBetween(line.lowerMicros(), line.upperMicros());
            }
        }
    }

    /** Instants of two time lines are known to each other only as well as their tie is. */
    private static long apartMicros(boolean replacing) {
        return replacing ? 2_000_000 : 0;
    }

    /** What was ruled on stays as it was ruled. */
    private static void compare(List<Result> before, List<Result> after, boolean replacing) {
        for (Result was : before) {
            Result is = sameRun(was, after);
            for (Result.SplitLine old : was.splits()) {
                boolean isRuled = List.of("confirmed", "void", "by-hand").contains(old.state());
                if (isRuled) {
                    Result.SplitLine now = is.splits().get(was.splits().indexOf(old));
                    assertThat(now.state()).isEqualTo(old.state());
                    assertThat(now.splitMicros()).isEqualTo(old.splitMicros());
                    if (!replacing) {
                        assertThat(now.startMicros()).isEqualTo(old.startMicros());
                    }
                }
            }
            if (!was.outcome().isEmpty() && !isWaitingForAClock(was)) {
                boolean isRunAgain = after.stream().anyMatch(r -> isLater(r, was));
                String outcome = isRunAgain ? "void-re-run" : was.outcome();
                assertThat(is.outcome()).as("%s, then %s", was, is).isEqualTo(outcome);
                assertThat(is.officialMicros()).isEqualTo(was.officialMicros());
            }
        }
    }

    /** Nothing was decided: the tablet of a hold may still say when it was pressed. */
    private static boolean isWaitingForAClock(Result result) {
        return result.outcome().equals(OutcomeKind.UNDECIDED.word()) && result.officialMicros() < 0;
    }

    private static Result sameRun(Result one, List<Result> all) {
        return all.stream()
                .filter(r -> r.number() == one.number() && r.run() == one.run())
                .findFirst()
                .orElseThrow();
    }

    private static boolean isLater(Result result, Result than) {
        return result.number() == than.number() && result.run() > than.run();
    }

    private static void assertSameDigestAgain(Yard yard, long seed) {
        Engine again = new Engine();
        List<Entry> journal = new ArrayList<>(yard.journal());
        journal.forEach(again::apply);
        assertThat(again.digest()).as("seed %d", seed).isEqualTo(yard.engine().digest());
    }
}
