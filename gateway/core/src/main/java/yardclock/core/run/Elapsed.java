package yardclock.core.run;

import yardclock.core.time.Shift;
import yardclock.core.time.Stamp;

import java.util.Optional;

/**
 * The time between two marks, how well it is known, and what its interval is made of.
 *
 * <p>Two clocks give two independent intervals. One clock gives a difference that is known to
 * microseconds and the rate. Two taps by one person are a pair, known better than two single
 * presses, because a person is late in much the same way twice.
 */
public record Elapsed(long micros, long lowerMicros, long upperMicros, Parts parts) {

    /**
     * What the full width of an interval consists of.
     *
     * @param clockMicros how well the clocks were compared
     * @param readingMicros reading a counter and handing a message over
     * @param responseMicros how late the sensors may answer, and how long they may chatter
     * @param handMicros people's presses
     * @param holdMicros the ends of credited holds
     */
    public record Parts(
            long clockMicros,
            long readingMicros,
            long responseMicros,
            long handMicros,
            long holdMicros) {
        private Parts withTie(long micros) {
            return new Parts(
                    clockMicros + micros, readingMicros, responseMicros, handMicros, holdMicros);
        }

        private Parts withHold(long micros) {
            return new Parts(clockMicros, readingMicros, responseMicros, handMicros, micros);
        }
    }

    /**
     * Between the start and the finish of one turn.
     *
     * @param sameClock the duration between the two edges by the one clock they share, or null
     * @param apart what the gateway's time lines of the two leave open; not needed on one clock
     */
    static Elapsed within(Mark start, Mark finish, Stamp sameClock, Shift apart) {
        if (isRuledFrom(start, finish)) {
            return pair(start, finish, Stamp.exactly(0), Stamp.exactly(0)).apart(apart);
        }
        return sameClock == null
                ? across(start, finish, apart)
                : onOneClock(start, finish, sameClock);
    }

    /** Between marks of two stations. */
    static Elapsed across(Mark start, Mark finish, Shift apart) {
        Elapsed elapsed =
                isPair(start, finish)
                        ? pair(start, finish, HandMarks.pressOf(start), HandMarks.pressOf(finish))
                        : independent(start, finish);
        return elapsed.apart(apart);
    }

    /** Time lines are tied by clocks, so what their shift leaves open is the clocks' part. */
    private Elapsed apart(Shift apart) {
        return new Elapsed(
                micros - apart.micros(),
                lowerMicros - apart.upperMicros(),
                upperMicros - apart.lowerMicros(),
                parts.withTie(apart.widthMicros()));
    }

    /** A time read from a stop-watch counts from the other mark: what that is worth cancels out. */
    private static boolean isRuledFrom(Mark start, Mark finish) {
        return (start.source() == Mark.Source.RULED) != (finish.source() == Mark.Source.RULED);
    }

    private static boolean isPair(Mark start, Mark finish) {
        return start.source() == Mark.Source.TAP
                && finish.source() == Mark.Source.TAP
                && start.press().device().equals(finish.press().device());
    }

    private static Elapsed pair(Mark start, Mark finish, Stamp first, Stamp second) {
        long allowance = allowance(start) + allowance(finish);
        long hand = HandMarks.PAIR_MICROS + allowance;
        long micros = finish.best().micros() - start.best().micros();
        long lower = micros - second.earlierMicros() - first.laterMicros() - hand;
        long upper = micros + second.laterMicros() + first.earlierMicros() + hand;
        long reading = reading(start) + reading(finish);
        return made(micros, lower, upper, new Parts(0, reading, 0, 2 * hand, 0));
    }

    private static long allowance(Mark mark) {
        return mark.press() == null ? 0 : mark.press().allowanceMicros();
    }

    private static Elapsed independent(Mark start, Mark finish) {
        Stamp from = start.best();
        Stamp to = finish.best();
        return made(
                to.micros() - from.micros(),
                to.lowerMicros() - from.upperMicros(),
                to.upperMicros() - from.lowerMicros(),
                parts(start, finish));
    }

    private static Elapsed onOneClock(Mark start, Mark finish, Stamp sameClock) {
        long lower = sameClock.lowerMicros() - before(finish) - after(start);
        long upper = sameClock.upperMicros() + after(finish) + before(start);
        return made(sameClock.micros(), lower, upper, parts(start, finish));
    }

    /** How long before its edge a mark can have been. */
    private static long before(Mark mark) {
        long hand = mark.press() == null ? 0 : HandMarks.EARLIER_MICROS + allowance(mark);
        return mark.edge().responseMicros() + mark.chatter().beforeMicros() + hand;
    }

    private static long after(Mark mark) {
        long hand = mark.press() == null ? 0 : HandMarks.LATER_MICROS + allowance(mark);
        return mark.chatter().afterMicros() + hand;
    }

    private static Parts parts(Mark start, Mark finish) {
        return new Parts(
                0,
                reading(start) + reading(finish),
                response(start) + response(finish),
                hand(start) + hand(finish),
                0);
    }

    private static long reading(Mark mark) {
        return mark.source() == Mark.Source.RULED ? 0 : 2 * Stamp.READING_MICROS;
    }

    private static long response(Mark mark) {
        long chatter = mark.chatter().beforeMicros() + mark.chatter().afterMicros();
        return mark.edge() == null ? 0 : mark.edge().responseMicros() + chatter;
    }

    private static long hand(Mark mark) {
        if (mark.source() == Mark.Source.RULED) {
            return 2 * HandMarks.PAIR_MICROS;
        }
        return mark.press() == null
                ? 0
                : HandMarks.EARLIER_MICROS + HandMarks.LATER_MICROS + 2 * allowance(mark);
    }

    /** What no other part explains is the clocks' part. */
    private static Elapsed made(long micros, long lower, long upper, Parts known) {
        long rest =
                upper - lower - known.readingMicros() - known.responseMicros() - known.handMicros();
        Parts parts =
                new Parts(
                        Math.max(0, rest),
                        Math.max(0, known.readingMicros() + Math.min(0, rest)),
                        known.responseMicros(),
                        known.handMicros(),
                        0);
        return new Elapsed(micros, lower, upper, parts);
    }

    long widthMicros() {
        return upperMicros - lowerMicros;
    }

    /** Less what was credited, whose ends are presses too. */
    Elapsed less(Credit credit) {
        return new Elapsed(
                micros - credit.micros(),
                lowerMicros - credit.micros() - credit.moreMicros(),
                upperMicros - credit.micros() + credit.lessMicros(),
                parts.withHold(credit.moreMicros() + credit.lessMicros()));
    }

    /** By the one clock that stamped both, or by how time lines lie; null if unknown. */
    static Elapsed between(Mark start, Mark finish, Stamp sameClock, Optional<Shift> apart) {
        boolean isOverRestart = start.line() != finish.line();
        if (sameClock == null || isOverRestart && apart.isEmpty()) {
            return apart.map(shift -> within(start, finish, null, shift)).orElse(null);
        }
        Elapsed byOneClock = within(start, finish, sameClock, Shift.NONE);
        if (!isOverRestart) {
            return byOneClock;
        }
        // Over a restart one clock has few exchanges at first; all that ran on may know it better.
        Elapsed byTies = within(start, finish, null, apart.get());
        return byTies.widthMicros() < byOneClock.widthMicros() ? byTies : byOneClock;
    }
}
