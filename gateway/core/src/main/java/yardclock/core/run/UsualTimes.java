package yardclock.core.run;

import yardclock.core.course.StationTiming;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What is usual at one station today: the plan's plausible window, narrowed by the splits people
 * confirmed so far.
 *
 * <p>From ten splits on the window reaches five robust standard deviations (the median absolute
 * deviation times 1.4826, as for a normal spread) to either side of today's median, and never less
 * than half the median down and three times the median up: who is worn out takes long. It is never
 * wider than the plan's. How many and how far is our choice: it is meant to find a wrong finish,
 * not a slow candidate. Bounded by the candidates of a day. Belongs to the state's thread.
 */
final class UsualTimes {
    private static final int ENOUGH = 10;
    private static final int DEVIATIONS = 5;
    private static final long MAD_TO_SD_PER_10_000 = 14_826;

    private final StationTiming plan;
    private final Map<Turn, Long> confirmed = new LinkedHashMap<>();

    UsualTimes(StationTiming plan) {
        this.plan = plan;
    }

    /** From which to which split nothing is odd, both included. */
    record Window(long fromMicros, long toMicros) {
        boolean holds(long micros) {
            return micros >= fromMicros && micros <= toMicros;
        }
    }

    /** After a ruling, or when one was taken back: only what stands confirmed counts. */
    void ruled(Turn turn) {
        if (turn.ruled() == SplitState.CONFIRMED) {
            confirmed.put(turn, Splits.of(turn).micros());
        } else {
            confirmed.remove(turn);
        }
    }

    Window window() {
        if (confirmed.size() < ENOUGH) {
            return new Window(plan.shortestPlausibleMicros(), plan.longestPlausibleMicros());
        }
        List<Long> sorted = confirmed.values().stream().sorted().toList();
        long median = middle(sorted);
        long spread = DEVIATIONS * deviation(sorted, median);
        return new Window(
                Math.max(plan.shortestPlausibleMicros(), median - Math.max(spread, median / 2)),
                Math.min(plan.longestPlausibleMicros(), median + Math.max(spread, 3 * median)));
    }

    private static long deviation(List<Long> times, long median) {
        List<Long> off = times.stream().map(micros -> Math.abs(micros - median)).sorted().toList();
        return middle(off) * MAD_TO_SD_PER_10_000 / 10_000;
    }

    private static long middle(List<Long> ordered) {
        int half = ordered.size() / 2;
        return ordered.size() % 2 == 1
                ? ordered.get(half)
                : (ordered.get(half - 1) + ordered.get(half)) / 2;
    }

    @Override
    public String toString() {
        return confirmed.values().toString();
    }
}
