package yardclock.core.time;

import java.util.Optional;

/**
 * Where a tick lies in gateway time, from the exchanges of one clock segment.
 *
 * <p><b>Interval.</b> Two envelopes that rest on causality, intersected. The hard one takes every
 * exchange and lets the rate be anything within ±Φ, where Φ is at least {@link #RATE_PPM} and grows
 * with the rates the window allows. The band one asks which straight clocks no leg of the window
 * contradicts ({@link RateBand}), with {@link #WANDER_PPM} of slack for a rate that moves. Both are
 * widened by {@link #READING_MICROS}. The edge's own arrival is an upper limit too.
 *
 * <p><b>Estimate.</b> The {@link DirectionalFit} of a window that reaches a little further back,
 * clamped into the interval.
 *
 * <p>Pure; safe from any thread as long as the history does not change meanwhile.
 */
final class ClockEstimator {
    /** What an undisciplined crystal is assumed to keep, until its own exchanges say otherwise. */
    static final double RATE_PPM = 50;

    /**
     * Added to the fastest rate the window allows: warming up, sun and shade outside the window.
     */
    static final double RATE_MARGIN_PPM = 15;

    /** A window that leaves the rate more room than this either way says nothing of its middle. */
    static final double RATE_TELLING_PPM = 40;

    /** Of the room a window leaves the rate either way, this part is allowed for at least. */
    static final double RATE_MARGIN_OF_UNSURE = 0.8;

    /** No crystal is this far off; a clock that seems so contradicts itself. */
    static final double RATE_LIMIT_PPM = 500;

    /** How far the rate may be from its mean within a window. */
    static final double WANDER_PPM = 5;

    /** Four standard deviations of a stamp's own noise (50 µs). */
    static final double READING_MICROS = Stamp.READING_MICROS;

    static final long LIVE_WINDOW_MICROS = 300_000_000;
    static final long FINAL_WINDOW_MICROS = 150_000_000;

    /** The estimate may look further than the limits: a rate that moved bends it only a little. */
    private static final long FIT_WINDOW_MICROS = 400_000_000;

    /** What 300 s hold when nothing is lost; a window with less reaches further back. */
    private static final int WINDOW_USUAL = 60;

    private static final long WINDOW_MOST_MICROS = 600_000_000;

    private static final int WINDOW_LEAST = 8;
    static final int BAND_LEAST = 4;
    private static final double PPM = 1e-6;

    private final ExchangeHistory history;
    private final int count;
    private final long tick;
    private final double arrival;
    private double lower = Double.NEGATIVE_INFINITY;
    private double upper = Double.POSITIVE_INFINITY;
    private Witness witness;

    /**
     * @param count how many exchanges of the history may be used, from the first
     * @param arrivalMicros when the gateway learned of the tick; {@link Long#MAX_VALUE} if unknown
     */
    ClockEstimator(ExchangeHistory history, int count, long tick, long arrivalMicros) {
        this.history = history;
        this.count = count;
        this.tick = tick;
        this.arrival =
                arrivalMicros == Long.MAX_VALUE
                        ? Double.POSITIVE_INFINITY
                        : (double) (arrivalMicros - tick);
    }

    /**
     * An answer, offsets relative to the tick already added.
     *
     * @param contradiction the limits exclude each other: the clock was not what was assumed
     */
    record Answer(
            Stamp stamp,
            boolean contradiction,
            double ratePpm,
            double rateLowPpm,
            double rateHighPpm,
            double floorRoundTripMicros) {}

    /** With exchanges up to now. */
    Answer live() {
        return answer(liveFrom(), count);
    }

    /**
     * With exchanges on both sides; where few came after, as before an outage, more from before.
     */
    Answer settled() {
        int to = Math.min(count, history.firstAtOrAfter(tick + FINAL_WINDOW_MICROS));
        long after = to == 0 ? 0 : history.unitMiddle(to - 1) - tick;
        long before = 2 * FINAL_WINDOW_MICROS - Math.max(0, after);
        return answer(Math.min(to, history.firstAtOrAfter(tick - before)), to);
    }

    /** With one window that holds an earlier tick too, and as much later as it has room for. */
    Answer since(long earlierTick) {
        long room = LIVE_WINDOW_MICROS - (tick - earlierTick);
        int to = history.firstAtOrAfter(tick + Math.min(FINAL_WINDOW_MICROS, room));
        long after = to == 0 ? 0 : Math.max(0, history.unitMiddle(to - 1) - tick);
        int from = history.firstAtOrAfter(tick - (LIVE_WINDOW_MICROS - after));
        return answer(Math.min(from, to), to);
    }

    /** With the exchanges of a window given by their places. */
    Answer settledOver(int from, int to) {
        return answer(from, to);
    }

    /**
     * Whether {@link #live} would find a contradiction if the rate were known so well; spares the
     * fit, which can't tell.
     */
    boolean isContradictory(RateRange rates) {
        Legs legs = legs(liveFrom(), count);
        RateBand band = narrow(legs, rates);
        if (band != null) {
            witness = Witness.of(history, legs, tick, band);
        }
        return band == null && legs != null || lower > Math.min(upper, arrival);
    }

    /**
     * A clock that {@link #isContradictory} found to agree with the live window; null if none will
     * do.
     */
    Witness witness() {
        return witness;
    }

    /** Whether the live window is one by time, as windows are but for the first few exchanges. */
    static boolean isUsual(int from, int to) {
        return to - from >= WINDOW_LEAST;
    }

    /** What the rate is held to stay within, by the live window. */
    double rateBoundPpm() {
        return liveBand().map(ClockEstimator::rateBound).orElse(RATE_LIMIT_PPM);
    }

    /** The live window's straight clocks; empty while there are too few exchanges. */
    Optional<RateBand> liveBand() {
        Legs legs = legs(liveFrom(), count);
        return Optional.ofNullable(legs).map(of -> of.band(arrival, RateRange.ANY));
    }

    int liveFrom() {
        long newest = history.unitMiddle(count - 1);
        return reachingBack(Math.min(tick, newest), LIVE_WINDOW_MICROS, count);
    }

    /**
     * The limits of {@link #live} without its estimate, which costs as much again: the stamp lies
     * somewhere within them, the rate is 0 and there is no floor.
     */
    Answer liveLimits() {
        Legs legs = legs(liveFrom(), count);
        RateBand band = narrow(legs, RateRange.ANY);
        return legs == null || band == null
                ? withoutFit(legs == null)
                : finish((lower + upper) / 2, 0, band, -1);
    }

    private Answer answer(int from, int to) {
        Legs legs = legs(from, to);
        RateBand band = narrow(legs, RateRange.ANY);
        if (legs == null || band == null) {
            return withoutFit(legs == null);
        }
        DirectionalFit fit = new DirectionalFit(reachingFurther(legs));
        fit.run(band.centre(), band.centreRate(), RATE_LIMIT_PPM * PPM);
        return finish(fit.offset(), fit.rate(), band, fit.floorRoundTrip());
    }

    /**
     * @param hasFew too few exchanges for a rate; else they contradict each other
     */
    private Answer withoutFit(boolean hasFew) {
        return hasFew ? hardOnly() : new Answer(null, true, 0, -RATE_LIMIT_PPM, RATE_LIMIT_PPM, 0);
    }

    /** The estimate reaches further back, so as to find enough clean legs. */
    private Legs reachingFurther(Legs legs) {
        int reach = reachingBack(history.unitMiddle(legs.to - 1), FIT_WINDOW_MICROS, legs.to);
        return new Legs(history, Math.min(legs.from, reach), legs.to, tick);
    }

    /** Where a window begins that ends at a place; after an outage it is longer. */
    private int reachingBack(long endTick, long windowMicros, int to) {
        int usual = history.firstAtOrAfter(endTick - windowMicros);
        int longest = history.firstAtOrAfter(endTick - WINDOW_MOST_MICROS);
        return Math.max(Math.min(usual, to - WINDOW_USUAL), longest);
    }

    /** The legs of a window, or of the exchanges next to the tick; null if too few for a rate. */
    private Legs legs(int windowFrom, int windowTo) {
        int from = windowFrom;
        int to = windowTo;
        if (!isUsual(from, to)) {
            int at = Math.min(count, history.firstAtOrAfter(tick));
            from = Math.max(0, at - WINDOW_LEAST);
            to = Math.min(count, at + WINDOW_LEAST);
        }
        return to - from < BAND_LEAST ? null : new Legs(history, from, to, tick);
    }

    /** Sets both limits; null without legs, or when they contradict each other. */
    private RateBand narrow(Legs legs, RateRange rates) {
        RateBand band = legs == null ? null : legs.band(arrival, rates);
        narrowByHard(band == null ? RATE_LIMIT_PPM : rateBound(band));
        if (band != null) {
            lower = Math.max(lower, band.lowest());
            upper = Math.min(upper, band.highest());
        }
        return band;
    }

    /** Too few exchanges for a rate: the rate may be anything. */
    private Answer hardOnly() {
        int best = 0;
        for (int i = 1; i < count; i++) {
            best = history.roundTrip(i) < history.roundTrip(best) ? i : best;
        }
        double offset =
                (double) (history.gatewaySent(best) - history.unitReceived(best)) / 2
                        + (double) (history.gatewayReceived(best) - history.unitSent(best)) / 2;
        return finish(offset, 0, null, (double) history.roundTrip(best));
    }

    /**
     * What the rate is assumed to stay within: the data sheet's bound, widened where the window
     * says that this crystal is near it or over. The less the window says, the wider.
     */
    private static double rateBound(RateBand band) {
        double centre = Math.abs(band.centreRate()) / PPM;
        double fastest = Math.max(Math.abs(band.rateLow()), Math.abs(band.rateHigh())) / PPM;
        double unsure = (band.rateHigh() - band.rateLow()) / 2 / PPM;
        double margin = Math.max(RATE_MARGIN_PPM, RATE_MARGIN_OF_UNSURE * unsure);
        boolean isTelling = unsure <= RATE_TELLING_PPM;
        return Math.max(RATE_PPM, isTelling ? Math.min(fastest, centre + margin) : fastest);
    }

    private void narrowByHard(double ratePpm) {
        HardEnvelope hard = HardEnvelope.of(history, count, tick, ratePpm);
        lower = Math.max(lower, hard.lower() - READING_MICROS);
        upper = Math.min(upper, hard.upper() + READING_MICROS);
    }

    private Answer finish(double offset, double rate, RateBand band, double floor) {
        double low = band == null ? -RATE_LIMIT_PPM : band.rateLow() / PPM;
        double high = band == null ? RATE_LIMIT_PPM : band.rateHigh() / PPM;
        upper = Math.min(upper, arrival);
        if (lower > upper) {
            return new Answer(null, true, rate / PPM, low, high, floor);
        }
        double clamped = Math.max(lower, Math.min(upper, offset));
        long lowest = tick + (long) Math.floor(lower);
        long highest = tick + (long) Math.ceil(upper);
        long middle = Math.max(lowest, Math.min(highest, tick + (long) Math.rint(clamped)));
        return new Answer(new Stamp(middle, lowest, highest), false, rate / PPM, low, high, floor);
    }
}
