package yardclock.core.run;

import yardclock.core.passage.EdgeClocks;
import yardclock.core.time.Shift;
import yardclock.core.time.Stamp;
import yardclock.core.time.TimeLines;

import java.util.Optional;

/**
 * How the marks of one turn lie to each other in time: by the one clock that stamped both where
 * there is one, and over the gateway's restarts as far as something that ran on says how long they
 * took. A part of its turn; belongs to the state's thread.
 */
public final class TurnTimes {
    private final Turn turn;
    private final TimeLines lines;

    /** The time between start and finish by the one clock both were stamped by; or null. */
    private Stamp sameClock;

    TurnTimes(Turn turn, TimeLines lines) {
        this.turn = turn;
        this.lines = lines;
    }

    /** Those of another turn on the same lines. */
    TurnTimes of(Turn other) {
        return new TurnTimes(other, lines);
    }

    /** The marks are the same as another turn's, and so is what their clock said. */
    void takeOver(TurnTimes same) {
        sameClock = same.sameClock;
    }

    /**
     * The gateway's clock broke off between start and finish, or since the start while there is no
     * finish, and nothing that ran on says for how long.
     */
    boolean isInterrupted() {
        if (turn.start() == null || turn.ruled() == SplitState.VOID) {
            return false;
        }
        return turn.finish() == null
                ? lines.apart(turn.start().line(), lines.current()).isEmpty()
                : elapsed() == null;
    }

    /** The gateway restarted between start and finish, on a time line that is tied to the other. */
    boolean isOverRestart() {
        return turn.start() != null
                && turn.finish() != null
                && turn.start().line() != turn.finish().line();
    }

    /** Whether the proctor's own taps, or the start and a tap, can be told apart in time. */
    public boolean hasHandMarks() {
        Mark from = turn.startTap() == null ? turn.start() : turn.startTap();
        Mark to = turn.finishTap();
        return from != null && to != null && lines.apart(from.line(), to.line()).isPresent();
    }

    /** By the proctor's own pair of taps; −1 without one. */
    long handMicros() {
        Elapsed pair = between(turn.startTap(), turn.finishTap());
        return pair == null ? -1 : pair.micros();
    }

    /** Whether so long after the start is still to come; not known across an untied restart. */
    public boolean isAhead(long splitMicros, long nowMicros) {
        Mark start = turn.start();
        return start != null
                && lines.apart(start.line(), lines.current()).isPresent()
                && start.best().lowerMicros() + splitMicros > nowMicros;
    }

    /** What a ruling keeps of marks, and how they lie to each other as far as is known now. */
    Ruling.Decided decided(SplitState state, Mark from, Mark to) {
        Mark first = from == null ? null : from.asSeen();
        Mark last = to == null ? null : to.asSeen();
        boolean both = first != null && last != null;
        Shift shift = both ? lines.shift(first.line(), last.line()).orElse(null) : null;
        return new Ruling.Decided(state, first, last, shift);
    }

    /** Null when one is missing, or how they lie to each other is not known. */
    Elapsed between(Mark from, Mark to) {
        return from == null || to == null
                ? null
                : lines.apart(from.line(), to.line())
                        .map(apart -> Elapsed.within(from, to, null, apart))
                        .orElse(null);
    }

    /** The same, by the one clock where it stamped both of these. */
    Elapsed of(Mark from, Mark to) {
        return from == null || to == null
                ? null
                : between(from, to, lines.apart(from.line(), to.line()));
    }

    private Elapsed between(Mark from, Mark to, Optional<Shift> apart) {
        return Elapsed.between(from, to, isAsDerived(from, to) ? sameClock : null, apart);
    }

    /** The time between the marks that stand, both of which must be there; null if unknown. */
    Elapsed elapsed() {
        Ruling.Decided by = turn.decision();
        Mark start = turn.start();
        Mark finish = turn.finish();
        return by == null || by.shift() == null
                ? of(start, finish)
                : between(
                        start,
                        finish,
                        Optional.of(lines.apart(start.line(), finish.line(), by.shift())));
    }

    private boolean isAsDerived(Mark from, Mark to) {
        return isSameEdge(turn.start, from) && isSameEdge(turn.finish, to);
    }

    private static boolean isSameEdge(Mark derived, Mark mark) {
        return derived != null && derived.edge() != null && derived.edge().equals(mark.edge());
    }

    /** The time between the derived marks, or null while one is missing or it is unknown. */
    Elapsed derived() {
        return of(turn.start, turn.derivedFinish());
    }

    /** Asks the one clock that stamped start and finish, if it was one; not once it was ruled. */
    void compareOnOneClock(EdgeClocks clocks) {
        if (turn.isRuled()) {
            return;
        }
        Mark start = turn.start;
        Mark finish = turn.finish;
        boolean both = start != null && finish != null;
        both = both && start.edge() != null && finish.edge() != null;
        sameClock =
                both && start.edge().sharesClockWith(finish.edge())
                        ? clocks.elapsed(start.edge(), finish.edge()).orElse(null)
                        : null;
    }

    /** A mark is gone, and with it what its clock said. */
    void forget() {
        sameClock = null;
    }

    @Override
    public String toString() {
        return String.valueOf(sameClock);
    }
}
