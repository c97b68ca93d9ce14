package yardclock.core.time;

import java.util.Optional;

/**
 * The first or the newest exchange of a clock: where a unit's counter stood on the gateway's time
 * line, and how fast that line may have run against the counter around it.
 *
 * <p>Two ends of one boot's clocks, one on either side of a gateway's restart, tie two time lines.
 *
 * @param slowestPpb the least the gateway can have gained on the counter, parts per billion
 * @param fastestPpb the most of the same
 */
public record ClockEnd(StationTick tick, Stamp stamp, long slowestPpb, long fastestPpb) {
    /** Parts per billion in one per million. */
    private static final long PPB = 1_000;

    static Optional<ClockEnd> first(ClockSegment segment) {
        ExchangeHistory history = segment.history;
        long tick = segment.firstTick();
        int to = history.firstAtOrAfter(tick + ClockEstimator.LIVE_WINDOW_MICROS);
        return of(tick, segment.estimator(tick, Long.MAX_VALUE).settledOver(0, to));
    }

    static Optional<ClockEnd> last(ClockSegment segment) {
        ExchangeHistory history = segment.history;
        long tick = segment.lastTick();
        int from = history.firstAtOrAfter(tick - ClockEstimator.LIVE_WINDOW_MICROS);
        return of(tick, segment.estimator(tick, Long.MAX_VALUE).settledOver(from, history.size()));
    }

    /** Outside the exchanges' own window the rate may be further off; so its limits are wider. */
    private static Optional<ClockEnd> of(long tick, ClockEstimator.Answer answer) {
        if (answer.stamp() == null) {
            return Optional.empty();
        }
        double slow = answer.rateLowPpm() - ClockEstimator.RATE_MARGIN_PPM;
        double fast = answer.rateHighPpm() + ClockEstimator.RATE_MARGIN_PPM;
        return Optional.of(
                new ClockEnd(
                        new StationTick(tick),
                        answer.stamp(),
                        (long) Math.floor(Math.max(slow, -ClockEstimator.RATE_LIMIT_PPM) * PPB),
                        (long) Math.ceil(Math.min(fast, ClockEstimator.RATE_LIMIT_PPM) * PPB)));
    }

    /** Whether this first exchange has all the later ones that can say where it lies. */
    public boolean isSettled(UnitClock clock) {
        long window = ClockEstimator.LIVE_WINDOW_MICROS - ClockEstimator.FINAL_WINDOW_MICROS;
        return clock.isSettled(new StationTick(tick.micros() + window));
    }
}
