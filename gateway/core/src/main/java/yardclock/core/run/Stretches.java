package yardclock.core.run;

import yardclock.core.time.Shift;
import yardclock.core.time.TimeLines;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The stretches of a run that count, between its start, its credited holds and its finish, by the
 * gateway's time lines at their ends.
 *
 * <p>A restart during a credited hold costs nothing, tied or not: the stretches beside it lie on a
 * line each.
 */
record Stretches(List<Stretch> all) {
    record Stretch(int from, int to) {}

    static Stretches of(Attempt attempt, Mark start, Mark finish) {
        if (attempt.holds().isEmpty()) {
            return new Stretches(List.of(new Stretch(start.line(), finish.line())));
        }
        List<Stretch> all = new ArrayList<>();
        int from = start.line();
        for (Hold hold : attempt.holds()) {
            if (Credit.within(hold, start, finish) > 0) {
                boolean isBegunBefore = hold.in().stamp().micros() <= start.best().micros();
                all.add(new Stretch(from, isBegunBefore ? start.line() : hold.in().line()));
                boolean isOverAfter = hold.out().stamp().micros() >= finish.best().micros();
                from = isOverAfter ? finish.line() : hold.out().line();
            }
        }
        all.add(new Stretch(from, finish.line()));
        return new Stretches(all);
    }

    /** By how much their ends' lines are ahead of their beginnings', taken together. */
    Optional<Shift> shift(TimeLines lines) {
        Optional<Shift> sum = Optional.of(Shift.NONE);
        for (Stretch stretch : all) {
            Optional<Shift> next = lines.shift(stretch.from, stretch.to);
            sum =
                    sum.isPresent() && next.isPresent()
                            ? Optional.of(sum.get().plus(next.get()))
                            : Optional.empty();
        }
        return sum;
    }

    /** What a shift of theirs leaves open now that instants were moved. */
    Shift apart(TimeLines lines, Shift shift) {
        long moved = 0;
        for (Stretch stretch : all) {
            moved += lines.carriedMicros(stretch.from) - lines.carriedMicros(stretch.to);
        }
        return shift.less(moved);
    }
}
