package yardclock.core.time;

import java.util.ArrayList;
import java.util.List;

/** Draws the {@link ClockTrace} of one segment at one time. */
final class ClockTracer {
    static final long SPAN_MICROS = ClockEstimator.LIVE_WINDOW_MICROS;

    /** Twice what the usual pace gives in the span: bursts of a bad link. */
    static final int EXCHANGES_MAX = 120;

    private static final int LIMITS = 25;

    private final ClockSegment segment;
    private final ExchangeHistory history;
    private final long nowMicros;
    private final long nowTick;
    private final long lineTick;
    private final double lineOffset;
    private final double lineRate;

    private ClockTracer(ClockSegment segment, long nowMicros, ClockEstimator.Answer answer) {
        this.segment = segment;
        this.history = segment.history;
        this.nowMicros = nowMicros;
        int newest = history.size() - 1;
        lineTick = history.unitSent(newest);
        nowTick = lineTick + Math.max(0, nowMicros - history.gatewayReceived(newest));
        lineOffset = answer.stamp().micros() - lineTick;
        lineRate = answer.ratePpm() * 1e-6;
    }

    static ClockTrace trace(ClockSegment segment, long nowMicros) {
        long tick = segment.lastTick();
        ClockEstimator.Answer answer = segment.estimator(tick, Long.MAX_VALUE).live();
        if (answer.stamp() == null) {
            return ClockTrace.empty();
        }
        return new ClockTracer(segment, nowMicros, answer).draw();
    }

    private ClockTrace draw() {
        return new ClockTrace(SPAN_MICROS, residuals(), envelope(), steadiness());
    }

    /** Where the fitted line has its offset at a tick, microseconds. */
    private double line(long tick) {
        return lineOffset + lineRate * (tick - lineTick);
    }

    private List<ClockTrace.Residual> residuals() {
        int from = history.firstAtOrAfter(nowTick - SPAN_MICROS);
        List<ClockTrace.Residual> residuals = new ArrayList<>();
        for (int i = Math.max(from, history.size() - EXCHANGES_MAX); i < history.size(); i++) {
            residuals.add(
                    new ClockTrace.Residual(
                            Math.max(0, nowMicros - history.gatewayReceived(i)),
                            Math.round(down(i)),
                            Math.round(up(i))));
        }
        return residuals;
    }

    private double down(int i) {
        long tick = history.unitReceived(i);
        return history.gatewaySent(i) - tick - line(tick);
    }

    private double up(int i) {
        long tick = history.unitSent(i);
        return history.gatewayReceived(i) - tick - line(tick);
    }

    /** From the first exchange, or the span's beginning, to now. */
    private List<ClockTrace.Limits> envelope() {
        long from = Math.max(history.unitReceived(0), nowTick - SPAN_MICROS);
        List<ClockTrace.Limits> limits = new ArrayList<>();
        for (int i = 0; i < LIMITS; i++) {
            long tick = from + (nowTick - from) * i / (LIMITS - 1);
            Stamp stamp = segment.estimator(tick, Long.MAX_VALUE).live().stamp();
            if (stamp != null) {
                double line = tick + line(tick);
                limits.add(
                        new ClockTrace.Limits(
                                nowTick - tick,
                                Math.round(stamp.lowerMicros() - line),
                                Math.round(stamp.upperMicros() - line)));
            }
        }
        return limits;
    }

    private List<ClockTrace.Steadiness> steadiness() {
        EvenPhase phase = new EvenPhase();
        for (int i = 0; i < history.size(); i++) {
            phase.add(history.unitMiddle(i), down(i), up(i));
        }
        return phase.steadiness();
    }
}
