package yardclock.core.course;

import java.util.List;

/** One board in the yard and what is wired to it. */
public record FieldUnit(String id, Text place, List<SensorPlan> sensors) {
    public FieldUnit {
        sensors = List.copyOf(sensors);
    }
}
