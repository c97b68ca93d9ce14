package yardclock.sim.clockbench;

import yardclock.app.recorded.Dating;
import yardclock.app.recorded.Recording;
import yardclock.app.recorded.Recording.ExchangeRow;
import yardclock.core.time.Exchange;
import yardclock.core.time.ExchangeClock;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.Stamp;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

/**
 * How soon a unit's counter that jumped without a reboot is found out, over many hours with one
 * jump each, forwards or backwards; and whether the limits of all that hour's edges hold.
 */
public final class JumpFigures {
    private static final double JUMP_FROM = 300;
    private static final double JUMP_TO = SimulatedHour.SECONDS - 600;
    private static final double MICROS = 1e6;

    private final Weather weather;
    private final double jumpSeconds;
    private final List<Integer> exchanges = new ArrayList<>();
    private final List<Double> seconds = new ArrayList<>();
    private int unseen;
    private int mistaken;
    private int liveUncovered;
    private int finalUncovered;
    private int edges;

    public JumpFigures(Weather weather, double jumpSeconds) {
        this.weather = weather;
        this.jumpSeconds = jumpSeconds;
    }

    /** Lives through one hour with a jump. */
    public void take(long seed) {
        Random random = new Random(seed);
        SimulatedUnit unit =
                new SimulatedUnit(random, "S1", weather, Crystals.USUAL, SimulatedHour.SECONDS);
        double at = Draws.between(random, JUMP_FROM, JUMP_TO);
        unit.jump(at, random.nextBoolean() ? jumpSeconds : -jumpSeconds);
        List<ExchangeRow> rows = unit.exchanges();
        watch(rows, at);
        List<SimulatedUnit.TrueEdge> happened = unit.edges();
        Recording recording =
                new Recording(rows, happened.stream().map(SimulatedUnit.TrueEdge::edge).toList());
        edges += happened.size();
        liveUncovered += uncovered(new Dating(recording, Dating.Mode.LIVE).stamps(), happened);
        finalUncovered += uncovered(new Dating(recording, Dating.Mode.FINAL).stamps(), happened);
    }

    private void watch(List<ExchangeRow> rows, double jumpAt) {
        ExchangeClock clock = new ExchangeClock();
        int answered = 0;
        boolean seen = false;
        for (ExchangeRow row : rows) {
            long before = faults(clock);
            clock.accept(
                    new Exchange(
                            row.gatewaySentMicros(),
                            row.stationReceivedMicros(),
                            row.stationSentMicros(),
                            row.gatewayReceivedMicros()));
            double waited = row.gatewayReceivedMicros() / MICROS - jumpAt;
            answered += waited > 0 ? 1 : 0;
            if (faults(clock) > before && waited > 0 && !seen) {
                seen = true;
                exchanges.add(answered);
                seconds.add(waited);
            } else if (faults(clock) > before) {
                mistaken++;
            }
        }
        unseen += seen ? 0 : 1;
    }

    private static int uncovered(
            List<Optional<Stamp>> stamps, List<SimulatedUnit.TrueEdge> happened) {
        int uncovered = 0;
        for (int i = 0; i < happened.size(); i++) {
            long truth = happened.get(i).truthMicros();
            boolean holds =
                    stamps.get(i)
                            .filter(s -> s.lowerMicros() <= truth && truth <= s.upperMicros())
                            .isPresent();
            uncovered += holds ? 0 : 1;
        }
        return uncovered;
    }

    private static long faults(ExchangeClock clock) {
        return clock.status(new GatewayTime(0)).faults();
    }

    /** How many jumps were found by so many answered exchanges after them. */
    public long foundWithin(int answered) {
        return exchanges.stream().filter(n -> n <= answered).count();
    }

    public double medianSeconds() {
        return seconds.stream().sorted().skip(seconds.size() / 2).findFirst().orElseThrow();
    }

    /** How many of the jumps were never found. */
    public int unseen() {
        return unseen;
    }

    /** How many faults were told that were none. */
    public int mistaken() {
        return mistaken;
    }

    /** How many edges had limits that did not hold when their stamp was final. */
    public int finalUncovered() {
        return finalUncovered;
    }

    public static void printHead(PrintWriter to) {
        to.println(
                "| runs | jump ms | jumps | found by 1st exchange | by 6th | latest | median s"
                        + " | max s | never | told without cause | live stamps false"
                        + " | final stamps false | edges |");
        to.println(
                "| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    }

    public void print(PrintWriter to) {
        to.println(
                String.format(
                        Locale.ROOT,
                        "| %s | %.0f | %d | %d | %d | %d | %.1f | %.1f | %d | %d | %d | %d | %d |",
                        weather.name(),
                        jumpSeconds * 1e3,
                        exchanges.size() + unseen,
                        foundWithin(1),
                        foundWithin(6),
                        exchanges.stream().mapToInt(n -> n).max().orElse(0),
                        medianSeconds(),
                        seconds.stream().mapToDouble(s -> s).max().orElse(0),
                        unseen,
                        mistaken,
                        liveUncovered,
                        finalUncovered,
                        edges));
        to.flush();
    }
}
