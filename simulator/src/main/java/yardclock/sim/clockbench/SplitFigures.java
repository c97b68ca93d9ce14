package yardclock.sim.clockbench;

import yardclock.app.recorded.Recording;
import yardclock.core.time.Stamp;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * How wrong splits between two units are: of each edge with a later one of another unit, 20–300 s
 * apart, drawn at random but the same for every method. Pools several runs.
 */
public final class SplitFigures {
    private static final long FROM_MICROS = 20_000_000;
    private static final long TO_MICROS = 300_000_000;
    private static final int PARTNERS = 3;

    private final List<Long> errors = new ArrayList<>();
    private long covered;
    private double widths;
    private long nanos;
    private long estimates;

    /** Judges a method's stamps of one run; pairs are drawn from the seed. */
    public void take(Judgeable run, List<Optional<Stamp>> stamps, long seed) {
        Random random = new Random(seed);
        List<Recording.EdgeRow> edges = run.recording().edges();
        for (int i = 0; i < edges.size(); i++) {
            List<Integer> later = partners(run, i);
            for (int n = 0; n < PARTNERS && !later.isEmpty(); n++) {
                int j = later.get(random.nextInt(later.size()));
                long truth = run.truthMicros().get(j) - run.truthMicros().get(i);
                judge(stamps.get(i).orElseThrow(), stamps.get(j).orElseThrow(), truth);
            }
        }
    }

    private static List<Integer> partners(Judgeable run, int i) {
        List<Integer> partners = new ArrayList<>();
        List<Recording.EdgeRow> edges = run.recording().edges();
        for (int j = 0; j < edges.size(); j++) {
            long apart = run.truthMicros().get(j) - run.truthMicros().get(i);
            boolean other = !edges.get(j).station().equals(edges.get(i).station());
            if (other && apart >= FROM_MICROS && apart <= TO_MICROS) {
                partners.add(j);
            }
        }
        return partners;
    }

    private void judge(Stamp start, Stamp finish, long truth) {
        long lower = finish.lowerMicros() - start.upperMicros();
        long upper = finish.upperMicros() - start.lowerMicros();
        errors.add(Math.abs(finish.micros() - start.micros() - truth));
        covered += truth >= lower && truth <= upper ? 1 : 0;
        widths += upper - lower;
    }

    /** How long a method took for so many estimates. */
    public void took(long runNanos, int runEstimates) {
        nanos += runNanos;
        estimates += runEstimates;
    }

    public int splits() {
        return errors.size();
    }

    /** The error that this part of the splits does not exceed, in microseconds. */
    public long errorMicros(double part) {
        List<Long> sorted = errors.stream().sorted().toList();
        return sorted.get((int) Math.min(sorted.size() - 1, Math.floor(sorted.size() * part)));
    }

    public long uncovered() {
        return errors.size() - covered;
    }

    public double meanWidthMicros() {
        return widths / errors.size();
    }

    public double nanosPerEstimate() {
        return estimates == 0 ? 0 : (double) nanos / estimates;
    }
}
