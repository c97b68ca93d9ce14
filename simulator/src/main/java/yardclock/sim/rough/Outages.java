package yardclock.sim.rough;

import yardclock.core.course.ExamPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Station;
import yardclock.sim.stage.Stage;
import yardclock.sim.yard.Yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.ObjLongConsumer;

/**
 * Boards out of reach for minutes: some at any moment, some while a candidate is at their station.
 * What they stamp meanwhile they deliver afterwards.
 */
public final class Outages {
    private final Stage stage;
    private final SplittableRandom random;
    private final List<String> units;
    private final ObjLongConsumer<String> lose;
    private final Map<String, Integer> uses = new TreeMap<>();
    private final List<Planned> inUse = new ArrayList<>();
    private int outages;

    private record Planned(String station, int use, String unit, long afterMicros) {}

    /**
     * @param lose takes a unit out of reach for so many microseconds
     */
    public Outages(
            Stage stage, ExamPlan plan, int candidates, long seed, ObjLongConsumer<String> lose) {
        this.stage = stage;
        this.random = new SplittableRandom(seed ^ 0x4F55_5453L);
        this.units = plan.fieldUnits().stream().map(unit -> unit.id()).toList();
        this.lose = lose;
        List<Station> sensed =
                plan.stations().stream().filter(station -> !station.sensors().isEmpty()).toList();
        for (int i = 0; i < Rates.OUTAGES_IN_USE; i++) {
            Station at = sensed.get(random.nextInt(sensed.size()));
            List<SensorRef> sensors = at.sensors();
            String unit = sensors.get(random.nextInt(sensors.size())).unit();
            int use = random.nextInt(1, candidates + 1);
            inUse.add(new Planned(at.id(), use, unit, random.nextLong(1_000_000, 20_000_000)));
        }
    }

    public void begin(Yard yard) {
        yard.onOccupied(this::used);
        next();
    }

    private void next() {
        long next = Math.round(-Rates.OUTAGE_EVERY * StrictMath.log(1 - random.nextDouble()));
        String unit = units.get(random.nextInt(units.size()));
        long lasts = lasts();
        stage.afterMicros(
                next,
                () -> {
                    lose(unit, lasts);
                    next();
                });
    }

    private void used(String station) {
        int use = uses.merge(station, 1, Integer::sum);
        for (Planned planned : inUse) {
            if (planned.station().equals(station) && planned.use() == use) {
                long lasts = Rates.OUTAGE_SHORTEST * (2 + use % 4);
                stage.afterMicros(planned.afterMicros(), () -> lose(planned.unit(), lasts));
            }
        }
    }

    private long lasts() {
        return random.nextLong(Rates.OUTAGE_SHORTEST, Rates.OUTAGE_LONGEST);
    }

    private void lose(String unit, long micros) {
        outages++;
        lose.accept(unit, micros);
    }

    public int outages() {
        return outages;
    }
}
