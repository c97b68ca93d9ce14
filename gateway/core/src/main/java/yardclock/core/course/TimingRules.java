package yardclock.core.course;

/**
 * How times are compared, rounded and shown. Integers only.
 *
 * @param cutOffMicros the maximum official time
 * @param comparison whether a time exactly on the cut-off is within it
 * @param comparesDisplayed whether the displayed time is compared, or the raw one
 * @param resolutionMicros the step of a displayed time
 * @param undecided what is done when the cut-off lies inside the interval
 * @param settleMicros how long after a stay's end a contrary edge may still be under way
 * @param boundLimitMicros a stamp wider than this raises an alarm on the bench
 * @param judgedAllowanceMicros what a judged finish adds to the hand interval on both sides
 */
public record TimingRules(
        long cutOffMicros,
        Comparison comparison,
        boolean comparesDisplayed,
        Rounding rounding,
        long resolutionMicros,
        UndecidedRule undecided,
        long settleMicros,
        long boundLimitMicros,
        long judgedAllowanceMicros) {

    /** Whether a time equal to the cut-off passes. */
    public enum Comparison {
        AT_MOST,
        BELOW
    }

    /** How a displayed time is made from microseconds. */
    public enum Rounding {
        TRUNCATE,
        HALF_UP,
        UP
    }

    /** The published rule for a time that is within the timing uncertainty of the cut-off. */
    public enum UndecidedRule {
        CANDIDATES_BENEFIT,
        REVIEW
    }
}
