package yardclock.app.boot;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.Inbox;
import yardclock.app.lane.Troubles;
import yardclock.app.metrics.Meters;
import yardclock.app.pins.BoardWiring;
import yardclock.app.pins.ClimateOutcome;
import yardclock.app.pins.ClimateSensor;
import yardclock.app.pins.ClimateWiring;
import yardclock.app.pins.LocalUnit;
import yardclock.app.pins.PinMap;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;

import java.util.Map;
import java.util.TreeMap;

/**
 * What is wired to the gateway's own board, put together: one field unit for each id that is named,
 * and the climate sensors that speak as them.
 */
record Board(
        BoardWiring wiring, ExamPlan plan, Inbox inbox, GatewayClock clock, Troubles troubles) {

    /** Starts it all; what the board lacks is said and does not keep the gateway from running. */
    void start(StopOrder parts, Meters meters) throws RefusedException {
        Map<String, LocalUnit> units = new TreeMap<>();
        if (wiring.pins() != null) {
            units.put(wiring.pins().unit(), unit(wiring.pins()));
        }
        for (ClimateWiring climate : wiring.climates()) {
            if (!units.containsKey(climate.unit())) {
                units.put(climate.unit(), unit(PinMap.none(climate.unit())));
            }
        }
        units.forEach((id, unit) -> parts.add("board as " + id, unit).start());
        for (ClimateWiring climate : wiring.climates()) {
            LocalUnit unit = units.get(climate.unit());
            ClimateSensor sensor = new ClimateSensor(climate, unit, inbox, clock, troubles);
            count(sensor, meters);
            parts.add("climate sensor of " + climate.unit(), sensor).start();
        }
    }

    private LocalUnit unit(PinMap map) throws RefusedException {
        FieldUnit unit =
                plan.fieldUnit(map.unit())
                        .orElseThrow(
                                () ->
                                        new RefusedException(
                                                "The plan has no field unit " + map.unit() + "."));
        try {
            return new LocalUnit(map, unit, inbox, clock, troubles);
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
