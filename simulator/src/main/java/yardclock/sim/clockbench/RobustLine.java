package yardclock.sim.clockbench;

import yardclock.app.recorded.Recording;

import java.util.Arrays;
import java.util.List;

/**
 * A weighted straight line through the offsets of the last 300 s, each exchange weighted by how far
 * its round trip lies over the window's shortest, with four Huber steps against outliers.
 */
final class RobustLine {
    private static final long WINDOW_MICROS = 300_000_000;
    private static final double CLEAN_MICROS = 120;
    private static final int STEPS = 4;
    private static final double HUBER = 1.5;
    private static final double MEDIAN_TO_SIGMA = 1.4826;

    private final double[] at;
    private final double[] offset;
    private final double[] base;
    private double[] weight;
    private double value;
    private double slope;

    private RobustLine(long tick, List<Recording.ExchangeRow> window) {
        int n = window.size();
        at = new double[n];
        offset = new double[n];
        base = new double[n];
        double floor = window.stream().mapToLong(Method::roundTrip).min().orElseThrow();
        for (int i = 0; i < n; i++) {
            Recording.ExchangeRow row = window.get(i);
            at[i] = (row.stationReceivedMicros() + row.stationSentMicros()) / 2.0 - tick;
            offset[i] = Method.offset(row);
            double over = CLEAN_MICROS + (Method.roundTrip(row) - floor) / 2;
            base[i] = 1 / (over * over);
        }
        weight = base.clone();
    }

    /** The line's offset at the edge's tick. */
    static double at(Recording.EdgeRow edge, List<Recording.ExchangeRow> back) {
        Recording.ExchangeRow last = back.get(back.size() - 1);
        long from = Math.min(edge.stationMicros(), last.stationSentMicros()) - WINDOW_MICROS;
        List<Recording.ExchangeRow> window =
                back.stream().filter(row -> row.stationReceivedMicros() >= from).toList();
        RobustLine line = new RobustLine(edge.stationMicros(), window.isEmpty() ? back : window);
        for (int step = 0; step < STEPS; step++) {
            line.fit();
            line.reweigh();
        }
        return line.value;
    }

    private void fit() {
        double total = Arrays.stream(weight).sum();
        double meanAt = 0;
        double meanOffset = 0;
        for (int i = 0; i < at.length; i++) {
            meanAt += weight[i] * at[i] / total;
            meanOffset += weight[i] * offset[i] / total;
        }
        double spread = 0;
        double product = 0;
        for (int i = 0; i < at.length; i++) {
            spread += weight[i] * (at[i] - meanAt) * (at[i] - meanAt);
            product += weight[i] * (at[i] - meanAt) * (offset[i] - meanOffset);
        }
        slope = spread > 0 ? product / spread : 0;
        value = meanOffset - slope * meanAt;
    }

    private void reweigh() {
        double[] standard = new double[at.length];
        for (int i = 0; i < at.length; i++) {
            standard[i] = Math.abs(offset[i] - value - slope * at[i]) * Math.sqrt(base[i]);
        }
        double[] sorted = standard.clone();
        Arrays.sort(sorted);
        double limit = HUBER * Math.max(sorted[sorted.length / 2] * MEDIAN_TO_SIGMA, 0.3);
        for (int i = 0; i < at.length; i++) {
            weight[i] = base[i] * Math.min(1, limit / Math.max(standard[i], 1e-12));
        }
    }
}
