package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;

import yardclock.core.course.RosterLine;
import yardclock.core.fact.Effect;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Role;

import java.util.List;

/** The engine's own manners: entries in order, a plan once, nothing from nothing. */
class EngineTest {
    private final Engine engine = new Engine();
    private long entry;

    @Test
    void entries_come_without_a_hole() {
        take(0, epoch());
        assertThatThrownBy(() -> engine.apply(new Entry(3, 0, epoch())))
                .hasMessageContaining("entry 3 came after entry 1");
        assertThatThrownBy(() -> engine.apply(new Entry(1, 0, epoch())))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void before_the_plan_units_are_not_heard_and_nothing_is_due() {
        take(0, epoch());
        Outcome outcome = take(5, new Input.Edge("u1", "b", 0, 1, 1, 10));
        assertThat(outcome.facts()).isEmpty();
        assertThat(outcome.effects()).isEmpty();
        assertThat(outcome.nextDeadlineMicros()).isEmpty();
        assertThat(engine.results()).isEmpty();
        assertThat(engine.standing()).isEmpty();
        assertThatThrownBy(() -> engine.control(new Engine.View(5, List.of())))
                .hasMessageContaining("plan");
    }

    @Test
    void plan_and_roster_may_come_in_either_order_and_are_taken_once() {
        take(0, epoch());
        take(1, new Input.RosterFrozen(List.of(new RosterLine(7, 1)), "r1"));
        take(2, new Input.PlanFrozen(new TestPlan().make(), "p1"));
        assertThat(engine.results()).extracting(r -> r.number()).containsExactly(7);
        take(3, new Input.PlanFrozen(new TestPlan().firstMovement().make(), "p2"));
        take(4, new Input.RosterFrozen(List.of(new RosterLine(8, 1)), "r2"));
        assertThat(engine.planSha256()).isEqualTo("p1");
        assertThat(engine.rosterSha256()).isEqualTo("r1");
        assertThat(engine.plan().orElseThrow().stations()).hasSize(6);
        assertThat(engine.results()).hasSize(1);
    }

    @Test
    void a_codes_role_is_known_before_and_after_its_use() {
        take(0, new Input.CodeIssued("c", Role.SAFETY, ""));
        assertThat(engine.codeRole("c")).contains(Role.SAFETY);
        take(1, new Input.Enrolled("d", "P", Role.SAFETY, "c", "t"));
        assertThat(engine.codeRole("c")).contains(Role.SAFETY);
        assertThat(engine.codeRole("x")).isEmpty();
        assertThat(engine.holder("t").orElseThrow().role()).isEqualTo(Role.SAFETY);
        assertThat(engine.holder("u")).isEmpty();
    }

    @Test
    void what_must_hold_in_the_world_can_be_asked_for_again() {
        Yard yard = Yard.open(new TestPlan().make());
        yard.at(10).health("u2");
        yard.edge("u2/1", 1);
        String boot = yard.unit("u2").boot();
        assertThat(yard.engine().standing()).containsExactly(new Effect.Kept("u2", boot, 0));
    }

    @Test
    void an_impossible_climate_reading_is_refused_aloud() {
        Yard yard = Yard.open(new TestPlan().make());
        yard.take(new Input.Climate("u7", 9_000, 4_000, null, null, null, 1));
        assertThat(yard.facts(FactKind.ALARM)).hasSize(1);
        assertThat(yard.engine().control(yard.view()).head().heat().level()).isEqualTo(-1);
        yard.take(new Input.Climate("u7", 3_300, 4_000, null, null, null, 2));
        assertThat(yard.engine().control(yard.view()).head().heat().level()).isEqualTo(2);
    }

    @Test
    void of_alarms_without_end_the_newest_are_kept() {
        Yard yard = Yard.open(new TestPlan().make());
        for (int i = 0; i < 200; i++) {
            yard.take(new Input.Climate("u" + i, 9_000, 4_000, null, null, null, 1));
        }
        List<String> alarms = yard.engine().control(yard.view()).alarms();
        assertThat(alarms).hasSize(50);
        assertThat(alarms.get(0)).startsWith("u199");
    }

    private Outcome take(long micros, Input input) {
        entry++;
        return engine.apply(new Entry(entry, micros, input));
    }

    private static Input epoch() {
        return new Input.Epoch("m", "p", 1, 1, 1, false, "1");
    }
}
