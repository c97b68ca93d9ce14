package yardclock.core.time;

import java.util.Optional;

/**
 * A stretch of one boot over which its clock ran as a clock may: no two exchanges contradict each
 * other. It ends where one does.
 *
 * <p>Between its last sure exchange and the first one of the next segment the counter may have
 * jumped at any moment, so a tick from there may belong to either; both hold it.
 */
final class ClockSegment {
    private static final double PPM = 1e-6;

    /** A jump of 20 ms is found by the sixth answer; see the bench. */
    private static final int CONFIRMATIONS = 6;

    /** So many exchanges pass between two looks at the rate: two and a half minutes. */
    private static final int RATE_EVERY = 30;

    final ExchangeHistory history = new ExchangeHistory();
    private final Exchange first;
    private long beginTick;
    private long endTick = Long.MAX_VALUE;
    private RateRange rates = RateRange.ANY;
    private RateRange nextRates = RateRange.ANY;
    private int untilLearnt = RATE_EVERY;

    /** Goes with all exchanges so far; null while there is none. */
    private Witness witness;

    /** The first segment of a boot, which holds all ticks before its first exchange too. */
    ClockSegment(Exchange first) {
        this(first, Long.MIN_VALUE);
    }

    private ClockSegment(Exchange first, long beginTick) {
        this.first = first;
        this.beginTick = beginTick;
        history.add(first);
    }

    /** Whether the tick may be this segment's. */
    boolean mayHold(long tick) {
        return tick >= beginTick && tick <= endTick;
    }

    /**
     * What follows when an exchange contradicts this segment, whose doubtful end is cut off: an
     * exchange that the contradiction leaves on neither side tells nothing any more. If that is all
     * of them, nothing is known before the contradiction.
     */
    ClockSegment endAt(Exchange contradicting) {
        history.cutTo(sureCount(contradicting));
        if (history.size() == 0) {
            return new ClockSegment(contradicting, contradicting.unitReceivedTick());
        }
        int last = history.size() - 1;
        double apart = contradicting.gatewayReceivedMicros() - history.gatewaySent(last);
        long ticks =
                (long)
                        Math.ceil(
                                apart * (1 + ClockEstimator.RATE_LIMIT_PPM * PPM)
                                        + 2 * ClockEstimator.READING_MICROS);
        endTick = lastTick() + ticks;
        return new ClockSegment(contradicting, contradicting.unitReceivedTick() - ticks);
    }

    /** What seemed to follow was a mistake. */
    void reopen() {
        endTick = Long.MAX_VALUE;
    }

    /** What came before is forgotten, so a tick from between can't be placed any more. */
    void standAlone() {
        beginTick = first.unitReceivedTick();
    }

    /** How many exchanges surely came before the jump: the last of them and the new one exclude. */
    private int sureCount(Exchange contradicting) {
        int newest = history.size();
        if (contradicting.unitReceivedTick() < lastReceivedTick()) {
            return newest;
        }
        double ratePpm = rateBoundPpm();
        int from = newest - 1;
        history.add(contradicting);
        while (from >= 0 && areTogether(from, ratePpm)) {
            from--;
        }
        history.cutTo(newest);
        return from + 1;
    }

    /** Whether one clock at rates within the bound can have given all from there to the newest. */
    private boolean areTogether(int from, double ratePpm) {
        int to = history.size();
        Legs legs = new Legs(history, from, to, history.unitReceived(to - 1));
        return legs.band(Double.POSITIVE_INFINITY, RateRange.within(ratePpm)) != null;
    }

    private double rateBoundPpm() {
        return estimator(lastTick(), Long.MAX_VALUE).rateBoundPpm();
    }

    /** The first kept exchange's first tick. */
    long firstTick() {
        return history.unitReceived(0);
    }

    /** The last exchange's second tick. */
    long lastTick() {
        return history.unitSent(history.size() - 1);
    }

    /** The last exchange's first tick. */
    long lastReceivedTick() {
        return history.unitReceived(history.size() - 1);
    }

    /**
     * Whether the tick has passed, and enough exchanges after it found nothing against what came up
     * to it: the first ones after a jump may all be too late to tell.
     */
    boolean isConfirmed(long tick) {
        int newest = history.size() - 1;
        return newest >= CONFIRMATIONS && history.unitMiddle(newest - CONFIRMATIONS) >= tick;
    }

    /**
     * Whether the newest exchange and those before it exclude each other; also by a rate that no
     * crystal takes up within minutes.
     */
    boolean isContradictory() {
        boolean isSo = !isWitnessed() && isExcluded();
        if (!isSo) {
            learnRate();
        }
        return isSo;
    }

    /** Whether the clock that agreed with all exchanges before still does; most often it does. */
    private boolean isWitnessed() {
        int from = estimator(lastReceivedTick(), Long.MAX_VALUE).liveFrom();
        return witness != null
                && ClockEstimator.isUsual(from, history.size())
                && witness.agrees(history, from, rates);
    }

    private boolean isExcluded() {
        witness = null;
        if (estimator(lastReceivedTick(), Long.MAX_VALUE).isContradictory(rates)) {
            return true;
        }
        ClockEstimator last = estimator(lastTick(), Long.MAX_VALUE);
        boolean isSo = last.isContradictory(rates);
        witness = isSo ? null : last.witness();
        return isSo;
    }

    /** From time to time; the last but one counts, which a jump just now can't have bent. */
    private void learnRate() {
        untilLearnt--;
        if (untilLearnt > 0) {
            return;
        }
        untilLearnt = RATE_EVERY;
        rates = nextRates;
        nextRates =
                estimator(lastTick(), Long.MAX_VALUE)
                        .liveBand()
                        .map(RateRange::around)
                        .orElse(RateRange.ANY);
    }

    /**
     * The gateway time between two ticks, with limits; by the rate alone while one window holds
     * both, else by their two stamps. Empty while the rate is not known.
     */
    Optional<Stamp> elapsed(long start, long finish) {
        if (history.size() < ClockEstimator.BAND_LEAST) {
            return Optional.empty();
        }
        if (Math.abs(finish - start) > ClockEstimator.LIVE_WINDOW_MICROS) {
            return between(stamp(start), stamp(finish));
        }
        long ticks = finish - start;
        long later = Math.max(start, finish);
        ClockEstimator.Answer answer =
                estimator(later, Long.MAX_VALUE).since(Math.min(start, finish));
        double low = ticks * (answer.rateLowPpm() - ClockEstimator.WANDER_PPM) * PPM;
        double high = ticks * (answer.rateHighPpm() + ClockEstimator.WANDER_PPM) * PPM;
        double reading = 2 * ClockEstimator.READING_MICROS;
        long lower = ticks + (long) Math.floor(Math.min(low, high) - reading);
        long upper = ticks + (long) Math.ceil(Math.max(low, high) + reading);
        long middle = ticks + (long) Math.rint(ticks * answer.ratePpm() * PPM);
        return Optional.of(new Stamp(Math.max(lower, Math.min(upper, middle)), lower, upper));
    }

    private Stamp stamp(long tick) {
        return estimator(tick, Long.MAX_VALUE).settled().stamp();
    }

    private static Optional<Stamp> between(Stamp start, Stamp finish) {
        if (start == null || finish == null) {
            return Optional.empty();
        }
        return Optional.of(
                new Stamp(
                        finish.micros() - start.micros(),
                        finish.lowerMicros() - start.upperMicros(),
                        finish.upperMicros() - start.lowerMicros()));
    }

    ClockEstimator estimator(long tick, long arrivalMicros) {
        return new ClockEstimator(history, history.size(), tick, arrivalMicros);
    }
}
