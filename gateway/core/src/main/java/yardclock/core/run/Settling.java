package yardclock.core.run;

import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.fact.Gathering;
import yardclock.core.passage.EdgeClocks;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/**
 * Gives marks their final stamps once the clocks have settled. The provisional stamp is kept beside
 * it, what was judged by it stays, and a ruling keeps the value that was ruled on.
 */
final class Settling {
    private final EdgeClocks clocks;
    private final long stepMicros;
    private final Gathering out;

    /**
     * @param stepMicros the plan's step of a displayed time
     */
    Settling(EdgeClocks clocks, long stepMicros, Gathering out) {
        this.clocks = clocks;
        this.stepMicros = stepMicros;
        this.out = out;
    }

    /** Whether a mark of the turn got its final stamp. */
    boolean settle(Turn turn, String unit, Attempt attempt) {
        if (turn.isFinal || !awaits(turn, unit)) {
            return false;
        }
        Elapsed before = turn.times.derived();
        Mark start = turn.start;
        Mark finish = turn.finish;
        turn.start = settled(turn, TurnJudge.START, start, unit);
        turn.finish = settled(turn, TurnJudge.FINISH, finish, unit);
        for (Map.Entry<String, List<Mark>> seen : turn.checkpoints.entrySet()) {
            List<Mark> marks = new ArrayList<>();
            seen.getValue().forEach(mark -> marks.add(settled(turn, seen.getKey(), mark, unit)));
            seen.setValue(List.copyOf(marks));
        }
        if (Objects.equals(turn.start, start) && Objects.equals(turn.finish, finish)) {
            return false;
        }
        turn.times.compareOnOneClock(clocks);
        Elapsed after = turn.times.derived();
        boolean isOpen = before != null && after != null && !turn.isRuled();
        if (isOpen && showsOtherwise(before.micros(), after.micros())) {
            attempt.revision++;
        }
        return true;
    }

    /** Most turns have all their final stamps already, and each exchange asks again. */
    private static boolean awaits(Turn turn, String unit) {
        boolean awaits = awaits(turn.start, unit) || awaits(turn.finish, unit);
        boolean isFinal = isFinal(turn.start) && isFinal(turn.finish);
        for (List<Mark> marks : turn.checkpoints.values()) {
            for (Mark mark : marks) {
                awaits |= awaits(mark, unit);
                isFinal &= isFinal(mark);
            }
        }
        turn.isFinal = isFinal;
        return awaits;
    }

    private static boolean awaits(Mark mark, String unit) {
        return !isFinal(mark) && mark.edge().sensor().unit().equals(unit);
    }

    private static boolean isFinal(Mark mark) {
        return mark == null || mark.isSettled();
    }

    private Mark settled(Turn turn, String point, Mark mark, String unit) {
        if (!awaits(mark, unit)) {
            return mark;
        }
        return clocks.settled(mark.edge())
                .map(
                        stamp -> {
                            Mark last = mark.settledAt(stamp);
                            tell(turn, point, last);
                            return last;
                        })
                .orElse(mark);
    }

    private void tell(Turn turn, String point, Mark mark) {
        String words = mark.source().name();
        String station = turn.station.id();
        out.conclude(
                new Fact(
                        FactKind.MARK_SETTLED,
                        turn.number,
                        station,
                        point,
                        mark.settled(),
                        mark.settled().micros() - mark.stamp().micros(),
                        words));
    }

    /** Whether a time would be shown otherwise than before, by any way of rounding. */
    private boolean showsOtherwise(long before, long after) {
        long half = stepMicros / 2;
        return before / stepMicros != after / stepMicros
                || (before + half) / stepMicros != (after + half) / stepMicros;
    }
}
