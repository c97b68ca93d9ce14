package yardclock.sim.clockbench;

import yardclock.app.recorded.Recording.EdgeRow;
import yardclock.app.recorded.Recording.ExchangeRow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/** One unit's crystal and link, and what the gateway would have recorded of them. */
final class SimulatedUnit {
    private static final double EXCHANGE_SECONDS = 5;
    private static final double EDGE_SECONDS = 20;
    private static final double EDGES_FROM = 120;
    private static final double UNIT_NOISE = 50e-6;
    private static final double GATEWAY_NOISE = 30e-6;

    private final Random random;
    private final String name;
    private final int seconds;
    private final Crystal crystal;
    private final Radio radio;

    /** An edge and when it truly happened, gateway time. */
    record TrueEdge(EdgeRow edge, long truthMicros) {}

    SimulatedUnit(Random random, String name, Weather weather, Crystals crystals, int seconds) {
        this.random = random;
        this.name = name;
        this.seconds = seconds;
        crystal = new Crystal(random, weather, crystals.rate(random), seconds);
        radio = new Radio(random, weather, seconds);
    }

    /** The counter jumps without a reboot. */
    void jump(double atSeconds, double bySeconds) {
        crystal.jump(atSeconds, bySeconds);
    }

    /** In the order the answers came back; what an outage swallowed is not there. */
    List<ExchangeRow> exchanges() {
        List<ExchangeRow> rows = new ArrayList<>();
        double sent = 0;
        while (true) {
            sent += EXCHANGE_SECONDS * Draws.between(random, 0.6, 1.4);
            if (sent >= seconds) {
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
                    new ExchangeRow(
                            name,
                            micros(sent + random.nextGaussian() * GATEWAY_NOISE),
                            tickIn,
                            Math.max(tickIn, tickOut),
                            micros(back + random.nextGaussian() * GATEWAY_NOISE)));
        }
        rows.sort(Comparator.comparingLong(ExchangeRow::gatewayReceivedMicros));
        return rows;
    }

    /** In the order they happened. */
    List<TrueEdge> edges() {
        List<TrueEdge> edges = new ArrayList<>();
        double at = Draws.exponential(random, EDGE_SECONDS);
        while (at < seconds) {
            if (at > EDGES_FROM) {
                edges.add(edge(at));
            }
            at += Draws.exponential(random, EDGE_SECONDS);
        }
        return edges;
    }

    /** An edge at a true time in seconds. */
    TrueEdge edge(double at) {
        double sent = radio.sendTime(at);
        double tick = crystal.at(at) + random.nextGaussian() * UNIT_NOISE;
        return new TrueEdge(
                new EdgeRow(name, micros(tick), micros(sent + radio.up(sent))), micros(at));
    }

    private static long micros(double seconds) {
        return Math.round(seconds * 1e6);
    }
}
