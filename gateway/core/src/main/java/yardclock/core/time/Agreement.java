package yardclock.core.time;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToLongFunction;

/**
 * What repeated occurrences say of the difference between two clocks: its median, how far single
 * ones scatter, which are rejected, and what speaks against believing it.
 *
 * <p>Scatter is the median absolute deviation scaled to a standard deviation (× 1.4826, exact for
 * normal errors). A pair is an outlier when its modified z-score, 0.6745 · |d − median| / MAD,
 * exceeds 3.5: B. Iglewicz and D. C. Hoaglin, How to Detect and Handle Outliers, 1993 (from
 * memory). Median and scatter are then taken anew from the pairs that are kept. Pure; whole
 * microseconds.
 *
 * @param pairs all of them, judged, in the order they came
 * @param medianMicros the other clock's median lead; 0 while no pair is kept
 * @param spreadMicros the scaled deviation of one pair
 * @param uncertaintyMicros the standard error of the median of so many: 1.2533 · spread / √n
 */
public record Agreement(
        List<Judged> pairs, long medianMicros, long spreadMicros, long uncertaintyMicros) {
    /** So many occurrences the design asks for. */
    public static final int PAIRS_LEAST = 20;

    /** A median less sure than this removes less than it may add. */
    public static final long UNCERTAINTY_MOST_MICROS = 250;

    /**
     * Between the median by stamps as made and by better ones. In simulated hours one sitting in a
     * hundred exceeds it, and all whose median was over a millisecond wrong did.
     */
    static final long MEDIANS_APART_MOST_MICROS = 600;

    /** Two counters' own reading noise: a scatter below it says nothing of outliers. */
    static final long SCATTER_LEAST_MICROS = 70;

    private static final long OUTLIER_TENTHS = 35;
    private static final long TEN_THOUSANDTHS_OF_SIGMA = 6_745;

    public Agreement {
        pairs = List.copyOf(pairs);
    }

    /** How a pair stands. */
    public enum Standing {
        KEPT,
        /** Too far from the median of all. */
        OUTLIER,
        /** The two intervals exclude each other: these were two occurrences. */
        IMPOSSIBLE
    }

    /** One pair and how it stands. */
    public record Judged(Coincidence pair, Standing standing) {
        boolean isKept() {
            return standing == Standing.KEPT;
        }
    }

    /** What speaks against a calibration, the weightiest first. */
    public enum Objection {
        TOO_FEW,
        TOO_SCATTERED,
        /** The stamps made at arrival tell another median: one of the fits is on a wrong line. */
        UNSETTLED,
        CONTRADICTED
    }

    /**
     * @param lateMicros how late either sensor may answer, which none of the stamps allows for
     */
    public static Agreement of(List<Coincidence> pairs, long lateMicros) {
        List<Coincidence> possible =
                pairs.stream().filter(pair -> pair.isPossible(lateMicros)).toList();
        long median = median(possible, Coincidence::differenceMicros);
        long scatter = Math.max(SCATTER_LEAST_MICROS, scatter(possible, median));
        List<Judged> judged = new ArrayList<>();
        for (Coincidence pair : pairs) {
            boolean isPossible = pair.isPossible(lateMicros);
            judged.add(
                    new Judged(
                            pair,
                            isPossible ? standing(pair, median, scatter) : Standing.IMPOSSIBLE));
        }
        return ofKept(judged);
    }

    private static Standing standing(Coincidence pair, long median, long scatter) {
        long far = Math.abs(pair.differenceMicros() - median);
        boolean isOutlier =
                Math.multiplyExact(TEN_THOUSANDTHS_OF_SIGMA, far)
                        > OUTLIER_TENTHS * 1_000 * scatter;
        return isOutlier ? Standing.OUTLIER : Standing.KEPT;
    }

    private static Agreement ofKept(List<Judged> judged) {
        List<Coincidence> kept = judged.stream().filter(Judged::isKept).map(Judged::pair).toList();
        if (kept.isEmpty()) {
            return new Agreement(judged, 0, 0, 0);
        }
        long median = median(kept, Coincidence::differenceMicros);
        double spread = 1.4826 * Math.max(SCATTER_LEAST_MICROS, scatter(kept, median));
        double error = 1.2533 * spread / Math.sqrt(kept.size());
        return new Agreement(judged, median, Math.round(spread), Math.round(error));
    }

    /** The median absolute deviation. */
    private static long scatter(List<Coincidence> pairs, long median) {
        return median(pairs, pair -> Math.abs(pair.differenceMicros() - median));
    }

    private static long median(List<Coincidence> pairs, ToLongFunction<Coincidence> of) {
        long[] sorted = pairs.stream().mapToLong(of).sorted().toArray();
        if (sorted.length == 0) {
            return 0;
        }
        long low = sorted[(sorted.length - 1) / 2];
        return low + (sorted[sorted.length / 2] - low) / 2;
    }

    public int kept() {
        return (int) pairs.stream().filter(Judged::isKept).count();
    }

    /**
     * What speaks against correcting the other clock by this; empty when nothing does.
     *
     * @param stamped what the same occurrences say by the stamps that were made at their arrival
     */
    public Optional<Objection> objection(Agreement stamped) {
        if (kept() < PAIRS_LEAST) {
            return Optional.of(Objection.TOO_FEW);
        }
        if (uncertaintyMicros > UNCERTAINTY_MOST_MICROS || 4 * kept() < 3 * pairs.size()) {
            return Optional.of(Objection.TOO_SCATTERED);
        }
        if (Math.abs(medianMicros - stamped.medianMicros()) > MEDIANS_APART_MOST_MICROS) {
            return Optional.of(Objection.UNSETTLED);
        }
        return hasRoom() ? Optional.empty() : Optional.of(Objection.CONTRADICTED);
    }

    /**
     * Whether the other clock's guaranteed intervals, as they usually are, allow the correction.
     */
    private boolean hasRoom() {
        List<Coincidence> kept = pairs.stream().filter(Judged::isKept).map(Judged::pair).toList();
        long below = median(kept, p -> p.other().micros() - p.other().lowerMicros());
        long above = median(kept, p -> p.other().upperMicros() - p.other().micros());
        return medianMicros <= below && -medianMicros <= above;
    }
}
