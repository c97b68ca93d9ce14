package yardclock.core.course;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One task of the course.
 *
 * @param homeContacts contacts that must be in their state before the station can be called ready
 */
public record Station(
        String id,
        Text name,
        Text task,
        StationTiming timing,
        Trigger start,
        List<Checkpoint> checkpoints,
        Trigger finish,
        List<Criterion> criteria,
        List<Contact> homeContacts) {
    public Station {
        checkpoints = List.copyOf(checkpoints);
        criteria = List.copyOf(criteria);
        homeContacts = List.copyOf(homeContacts);
    }

    /** Every trigger in order: start, checkpoints, finish. */
    public List<Trigger> triggers() {
        List<Trigger> triggers = new ArrayList<>();
        triggers.add(start);
        checkpoints.forEach(checkpoint -> triggers.add(checkpoint.trigger()));
        triggers.add(finish);
        return triggers;
    }

    /** Start, checkpoints and finish by name, in order. */
    public List<String> points() {
        List<String> points = new ArrayList<>(List.of("start"));
        checkpoints.forEach(checkpoint -> points.add(checkpoint.id()));
        points.add("finish");
        return points;
    }

    /** The trigger of start, finish or a checkpoint's id; empty where there is no such point. */
    public Optional<Trigger> trigger(String point) {
        if ("start".equals(point)) {
            return Optional.of(start);
        }
        return "finish".equals(point)
                ? Optional.of(finish)
                : checkpoint(point).map(Checkpoint::trigger);
    }

    /** The same station with another trigger at a point it has. */
    public Station with(String point, Trigger trigger) {
        List<Checkpoint> others =
                checkpoints.stream()
                        .map(c -> c.id().equals(point) ? c.seenBy(trigger) : c)
                        .toList();
        return new Station(
                id,
                name,
                task,
                timing,
                "start".equals(point) ? trigger : start,
                others,
                "finish".equals(point) ? trigger : finish,
                criteria,
                homeContacts);
    }

    /** Every sensor its triggers use, buttons that stand in included, once each, in order. */
    public List<SensorRef> sensors() {
        Set<SensorRef> sensors = new LinkedHashSet<>();
        for (Trigger trigger : triggers()) {
            trigger.contacts().forEach(contact -> sensors.add(contact.sensor()));
        }
        for (Trigger trigger : triggers()) {
            if (trigger.site().fallback() != null) {
                sensors.add(trigger.site().fallback());
            }
        }
        return List.copyOf(sensors);
    }

    public Optional<Checkpoint> checkpoint(String checkpointId) {
        return checkpoints.stream().filter(c -> c.id().equals(checkpointId)).findFirst();
    }

    /** Whether a mark can be made here: start, finish or a checkpoint's id. */
    public boolean hasPoint(String point) {
        return "start".equals(point) || "finish".equals(point) || checkpoint(point).isPresent();
    }

    /** The points whose triggers use a sensor: start, finish, checkpoints' ids. */
    public List<String> pointsOf(SensorRef sensor) {
        List<String> points = new ArrayList<>();
        if (start.uses(sensor)) {
            points.add("start");
        }
        for (Checkpoint checkpoint : checkpoints) {
            if (checkpoint.trigger().uses(sensor)) {
                points.add(checkpoint.id());
            }
        }
        if (finish.uses(sensor)) {
            points.add("finish");
        }
        return points;
    }

    /** A sensor's state when nothing happens: 0, unless it is a home contact. */
    public int restState(SensorRef sensor) {
        return homeContacts.stream()
                .filter(contact -> contact.sensor().equals(sensor))
                .mapToInt(Contact::state)
                .findFirst()
                .orElse(0);
    }

    public Optional<Criterion> criterion(String criterionId) {
        return criteria.stream().filter(c -> c.id().equals(criterionId)).findFirst();
    }
}
