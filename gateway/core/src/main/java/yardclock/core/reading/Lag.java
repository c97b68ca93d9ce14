package yardclock.core.reading;

import yardclock.core.time.Stamp;

/**
 * How long after an instant a person taps: late by 0.11 s, standard deviation 0.07 s (Am. J. Phys.
 * 87(2) 110, 2019).
 *
 * <p>As a selector of passages a tap reaches from {@link #LEAST_MICROS} to {@link #MOST_MICROS},
 * which is 2.7 deviations either side: our choice. A proctor's own crossing lies 0.4 s or more from
 * the candidate's, so one inside this window is the candidate's. It is not the interval of a mark
 * that rests on a tap alone, which is wider.
 */
final class Lag {
    static final long MEAN_MICROS = 110_000;
    static final long DEVIATION_MICROS = 70_000;
    static final long LEAST_MICROS = -80_000;
    static final long MOST_MICROS = 300_000;

    /** Nearly half of the taps come sooner than this: no reason for doubt by itself. */
    static final long HARDLY_LATE_MICROS = 100_000;

    /** One tap in ten is sooner than the first of these, and one in ten later than the second. */
    static final long VERY_EARLY_MICROS = 20_000;

    static final long VERY_LATE_MICROS = 200_000;

    private Lag() {}

    static long micros(Stamp press, Stamp passage) {
        return press.micros() - passage.micros();
    }

    /** Whether the tap means this passage; neither clock's own limits narrow the window. */
    static boolean points(Stamp press, Stamp passage) {
        long lag = micros(press, passage);
        return lag >= LEAST_MICROS && lag <= MOST_MICROS;
    }

    /** The normal curve's exponent at this lag. */
    static Weight weight(Stamp press, Stamp passage) {
        long off = Math.abs(micros(press, passage) - MEAN_MICROS);
        if (off > 5 * DEVIATION_MICROS) {
            return new Weight(Weight.LEAST);
        }
        long squared = off * off * 500 / (DEVIATION_MICROS * DEVIATION_MICROS);
        return new Weight((int) Math.max(Weight.LEAST, -squared));
    }
}
