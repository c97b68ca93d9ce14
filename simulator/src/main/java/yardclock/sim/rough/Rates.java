package yardclock.sim.rough;

/**
 * How often and how much. Times in microseconds.
 *
 * <p>"Asked" stands for what the rough day was asked to hold when it was planned, "exam-day notes"
 * for this project's own description of an exam day; the others are from memory of such yards, no
 * source.
 */
final class Rates {
    /** Passages with the proctor's own crossing beside them. Asked. */
    static final double CROSSINGS = 0.30;

    /** From the candidate's edge to the nearest edge of the proctor's. Asked: 0.4–3 s. */
    static final long CROSSING_NEAREST = 400_000;

    static final long CROSSING_FURTHEST = 3_000_000;

    /** Strays for 100 passages. Asked: at least 6. */
    static final double STRAYS = 8.0;

    /** Knocks on contacts for 100 passages. From memory. */
    static final double JOSTLES = 0.5;

    /** How many passages one candidate makes, to turn the two above into a rate. Counted. */
    static final int PASSAGES = 25;

    /** Edges the sensor fails to show. Asked. */
    static final double MISSED = 0.01;

    /** Taps that are not made. Asked. */
    static final double UNTAPPED = 0.05;

    /** How late a tap is, and how much that varies. Am. J. Phys. 87(2) 110, 2019; asked. */
    static final long TAP_LATE = 110_000;

    static final long TAP_DEVIATION = 70_000;

    /** Mats stepped on twice before the start, or with the heel after it. From memory. */
    static final double DOUBLE_STEPS = 0.35;

    /** Beams that an end of the load breaks first. From memory. */
    static final double LOAD_FIRST = 0.40;

    /** How long the load's end is ahead of the body. Exam-day notes: 50–300 ms. */
    static final long LOAD_NEAREST = 50_000;

    static final long LOAD_FURTHEST = 300_000;

    /** How long it blocks the beam: a tube or a coupling at a walk. From memory. */
    static final long LOAD_SHORTEST = 12_000;

    static final long LOAD_LONGEST = 45_000;

    /** A candidate who waits steps on the start, or through the finish. From memory. */
    static final double IDLING = 0.7;

    /** How long a body blocks a beam, and a step presses a mat. From memory. */
    static final long BODY_SHORTEST = 200_000;

    static final long BODY_LONGEST = 500_000;
    static final long STEP_SHORTEST = 250_000;
    static final long STEP_LONGEST = 700_000;

    /** How long a board is out of reach. Asked: 30–360 s. */
    static final long OUTAGE_SHORTEST = 30_000_000;

    static final long OUTAGE_LONGEST = 360_000_000;

    /** Mean time between two outages of any board. From memory. */
    static final long OUTAGE_EVERY = 45L * 60 * 1_000_000;

    /** Outages that begin while a candidate is at the board's station. Asked: one or two. */
    static final int OUTAGES_IN_USE = 2;

    /** One in so many is slow, and the next one fast. From memory. */
    static final int PAIR_IN = 10;

    static final double SLOW = 1.7;
    static final double FAST = 0.75;

    private Rates() {}
}
