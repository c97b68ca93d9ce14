package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.account.Cause;
import yardclock.core.account.Disposition;
import yardclock.core.course.ExamPlan;
import yardclock.core.passage.EdgeKey;
import yardclock.core.ruling.Act;

import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;

/** No evidence disappears: every edge of the journal ended somewhere, and only there. */
class AccountOfEvidenceTest {
    private static final int SEEDS = 24;
    private static final int STEPS = 500;

    private static EdgeKey key(Input.Edge edge) {
        return new EdgeKey(edge.unit(), edge.boot(), edge.seq());
    }

    private static void assertAllAccounted(Yard yard, String when) {
        Function<EdgeKey, Optional<Cause>> causes = yard.engine().edgeCauses();
        TreeSet<EdgeKey> keys = new TreeSet<>();
        for (Entry entry : yard.journal()) {
            if (entry.input() instanceof Input.Edge edge) {
                keys.add(key(edge));
            }
        }
        for (EdgeKey each : keys) {
            assertThat(causes.apply(each)).as("%s: %s", when, each).isPresent();
        }
    }

    @Test
    void over_random_days_every_edge_has_exactly_one_end() {
        for (long seed = 101; seed < 101 + SEEDS; seed++) {
            ExamPlan plan = new TestPlan().releaseEvery(5).make();
            Yard yard = Yard.begun(plan, 1);
            RandomYard random = new RandomYard(seed, seed % 4 == 0, yard);
            for (int step = 0; step < STEPS; step++) {
                random.step();
                if (step % 50 == 49) {
                    assertAllAccounted(yard, "seed " + seed + ", step " + step);
                }
            }
        }
    }

    private static Optional<Cause> end(Yard yard, Input.Edge edge) {
        return yard.engine().edgeCauses().apply(key(edge));
    }

    private static Input.Edge goes(Yard yard, String sensor, int state) {
        Input.Edge edge = yard.happens(sensor, state);
        yard.take(edge);
        return edge;
    }

    @Test
    void an_edge_that_never_came_has_no_end() {
        Yard yard = Yard.open(new TestPlan().make());
        assertThat(yard.engine().edgeCauses().apply(new EdgeKey("u1", "b", 7))).isEmpty();
    }

    @Test
    void a_start_that_is_nobodys_waits_in_the_tray_and_stays_there_when_the_next_one_begins() {
        Yard yard = Yard.open(new TestPlan().make());
        yard.at(10);
        goes(yard, "u2/1", 1);
        yard.at(11);
        Input.Edge stray = goes(yard, "u2/1", 0);
        assertThat(end(yard, stray)).contains(Cause.NOBODYS);
        assertThat(Cause.NOBODYS.disposition()).isEqualTo(Disposition.TRAY);
        new Walk(yard, 101, "proctor1").at(20).release().station("walk");
        yard.after(5);
        goes(yard, "u2/1", 1);
        yard.after(1);
        Input.Edge start = goes(yard, "u2/1", 0);
        yard.after(1);
        assertThat(end(yard, start)).contains(Cause.MARK);
        assertThat(end(yard, stray)).contains(Cause.NOBODYS);
        assertAllAccounted(yard, "after the start");
    }

    @Test
    void an_edge_before_the_plan_and_one_of_a_strange_unit_are_accounted_for() {
        Engine engine = new Engine();
        Input.Edge early = new Input.Edge("u1", "b", 0, 1, 1, 5);
        engine.apply(new Entry(1, 10, early));
        assertThat(engine.edgeCauses().apply(key(early))).contains(Cause.NO_PLAN);
        Yard yard = Yard.open(new TestPlan().make());
        Input.Edge strange = new Input.Edge("u99", "b", 0, 1, 1, 5);
        yard.take(strange);
        assertThat(end(yard, strange)).contains(Cause.UNKNOWN_UNIT);
    }

    @Test
    void an_edge_of_a_clock_never_compared_waits_by_name_and_then_finds_its_place() {
        Yard yard = Yard.begun(new TestPlan().make(), 1);
        yard.at(5);
        Input.Edge edge = goes(yard, "u2/1", 1);
        assertThat(end(yard, edge)).contains(Cause.NO_CLOCK);
        yard.exchange("u2");
        assertThat(end(yard, edge)).contains(Cause.NOBODY_THERE);
    }

    @Test
    void after_a_station_is_over_what_comes_is_part_of_its_reset() {
        Yard yard = Yard.open(new TestPlan().make());
        new Walk(yard, 101, "proctor1").at(20).release().station("walk");
        yard.after(1);
        Input.Edge reset = goes(yard, "u1/3", 1);
        assertThat(end(yard, reset)).contains(Cause.AFTER_FINISH);
        yard.ok("crew1", new Act.StationReady("walk"));
        assertThat(end(yard, reset)).contains(Cause.AFTER_FINISH);
    }
}
