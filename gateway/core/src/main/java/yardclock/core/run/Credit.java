package yardclock.core.run;

import yardclock.core.course.DayRules;
import yardclock.core.time.Stamp;

import java.util.List;
import java.util.Optional;

/**
 * What the holds of a run take off its time, and how far that may be wrong: two presses each, by
 * clocks and hands. A pair by one person on one tablet carries ± 0.20 s; two single presses carry
 * their own intervals ({@link HandMarks}). The tablets' clocks come on top.
 *
 * @param lessMicros how much less the true credit may be
 * @param moreMicros how much more it may be
 * @param limit whether one of the holds is longer than the plan credits
 */
record Credit(long micros, long lessMicros, long moreMicros, CreditLimit limit) {
    private static final Credit NONE = new Credit(0, 0, 0, CreditLimit.WITHIN);

    /** Empty when a hold that may have lain within the run has an end without a time. */
    static Optional<Credit> of(DayRules day, List<Hold> holds, Mark start, Mark finish) {
        Credit sum = NONE;
        for (Hold hold : holds) {
            if (isOutside(hold, start, finish)) {
                continue;
            }
            if (!hold.isDated()) {
                return Optional.empty();
            }
            Credit one = NONE.plus(hold, start, finish);
            sum = sum.plus(hold, start, finish).atLeast(CreditLimit.ofOne(one, day));
        }
        return Optional.of(sum.atLeast(CreditLimit.ofAll(sum, day)));
    }

    private Credit atLeast(CreditLimit other) {
        return new Credit(micros, lessMicros, moreMicros, limit.orWorse(other));
    }

    /** Whether it was over before the start, or began after the finish, whatever the presses. */
    private static boolean isOutside(Hold hold, Mark start, Mark finish) {
        Stamp in = hold.in().stamp();
        Stamp out = hold.isOpen() ? null : hold.out().stamp();
        long over = out == null ? lastPossible(hold) : out.upperMicros() + HandMarks.PAIR_MICROS;
        boolean isBefore = over <= start.best().lowerMicros();
        boolean isAfter =
                in != null
                        && in.lowerMicros() - HandMarks.EARLIER_MICROS
                                >= finish.best().upperMicros();
        return isBefore || isAfter;
    }

    /** A press without a time was made before the gateway had it. */
    private static long lastPossible(Hold hold) {
        return hold.isOpen() ? Long.MAX_VALUE : hold.out().receivedMicros() + HandMarks.PAIR_MICROS;
    }

    /** Only the part of a hold that lies between start and finish; none of one without a time. */
    static long within(Hold hold, Mark start, Mark finish) {
        if (!hold.isDated()) {
            return 0;
        }
        long from = Math.max(hold.in().stamp().micros(), start.best().micros());
        long until = Math.min(hold.out().stamp().micros(), finish.best().micros());
        return Math.max(0, until - from);
    }

    private Credit plus(Hold hold, Mark start, Mark finish) {
        Stamp in = hold.in().stamp();
        Stamp out = hold.out().stamp();
        long clocksLess = out.micros() - out.lowerMicros() + in.upperMicros() - in.micros();
        long clocksMore = out.upperMicros() - out.micros() + in.micros() - in.lowerMicros();
        return new Credit(
                micros + within(hold, start, finish),
                lessMicros + clocksLess + handLess(hold),
                moreMicros + clocksMore + handMore(hold),
                limit);
    }

    private static boolean isPair(Hold hold) {
        return hold.in().isByHand() && hold.in().device().equals(hold.out().device());
    }

    private static long handLess(Hold hold) {
        long later = hold.in().isByHand() ? HandMarks.LATER_MICROS : 0;
        long earlier = hold.out().isByHand() ? HandMarks.EARLIER_MICROS : 0;
        return isPair(hold) ? HandMarks.PAIR_MICROS : earlier + later;
    }

    private static long handMore(Hold hold) {
        long earlier = hold.in().isByHand() ? HandMarks.EARLIER_MICROS : 0;
        long later = hold.out().isByHand() ? HandMarks.LATER_MICROS : 0;
        return isPair(hold) ? HandMarks.PAIR_MICROS : earlier + later;
    }
}
