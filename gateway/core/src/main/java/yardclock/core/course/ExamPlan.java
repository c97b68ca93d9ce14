package yardclock.core.course;

import java.util.List;
import java.util.Optional;

/**
 * The frozen description of stations, triggers, criteria, rules and limits.
 *
 * <p>Immutable, and journalled whole, so that a journal explains itself years later. Its hash is
 * taken over the bytes it was read from and travels with it in the journal.
 *
 * @param startOfDay what must be signed before the first release; empty where nothing must
 * @param surfaces what a noted condition of the ground or the weather does
 */
public record ExamPlan(
        PlanName name,
        TimingRules timing,
        DayRules day,
        List<Station> stations,
        List<FieldUnit> fieldUnits,
        HeatRules heat,
        List<CheckItem> startOfDay,
        SurfaceRules surfaces) {
    public ExamPlan {
        heat = heat == null ? HeatRules.DEFAULTS : heat;
        stations = List.copyOf(stations);
        fieldUnits = List.copyOf(fieldUnits);
        surfaces = surfaces == null ? SurfaceRules.ADVISORY : surfaces;
        startOfDay = startOfDay == null ? List.of() : List.copyOf(startOfDay);
    }

    /** A plan that says nothing of heat and has no checklist, as the first plans had none. */
    public ExamPlan(
            PlanName name,
            TimingRules timing,
            DayRules day,
            List<Station> stations,
            List<FieldUnit> fieldUnits) {
        this(name, timing, day, stations, fieldUnits, null, null, null);
    }

    /** The same plan with another start-of-day checklist. */
    public ExamPlan startingWith(List<CheckItem> items) {
        return new ExamPlan(name, timing, day, stations, fieldUnits, heat, items, surfaces);
    }

    /** The same plan with other rules for the day. */
    public ExamPlan ruledBy(DayRules rules) {
        return new ExamPlan(name, timing, rules, stations, fieldUnits, heat, startOfDay, surfaces);
    }

    /** The same plan with other field units. */
    public ExamPlan wiredWith(List<FieldUnit> units) {
        return new ExamPlan(name, timing, day, stations, units, heat, startOfDay, surfaces);
    }

    /** The same plan with other rules for noted conditions. */
    public ExamPlan holdingBy(SurfaceRules rules) {
        return new ExamPlan(name, timing, day, stations, fieldUnits, heat, startOfDay, rules);
    }

    public Optional<Station> station(String id) {
        return stations.stream().filter(s -> s.id().equals(id)).findFirst();
    }

    public Optional<FieldUnit> fieldUnit(String id) {
        return fieldUnits.stream().filter(u -> u.id().equals(id)).findFirst();
    }

    /** The station's place in the course from 0, or −1. */
    public int indexOf(String stationId) {
        for (int i = 0; i < stations.size(); i++) {
            if (stations.get(i).id().equals(stationId)) {
                return i;
            }
        }
        return -1;
    }

    public Optional<SensorPlan> sensor(SensorRef ref) {
        return fieldUnit(ref.unit())
                .flatMap(
                        u ->
                                u.sensors().stream()
                                        .filter(s -> s.number() == ref.sensor())
                                        .findFirst());
    }

    /** What else may trip a trigger's sensors: as the plan says, or as their kinds suggest. */
    public List<Tripper> alsoTripping(Trigger trigger) {
        if (!trigger.site().alsoTrippedBy().isEmpty()) {
            return trigger.site().alsoTrippedBy();
        }
        return trigger.contacts().stream()
                .flatMap(contact -> sensor(contact.sensor()).stream())
                .flatMap(sensor -> Tripper.of(sensor.kind()).stream())
                .filter(tripper -> tripper != Tripper.NONE)
                .distinct()
                .sorted()
                .toList();
    }

    public Station last() {
        return stations.get(stations.size() - 1);
    }
}
