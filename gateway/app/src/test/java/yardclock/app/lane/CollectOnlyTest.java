package yardclock.app.lane;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import org.junit.jupiter.api.Test;

import yardclock.core.engine.Engine;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.engine.Outcome;

import java.util.ArrayList;
import java.util.List;

/** The rules meet an impossible entry: the gateway goes on collecting and says so. */
class CollectOnlyTest {
    private static final long POISON = 3;

    @Test
    void keepsAndAcknowledgesEverythingButAppliesNothingMore() throws Exception {
        try (LaneBench bench = new LaneBench()) {
            bench.rules = CollectOnlyTest::poisoned;
            bench.start();
            bench.offer("before", 1, 2);
            bench.offer("poison", 3, 4);
            bench.offer("after", 5);
            await().until(() -> bench.happened.contains("after kept 1"));

            assertThat(bench.happened).contains("before kept 2", "poison kept 2");
            assertThat(bench.happened).doesNotContain("applied 4", "applied 5");
            assertThat(bench.journal.kept()).hasSize(5);
            assertThat(bench.troubles.of(LiveState.TROUBLE)).contains("failed at entry 3");
        }
    }

    @Test
    void standsStillAtTheLastGoodStateWhichIsBuiltAnew() throws Exception {
        try (LaneBench bench = new LaneBench()) {
            bench.rules = CollectOnlyTest::poisoned;
            bench.start();
            bench.offer("all", 1, 2, 3, 4);
            await().until(() -> bench.happened.contains("all kept 4"));
            await().until(() -> lastView(bench).troubles().size() == 1);

            long good = bench.journal.kept().get(1).gatewayMicros();
            assertThat(lastView(bench).gatewayMicros()).isEqualTo(good);
            // Entries 1 and 2 were applied once more, to an engine the failure never touched.
            assertThat(bench.happened).containsSubsequence("applied 3", "applied 1", "applied 2");
        }
    }

    @Test
    void meetsThePoisonAgainAtTheNextStartWithoutFallingOver() {
        List<Entry> stored = new ArrayList<>();
        for (long n = 1; n <= 5; n++) {
            stored.add(new Entry(n, n, LaneBench.edge(n)));
        }
        JournalInMemory journal = new JournalInMemory();
        journal.append(stored);
        List<Long> applied = new ArrayList<>();
        Rules rules =
                (engine, entry) -> {
                    applied.add(entry.number());
                    return poisoned(entry);
                };
        Troubles troubles = new Troubles();
        LiveState state = new LiveState(new FeedRing(), troubles, rules);

        Engine before = state.engine();
        stored.forEach(state::apply);
        state.settle(journal);

        assertThat(state.isCollectingOnly()).isTrue();
        assertThat(state.lastEntry()).isEqualTo(5);
        assertThat(state.engine()).isNotSameAs(before);
        assertThat(applied).containsExactly(1L, 2L, 3L, 1L, 2L);
        assertThat(troubles.words()).hasSize(1);
    }

    private static Outcome poisoned(Entry entry) {
        if (entry.input() instanceof Input.Edge edge && edge.seq() == POISON) {
            throw new IllegalStateException("the impossible at " + entry);
        }
        return LaneBench.NOTHING;
    }

    private static Engine.View lastView(LaneBench bench) {
        synchronized (bench.drawn) {
            return bench.drawn.get(bench.drawn.size() - 1);
        }
    }
}
