package yardclock.core.run;

import yardclock.core.time.Stamp;

/**
 * The interval of a mark a person made.
 *
 * <p>One press comes late by 0.11 s with a standard deviation of 0.07 s (Am. J. Phys. 87(2) 110,
 * 2019), so the instant lies between press − 0.25 s and press + 0.03 s. A pair of presses by one
 * person carries ± 0.20 s. A judged finish adds the plan's allowance on both sides.
 */
public final class HandMarks {
    static final long EARLIER_MICROS = 250_000;
    static final long LATER_MICROS = 30_000;
    public static final long PAIR_MICROS = 200_000;

    /**
     * How long a tap may have been under way before the gateway had it. Tablets' clocks are not
     * compared with the gateway's yet, so this much real time stands in for it.
     */
    static final long UNDER_WAY_REAL_MICROS = 2_000_000;

    private HandMarks() {}

    /** A press on a wired button: the edge is exact, the person is not. */
    static Mark button(Stamp edge, long allowanceMicros) {
        Stamp stamp =
                edge.widened(EARLIER_MICROS + allowanceMicros, LATER_MICROS + allowanceMicros);
        return new Mark(stamp, Mark.Source.BUTTON);
    }

    /** A tap on a tablet, known only by when it reached the gateway. */
    static Mark tap(long receivedMicros, int speed, long allowanceMicros) {
        long earlier = EARLIER_MICROS + UNDER_WAY_REAL_MICROS * speed + allowanceMicros;
        long lower = receivedMicros - earlier;
        long upper = receivedMicros + LATER_MICROS + allowanceMicros;
        return new Mark(new Stamp(receivedMicros, lower, upper), Mark.Source.TAP);
    }
}
