package yardclock.sim.units;

import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorPlan;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * How one virtual unit is made.
 *
 * @param restStates the states of sensors 1–8 at power-on, −1 where none is wired
 * @param ratePartsPerBillion how fast its crystal runs
 * @param drift how its rate changes with the temperature
 * @param seed for battery, signal strength and the messages it sends twice
 */
public record UnitSettings(
        String id, List<Integer> restStates, long ratePartsPerBillion, long seed, Drift drift) {
    private static final int SENSORS = 8;
    private static final long SLOWEST_PARTS_PER_BILLION = 10_000;
    private static final long FASTEST_PARTS_PER_BILLION = 40_000;

    public UnitSettings {
        restStates = List.copyOf(restStates);
    }

    /** With a crystal whose rate never changes. */
    public UnitSettings(String id, List<Integer> restStates, long ratePartsPerBillion, long seed) {
        this(id, restStates, ratePartsPerBillion, seed, Drift.NONE);
    }

    /** The same unit in sun and shade. */
    public UnitSettings drifting() {
        Drift drawn = Drift.draw(new SplittableRandom(seed));
        return new UnitSettings(id, restStates, ratePartsPerBillion, seed, drawn);
    }

    /** One of a plan's units, wired as the plan says; its crystal is drawn. */
    public static UnitSettings of(FieldUnit planned, long seed) {
        SplittableRandom random = new SplittableRandom(seed + planned.id().hashCode());
        long rate =
                random.nextLong(SLOWEST_PARTS_PER_BILLION, FASTEST_PARTS_PER_BILLION)
                        * (random.nextBoolean() ? 1 : -1);
        return new UnitSettings(planned.id(), atRest(planned), rate, random.nextLong());
    }

    private static List<Integer> atRest(FieldUnit planned) {
        List<Integer> states = new ArrayList<>();
        for (int number = 1; number <= SENSORS; number++) {
            int sensor = number;
            states.add(
                    planned.sensors().stream()
                            .filter(wired -> wired.number() == sensor)
                            .mapToInt(SensorPlan::restState)
                            .findFirst()
                            .orElse(-1));
        }
        return states;
    }
}
