package yardclock.sim.clockbench;

import yardclock.app.recorded.Recording;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/**
 * One hour of several units under one weather: what the gateway would have recorded, and the truth
 * of each edge, which only the figures see.
 */
public final class SimulatedHour {
    static final int UNITS = 4;
    private static final int SECONDS = 3600;
    private static final double EXCHANGE_SECONDS = 5;
    private static final double EDGE_SECONDS = 20;
    private static final double EDGES_FROM = 120;
    private static final double UNIT_NOISE = 50e-6;
    private static final double GATEWAY_NOISE = 30e-6;

    private final Random random;
    private final List<Recording.ExchangeRow> exchanges = new ArrayList<>();
    private final List<Recording.EdgeRow> edges = new ArrayList<>();
    private final List<Long> truths = new ArrayList<>();
    private final List<Crystal> crystals = new ArrayList<>();
    private final List<Radio> radios = new ArrayList<>();

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
        for (int unit = 1; unit <= UNITS; unit++) {
            double rate = Draws.between(hour.random, slowest, fastest) * 1e-6;
            double signed = hour.random.nextBoolean() ? rate : -rate;
            Crystal crystal = new Crystal(hour.random, weather, signed, SECONDS);
            Radio radio = new Radio(hour.random, weather, SECONDS);
            hour.exchange("S" + unit, crystal, radio);
            hour.happen("S" + unit, crystal, radio);
            hour.crystals.add(crystal);
            hour.radios.add(radio);
        }
        return hour;
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
        Radio radio = radios.get(unit);
        double sent = radio.sendTime(at);
        double tick = crystals.get(unit).at(at) + random.nextGaussian() * UNIT_NOISE;
        String station = "S" + (unit + 1);
        edges.add(new Recording.EdgeRow(station, micros(tick), micros(sent + radio.up(sent))));
        truths.add(micros(at));
    }

    private void exchange(String unit, Crystal crystal, Radio radio) {
        List<Recording.ExchangeRow> rows = new ArrayList<>();
        double sent = 0;
        while (true) {
            sent += EXCHANGE_SECONDS * Draws.between(random, 0.6, 1.4);
            if (sent >= SECONDS) {
                break;
            }
            double received = sent + radio.down(sent);
            double answered = received + Draws.between(random, 0.1e-3, 1e-3);
            double back = answered + radio.up(answered);
            if (radio.isOut(sent) || radio.isOut(received) || radio.isOut(back)) {
                continue;
            }
            long tickIn = micros(crystal.at(received) + random.nextGaussian() * UNIT_NOISE);
            long tickOut = micros(crystal.at(answered) + random.nextGaussian() * UNIT_NOISE);
            rows.add(
                    new Recording.ExchangeRow(
                            unit,
                            micros(sent + random.nextGaussian() * GATEWAY_NOISE),
                            tickIn,
                            Math.max(tickIn, tickOut),
                            micros(back + random.nextGaussian() * GATEWAY_NOISE)));
        }
        rows.sort(Comparator.comparingLong(Recording.ExchangeRow::gatewayReceivedMicros));
        exchanges.addAll(rows);
    }

    private void happen(String unit, Crystal crystal, Radio radio) {
        double at = Draws.exponential(random, EDGE_SECONDS);
        while (at < SECONDS) {
            if (at > EDGES_FROM) {
                double sent = radio.sendTime(at);
                double tick = crystal.at(at) + random.nextGaussian() * UNIT_NOISE;
                edges.add(new Recording.EdgeRow(unit, micros(tick), micros(sent + radio.up(sent))));
                truths.add(micros(at));
            }
            at += Draws.exponential(random, EDGE_SECONDS);
        }
    }

    private static long micros(double seconds) {
        return Math.round(seconds * 1e6);
    }
}
