package yardclock.core.account;

import java.util.Map;
import java.util.TreeMap;

/**
 * A cause for each number of one boot, neighbours with the same cause as one run: a sensor that
 * rattles all day costs no more than one that is tripped once.
 */
final class Runs {
    private final TreeMap<Long, Run> runs = new TreeMap<>();

    private record Run(long to, Cause cause) {}

    /** Null when the number has none. */
    Cause of(long seq) {
        Map.Entry<Long, Run> run = runs.floorEntry(seq);
        return run == null || run.getValue().to() < seq ? null : run.getValue().cause();
    }

    void set(long seq, Cause cause) {
        Cause before = of(seq);
        if (before == cause) {
            return;
        }
        if (before != null) {
            takeOut(seq);
        }
        long from = seq;
        long to = seq;
        Map.Entry<Long, Run> left = runs.lowerEntry(seq);
        if (left != null && left.getValue().equals(new Run(seq - 1, cause))) {
            from = left.getKey();
        }
        Run right = runs.get(seq + 1);
        if (right != null && right.cause() == cause) {
            to = right.to();
            runs.remove(seq + 1);
        }
        runs.put(from, new Run(to, cause));
    }

    private void takeOut(long seq) {
        Map.Entry<Long, Run> run = runs.floorEntry(seq);
        long from = run.getKey();
        Run whole = run.getValue();
        runs.remove(from);
        if (from < seq) {
            runs.put(from, new Run(seq - 1, whole.cause()));
        }
        if (seq < whole.to()) {
            runs.put(seq + 1, new Run(whole.to(), whole.cause()));
        }
    }

    @Override
    public String toString() {
        return runs.toString();
    }
}
