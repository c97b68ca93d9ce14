package yardclock.core.run;

import yardclock.core.passage.TimedEdge;
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

    private HandMarks() {}

    /** Whether a press may have meant an instant, given the limits both are known within. */
    public static boolean mayBe(Stamp press, Stamp instant) {
        return instant.upperMicros() >= press.lowerMicros() - EARLIER_MICROS
                && instant.lowerMicros() <= press.upperMicros() + LATER_MICROS;
    }

    /** A press on a wired button: the edge is exact, the person is not. */
    static Mark button(TimedEdge edge, long allowanceMicros) {
        Mark.Press press = new Mark.Press("", allowanceMicros);
        Stamp stamp = pressed(edge.stamp(), press);
        return new Mark(stamp, Mark.Source.BUTTON, edge, press, null, edge.line());
    }

    /** When what a person pressed for was, given when the press was. */
    static Stamp pressed(Stamp press, Mark.Press by) {
        long allowance = by.allowanceMicros();
        return press.widened(EARLIER_MICROS + allowance, LATER_MICROS + allowance);
    }

    /** The press itself, without the person's spread. */
    static Stamp pressOf(Mark mark) {
        long allowance = mark.press().allowanceMicros();
        Stamp best = mark.best();
        return new Stamp(
                best.micros(),
                best.lowerMicros() + EARLIER_MICROS + allowance,
                best.upperMicros() - LATER_MICROS - allowance);
    }

    /** A tap on a tablet, dated by the tablet's own clock. */
    static Mark tap(Stamp stamp, int line, Mark.Press press) {
        return new Mark(pressed(stamp, press), Mark.Source.TAP, null, press, null, line);
    }
}
