package yardclock.sim.twin;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.app.settings.DemoPlan;
import yardclock.core.board.BenchFrame;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Input;
import yardclock.sim.stage.VirtualStage;
import yardclock.sim.units.UnitSettings;
import yardclock.sim.units.VirtualUnit;

import java.util.HexFormat;
import java.util.List;
import java.util.SplittableRandom;

class TwinYardTest {
    private static final long SEED = 7;
    private static final long MINUTE = 60_000_000;

    @Test
    void units_come_up_are_compared_and_keep_what_they_stamped() {
        VirtualStage stage = new VirtualStage(1);
        SplittableRandom random = new SplittableRandom(SEED);
        Air air = new Air(stage, random.split());
        ExamPlan plan = DemoPlan.plan().plan();
        TwinGateway gateway =
                new TwinGateway(
                        stage,
                        plan,
                        air,
                        new TwinGateway.Sinks(
                                List.of(new Input.PlanFrozen(plan, DemoPlan.plan().sha256())),
                                (engine, view) -> {},
                                (entry, outcome) -> {}),
                        SEED);
        gateway.begin();
        for (FieldUnit planned : plan.fieldUnits()) {
            String boot = HexFormat.of().toHexDigits(random.nextLong());
            UnitSettings settings = UnitSettings.of(planned, SEED);
            VirtualUnit unit =
                    new VirtualUnit(stage, settings, air.linkOf(planned.id(), air.path()), boot);
            unit.powerOn();
        }
        stage.advanceMicros(20 * MINUTE);
        BenchFrame bench = gateway.ask(e -> e.bench(new Engine.View(stage.nowMicros(), List.of())));
        assertThat(bench.units())
                .allSatisfy(
                        unit -> {
                            assertThat(unit.status()).isEqualTo("up");
                            assertThat(unit.clock().exchanges()).isGreaterThan(200);
                            assertThat(unit.clock().boundWidthMicros()).isBetween(1_000L, 20_000L);
                        });
    }
}
