package yardclock.core.heat;

/**
 * How much heat stress a healthy adult is expected to bear for hours, NIOSH 2016-106: a WBGT in °C
 * from the metabolic rate in W, for people who are used to the heat and who are not. Candidates
 * count as not used to it. For one layer of ordinary work clothes; no adjustment for turnout gear
 * is published, so one must be given by medical direction before these limits mean anything in it.
 */
final class WorkLimits {
    /** Metabolic rate at rest, W (NIOSH 2016-106). */
    private static final double REST_W = 115;

    private static final double HOUR_MIN = 60;

    private WorkLimits() {}

    static double unacclimatizedC(double watts) {
        return 59.9 - 14.1 * StrictMath.log10(watts);
    }

    static double acclimatizedC(double watts) {
        return 56.7 - 11.5 * StrictMath.log10(watts);
    }

    /** The mean over an hour of work and rest, weighted by minutes. */
    static double meanWatts(double workMin, double workW, double restMin, double restW) {
        return (workMin * workW + restMin * restW) / (workMin + restMin);
    }

    /**
     * Minutes of each hour that this work may take at this WBGT, the rest being rest there too; all
     * or none where the work is no more than rest.
     */
    static double workMinutesUnacclimatized(double wbgtC, double workW) {
        return minutes(StrictMath.pow(10, (59.9 - wbgtC) / 14.1), workW);
    }

    static double workMinutesAcclimatized(double wbgtC, double workW) {
        return minutes(StrictMath.pow(10, (56.7 - wbgtC) / 11.5), workW);
    }

    private static double minutes(double allowedW, double workW) {
        if (allowedW >= workW) {
            return HOUR_MIN;
        }
        if (workW <= REST_W) {
            return 0;
        }
        double share = (allowedW - REST_W) / (workW - REST_W);
        return Math.max(0, HOUR_MIN * share);
    }
}
