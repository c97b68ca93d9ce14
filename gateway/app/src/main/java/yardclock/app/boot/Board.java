package yardclock.app.boot;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.FrameSink;
import yardclock.app.lane.Lane;
import yardclock.app.lane.Troubles;
import yardclock.app.metrics.Meters;
import yardclock.app.pins.BoardPins;
import yardclock.app.pins.BoardWiring;
import yardclock.app.pins.ClimateOutcome;
import yardclock.app.pins.ClimateSensor;
import yardclock.app.pins.ClimateWiring;
import yardclock.app.pins.LocalUnit;
import yardclock.app.pins.Outputs;
import yardclock.app.pins.PinMap;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.engine.Engine;

import java.util.Map;
import java.util.TreeMap;

/**
 * What is wired to the gateway's own board, put together: one field unit for each id that is named,
 * the climate sensors that speak as them, and the outputs.
 */
final class Board {
    private final BoardWiring wiring;
    private final ExamPlan plan;
    private final Lane lane;
    private final GatewayClock clock;
    private final Troubles troubles;
    private final BoardPins pins = new BoardPins();
    private final Outputs outputs;

    Board(BoardWiring wiring, ExamPlan plan, Lane lane, GatewayClock clock, Troubles troubles) {
        this.wiring = wiring;
        this.plan = plan;
        this.lane = lane;
        this.clock = clock;
        this.troubles = troubles;
        outputs = wiring.outputs() == null ? null : new Outputs(wiring.outputs(), clock, troubles);
    }

    /** The outputs' look at the state before the pages', whatever becomes of these. */
    FrameSink frames(FrameSink pages) {
        if (outputs == null) {
            return pages;
        }
        return (engine, view) -> {
            try {
                look(engine, view);
            } finally {
                pages.accept(engine, view);
            }
        };
    }

    /** Before there is a plan nobody can be stopped, and nothing is shown. */
    private void look(Engine engine, Engine.View view) {
        if (engine.plan().isPresent()) {
            outputs.look(engine.crew(view).head(), lane.takesStops());
        }
    }

    /** Starts it all; what the board lacks is said and does not keep the gateway from running. */
    void start(StopOrder parts, Meters meters) throws RefusedException {
        Map<String, LocalUnit> units = units();
        parts.add("pins", pins);
        units.forEach((id, unit) -> parts.add("board as " + id, unit).start(pins));
        for (ClimateWiring climate : wiring.climates()) {
            LocalUnit unit = units.get(climate.unit());
            ClimateSensor sensor = new ClimateSensor(climate, unit, lane, clock, troubles);
            count(sensor, meters);
            parts.add("climate sensor of " + climate.unit(), sensor).start();
        }
    }

    /** Last of all, and closed first: the pulse says that a stop would be heard. */
    void startOutputs(StopOrder parts) {
        if (outputs != null) {
            parts.add("outputs", outputs).start(pins);
        }
    }

    private Map<String, LocalUnit> units() throws RefusedException {
        Map<String, LocalUnit> units = new TreeMap<>();
        if (wiring.pins() != null) {
            units.put(wiring.pins().unit(), unit(wiring.pins()));
        }
        for (ClimateWiring climate : wiring.climates()) {
            if (!units.containsKey(climate.unit())) {
                units.put(climate.unit(), unit(PinMap.none(climate.unit())));
            }
        }
        return units;
    }

    private LocalUnit unit(PinMap map) throws RefusedException {
        FieldUnit unit =
                plan.fieldUnit(map.unit())
                        .orElseThrow(
                                () ->
                                        new RefusedException(
                                                "The plan has no field unit " + map.unit() + "."));
        try {
            return new LocalUnit(map, unit, lane, clock, troubles);
        } catch (IllegalArgumentException e) {
            throw new RefusedException("These pins can't be used: " + e.getMessage() + ".", e);
        }
    }

    private static void count(ClimateSensor sensor, Meters meters) {
        for (ClimateOutcome outcome : ClimateOutcome.values()) {
            meters.climate(sensor.unit(), outcome.word(), sensor, each -> each.count(outcome));
        }
    }
}
