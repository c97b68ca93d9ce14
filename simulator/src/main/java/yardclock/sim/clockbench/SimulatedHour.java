package yardclock.sim.clockbench;

import yardclock.app.recorded.Recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * One hour of several units under one weather: what the gateway would have recorded, and the truth
 * of each edge, which only the figures see.
 */
public final class SimulatedHour {
    static final int UNITS = 4;
    static final int SECONDS = 3600;

    private final Random random;
    private final List<Recording.ExchangeRow> exchanges = new ArrayList<>();
    private final List<Recording.EdgeRow> edges = new ArrayList<>();
    private final List<Long> truths = new ArrayList<>();
    private final List<SimulatedUnit> units = new ArrayList<>();

    private SimulatedHour(long seed) {
        random = new Random(seed);
    }

    /**
     * @param slowest smallest rate error of a crystal, parts per million; sign at random
     * @param fastest the largest
     */
    public static Judgeable of(Weather weather, long seed, double slowest, double fastest) {
        return hour(weather, seed, slowest, fastest).judgeable();
    }

    static SimulatedHour hour(Weather weather, long seed, double slowest, double fastest) {
        SimulatedHour hour = new SimulatedHour(seed);
        Crystals crystals = new Crystals(slowest, fastest);
        for (int number = 1; number <= UNITS; number++) {
            SimulatedUnit unit =
                    new SimulatedUnit(hour.random, "S" + number, weather, crystals, SECONDS);
            hour.units.add(unit);
            hour.exchanges.addAll(unit.exchanges());
            unit.edges().forEach(hour::add);
        }
        return hour;
    }

    private void add(SimulatedUnit.TrueEdge edge) {
        edges.add(edge.edge());
        truths.add(edge.truthMicros());
    }

    Judgeable judgeable() {
        return new Judgeable(new Recording(exchanges, edges), truths);
    }

    Random random() {
        return random;
    }

    int edges() {
        return edges.size();
    }

    /** One more edge of a unit, counted from 0, at a true time in seconds. */
    void trip(int unit, double at) {
        add(units.get(unit).edge(at));
    }
}
