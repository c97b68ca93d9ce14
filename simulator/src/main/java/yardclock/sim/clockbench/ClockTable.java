package yardclock.sim.clockbench;

import yardclock.core.time.Stamp;

import java.io.PrintWriter;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The bench's table: one row a method, for runs of one kind pooled. Times in milliseconds. */
public final class ClockTable {
    private final String runs;
    private final Map<Method, SplitFigures> figures = new EnumMap<>(Method.class);

    public ClockTable(String runs) {
        this.runs = runs;
        for (Method method : Method.values()) {
            figures.put(method, new SplitFigures());
        }
    }

    /** Dates a run by every method and takes the figures. */
    public void take(Judgeable run, long seed) {
        figures.forEach(
                (method, of) -> {
                    long begun = System.nanoTime();
                    List<Optional<Stamp>> stamps = method.stamps(run.recording());
                    of.took(System.nanoTime() - begun, stamps.size());
                    of.take(run, stamps, seed);
                });
    }

    public SplitFigures of(Method method) {
        return figures.get(method);
    }

    public static void printHead(PrintWriter to) {
        to.println(
                "| runs | method | splits | median ms | p95 ms | p99 ms | max ms | covered %"
                        + " | mean width ms | µs an estimate | p99 ÷ ours |");
        to.println("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    }

    public void print(PrintWriter to) {
        double ours = figures.get(Method.OURS_LIVE).errorMicros(0.99);
        figures.forEach(
                (method, of) ->
                        to.println(
                                String.format(
                                        Locale.ROOT,
                                        "| %s | %s | %d | %s | %s | %s | %s | %s | %s | %.1f | %.1f"
                                                + " |",
                                        runs,
                                        method.words(),
                                        of.splits(),
                                        millis((double) of.errorMicros(0.5)),
                                        millis((double) of.errorMicros(0.95)),
                                        millis((double) of.errorMicros(0.99)),
                                        millis((double) of.errorMicros(1)),
                                        limits(method, coveredPercent(of)),
                                        limits(method, millis(of.meanWidthMicros())),
                                        of.nanosPerEstimate() / 1_000,
                                        of.errorMicros(0.99) / ours)));
        to.flush();
    }

    private static String limits(Method method, String figure) {
        return method.hasLimits() ? figure : "–";
    }

    private static String coveredPercent(SplitFigures of) {
        return String.format(
                Locale.ROOT, "%.2f", 100.0 * (of.splits() - of.uncovered()) / of.splits());
    }

    private static String millis(double micros) {
        return String.format(Locale.ROOT, "%.2f", micros / 1_000);
    }
}
