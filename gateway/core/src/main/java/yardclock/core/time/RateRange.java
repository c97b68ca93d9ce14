package yardclock.core.time;

/** Between what a clock's rate is taken to be, parts per million. */
record RateRange(double lowPpm, double highPpm) {
    /** As far off as any crystal may be. */
    static final RateRange ANY =
            new RateRange(-ClockEstimator.RATE_LIMIT_PPM, ClockEstimator.RATE_LIMIT_PPM);

    static RateRange within(double ppm) {
        return new RateRange(-ppm, ppm);
    }

    /** What a window found possible, and as much more as a rate changes from window to window. */
    static RateRange around(RateBand band) {
        double margin = ClockEstimator.RATE_MARGIN_PPM;
        return new RateRange(
                Math.max(ANY.lowPpm, band.rateLow() * 1e6 - margin),
                Math.min(ANY.highPpm, band.rateHigh() * 1e6 + margin));
    }
}
