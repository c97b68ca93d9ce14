package yardclock.core.board;

import yardclock.core.course.Contact;
import yardclock.core.course.GuardLimit;
import yardclock.core.course.GuardTimes;
import yardclock.core.course.RuleVersion;
import yardclock.core.course.Station;
import yardclock.core.course.Text;
import yardclock.core.course.Trigger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One trigger with the guards that are in force.
 *
 * @param point {@code start}, {@code finish} or a checkpoint's id
 * @param sensors those that make its edges, as {@code fu-02/1}
 * @param version the plan's version and how often it was adjusted, as {@code 1+2}
 * @param adjustment how often its guards were adjusted on the bench
 * @param taken whether somebody's turn there, or their way to it, keeps it from being adjusted now
 * @param guards those that can be adjusted, with their limits; empty where none can
 */
public record TriggerView(
        String station,
        Text stationName,
        String point,
        Text words,
        List<String> sensors,
        String version,
        int adjustment,
        boolean taken,
        List<GuardView> guards) {

    /**
     * One guard that is a length of time.
     *
     * @param guard as the plan has it, {@code staysFor}
     * @param micros what is in force; 0 for not used
     */
    public record GuardView(String guard, long micros, long leastMicros, long mostMicros) {}

    /** Those of one station, but for what a person sees. */
    static List<TriggerView> of(Station station, int planVersion, boolean isTaken) {
        List<TriggerView> all = new ArrayList<>();
        for (String point : station.points()) {
            Trigger trigger = station.trigger(point).orElseThrow();
            if (!trigger.contacts().isEmpty()) {
                all.add(of(station, point, planVersion, isTaken));
            }
        }
        return all;
    }

    private static TriggerView of(Station station, String point, int plan, boolean isTaken) {
        Trigger trigger = station.trigger(point).orElseThrow();
        return new TriggerView(
                station.id(),
                station.name(),
                point,
                trigger.words(),
                trigger.contacts().stream()
                        .map(Contact::sensor)
                        .distinct()
                        .map(Object::toString)
                        .toList(),
                new RuleVersion(plan, trigger.adjustment()).toString(),
                trigger.adjustment(),
                isTaken,
                guards(trigger));
    }

    private static List<GuardView> guards(Trigger trigger) {
        GuardTimes times = trigger.guards().times();
        return Arrays.stream(GuardLimit.values())
                .filter(limit -> limit.isAdjustable(trigger))
                .map(l -> new GuardView(l.word(), l.of(times), l.leastAdjusted(), l.max()))
                .toList();
    }
}
