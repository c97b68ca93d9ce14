package yardclock.sim.clockbench;

import yardclock.core.time.Stamp;

import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What calibration does to splits between two units: live and final, before and after, with the
 * declared interval's width and how often it held. Pools several hours of one weather.
 */
public final class CalibrationTable {
    private static final List<Method> METHODS = List.of(Method.OURS_LIVE, Method.OURS_FINAL);

    private final String runs;
    private final List<Figures> figures = List.of(new Figures(), new Figures());
    private int sittings;
    private int refused;

    /** One method's figures: before, after, and by the declared interval. */
    public record Figures(SplitFigures plain, SplitFigures corrected, SplitFigures declared) {
        Figures() {
            this(new SplitFigures(), new SplitFigures(), new SplitFigures());
        }
    }

    public CalibrationTable(String runs) {
        this.runs = runs;
    }

    /** Simulates an hour with its sittings and takes the figures of what came after them. */
    public void take(Weather weather, long seed, Crystals crystals) {
        CalibratedHour hour = new CalibratedHour(weather, seed, crystals);
        Judgeable judged = hour.judged();
        for (Method method : METHODS) {
            Figures of = of(method);
            List<Optional<Stamp>> plain = hour.plain(method);
            List<Optional<Stamp>> corrected = hour.corrected(plain);
            of.plain().take(judged, plain, seed);
            of.corrected().take(judged, corrected, seed);
            of.declared().take(judged, hour.declared(corrected), seed);
        }
        sittings += hour.sittings();
        refused += hour.refused();
    }

    public Figures of(Method method) {
        return figures.get(METHODS.indexOf(method));
    }

    public int refused() {
        return refused;
    }

    public static void printHead(PrintWriter to) {
        to.println(
                "| runs | method | splits | p95 ms | p99 ms | max ms | covered % | mean width ms"
                        + " | declared width ms | declared covered % | sittings refused |");
        to.println("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
    }

    public void print(PrintWriter to) {
        for (Method method : METHODS) {
            Figures of = of(method);
            to.println(row(method.words(), of.plain(), "– | –"));
            to.println(
                    row(
                            method.words() + ", calibrated",
                            of.corrected(),
                            millis(of.declared().meanWidthMicros())
                                    + " | "
                                    + coveredPercent(of.declared())));
        }
        to.flush();
    }

    private String row(String words, SplitFigures of, String declared) {
        return String.format(
                Locale.ROOT,
                "| %s | %s | %d | %s | %s | %s | %s | %s | %s | %d of %d |",
                runs,
                words,
                of.splits(),
                millis((double) of.errorMicros(0.95)),
                millis((double) of.errorMicros(0.99)),
                millis((double) of.errorMicros(1)),
                coveredPercent(of),
                millis(of.meanWidthMicros()),
                declared,
                refused,
                sittings);
    }

    private static String coveredPercent(SplitFigures of) {
        double covered = 100.0 * (of.splits() - of.uncovered()) / of.splits();
        return String.format(Locale.ROOT, "%.3f", covered);
    }

    private static String millis(double micros) {
        return String.format(Locale.ROOT, "%.2f", micros / 1_000);
    }
}
