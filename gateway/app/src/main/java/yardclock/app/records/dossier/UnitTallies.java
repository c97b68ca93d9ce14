package yardclock.app.records.dossier;

import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Station;
import yardclock.core.engine.Input;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How the field units were from one number's release until its time or its outcome was known. One
 * thread.
 */
final class UnitTallies {
    private final Map<String, UnitTally> units = new TreeMap<>();
    private boolean isOver;

    void take(Input.Health health, long atMicros) {
        if (!isOver) {
            units.computeIfAbsent(health.unit(), u -> new UnitTally()).take(health, atMicros);
        }
    }

    /** Something concluded of the number itself. */
    void hear(Fact own, long atMicros) {
        if (own.kind() == FactKind.RELEASED) {
            isOver = false;
            units.values().forEach(UnitTally::begin);
        }
        boolean ends = own.kind() == FactKind.OFFICIAL_TIME || own.kind() == FactKind.OUTCOME;
        if (ends && !isOver) {
            isOver = true;
            units.values().forEach(unit -> unit.end(atMicros));
        }
    }

    /** The units that serve stations of the plan, in its order. */
    List<Further.UnitLine> lines(ExamPlan plan) {
        List<Further.UnitLine> lines = new ArrayList<>();
        for (FieldUnit unit : plan.fieldUnits()) {
            List<String> stations =
                    plan.stations().stream()
                            .filter(station -> serves(unit.id(), station))
                            .map(Station::id)
                            .toList();
            if (!stations.isEmpty()) {
                UnitTally tally = units.getOrDefault(unit.id(), new UnitTally());
                lines.add(tally.line(unit, stations));
            }
        }
        return lines;
    }

    private static boolean serves(String unit, Station station) {
        return station.sensors().stream().map(SensorRef::unit).anyMatch(unit::equals);
    }
}
