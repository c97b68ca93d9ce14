package yardclock.core.time;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * What ties time lines to each other: for any two of them the shift that every tie allows.
 *
 * <p>Each counter that ran on over a restart says between which limits the shift of two lines lies.
 * What all say together about any two lines, directly or by way of others, is the shortest path in
 * a net of such limits (Dechter, Meiri, Pearl: Temporal constraint networks, Artificial
 * Intelligence 49, 1991, section 2). More ties never widen it.
 *
 * <p>Where the ties of two lines exclude each other, those two are not tied. Owned by one thread;
 * bounded by {@link #LINES_KEPT} lines.
 */
final class LineTies {
    /** A board that restarts more often in a day is replaced, not reckoned with. */
    static final int LINES_KEPT = 16;

    /** A counter that was alone for longer than this tells nothing worth having. */
    static final long GAP_MICROS_MAX = 86_400_000_000L;

    private static final long PPB = 1_000_000_000L;
    private static final long FAR = Long.MAX_VALUE / 4;

    private final TreeMap<Pair, TreeMap<String, Shift>> ties = new TreeMap<>();
    private long[][] most;
    private int oldest;

    private record Pair(int from, int to) implements Comparable<Pair> {
        @Override
        public int compareTo(Pair other) {
            return to == other.to
                    ? Integer.compare(from, other.from)
                    : Integer.compare(to, other.to);
        }
    }

    /**
     * The shift of two lines by one counter's last exchange on the one and its first on the other.
     * Both lines' rates against the counter are allowed for in between: the boards may differ.
     * Empty when the counter ran backwards or was alone too long.
     */
    static Optional<Shift> shift(ClockEnd before, ClockEnd after) {
        long ticks = after.tick().micros() - before.tick().micros();
        if (ticks < 0 || ticks > GAP_MICROS_MAX) {
            return Optional.empty();
        }
        long slow = Math.min(before.slowestPpb(), after.slowestPpb());
        long fast = Math.max(before.fastestPpb(), after.fastestPpb());
        long least = ticks + Math.floorDiv(ticks * slow, PPB);
        long most = ticks - Math.floorDiv(-ticks * fast, PPB);
        return Optional.of(
                new Shift(
                        after.stamp().lowerMicros() - before.stamp().upperMicros() - most,
                        after.stamp().upperMicros() - before.stamp().lowerMicros() - least));
    }

    /** Notes what a source says of two lines, in place of what it said of them before. */
    void put(String source, int from, int to, Shift shift) {
        Map<String, Shift> said = ties.computeIfAbsent(new Pair(from, to), p -> new TreeMap<>());
        if (!shift.equals(said.put(source, shift))) {
            most = null;
        }
    }

    /** The source was wrong, or says nothing any more. */
    void remove(String source, int to) {
        for (Map.Entry<Pair, TreeMap<String, Shift>> each : ties.entrySet()) {
            if (each.getKey().to() == to && each.getValue().remove(source) != null) {
                most = null;
            }
        }
    }

    /** Lets go what is older than the lines that are kept. */
    void forgetBefore(int line) {
        oldest = line;
        ties.keySet().removeIf(pair -> pair.from() < line);
        most = null;
    }

    /** How many sources tie two lines directly. */
    int sources(int from, int to) {
        return ties.getOrDefault(new Pair(from, to), new TreeMap<>()).size();
    }

    /** Whether what is said of two lines directly can't all be true. */
    boolean isContradicted(int from, int to) {
        TreeMap<String, Shift> said = ties.get(new Pair(from, to));
        return said != null && !said.isEmpty() && intersection(said).isEmpty();
    }

    private static Optional<Shift> intersection(Map<String, Shift> said) {
        long lower = said.values().stream().mapToLong(Shift::lowerMicros).max().orElse(-FAR);
        long upper = said.values().stream().mapToLong(Shift::upperMicros).min().orElse(FAR);
        return lower > upper ? Optional.empty() : Optional.of(new Shift(lower, upper));
    }

    Optional<Shift> between(int from, int to) {
        if (from == to) {
            return Optional.of(Shift.NONE);
        }
        solve();
        int i = from - oldest;
        int j = to - oldest;
        boolean isKnown = i >= 0 && j >= 0 && i < most.length && j < most.length;
        if (!isKnown || most[i][j] >= FAR || most[i][i] < 0 || most[j][j] < 0) {
            return Optional.empty();
        }
        return Optional.of(new Shift(-most[j][i], most[i][j]));
    }

    /** The most by which each line can be ahead of each other, over all paths. */
    private void solve() {
        if (most != null) {
            return;
        }
        int lines = ties.isEmpty() ? 0 : ties.lastKey().to() + 1 - oldest;
        most = new long[lines][lines];
        for (int i = 0; i < lines; i++) {
            Arrays.fill(most[i], FAR);
            most[i][i] = 0;
        }
        ties.forEach(
                (pair, said) -> {
                    if (!said.isEmpty()) {
                        intersection(said).ifPresent(shift -> enter(pair, shift));
                    }
                });
        for (int via = 0; via < lines; via++) {
            for (int i = 0; i < lines; i++) {
                for (int j = 0; j < lines; j++) {
                    if (most[i][via] < FAR && most[via][j] < FAR) {
                        most[i][j] = Math.min(most[i][j], most[i][via] + most[via][j]);
                    }
                }
            }
        }
    }

    private void enter(Pair pair, Shift shift) {
        most[pair.from() - oldest][pair.to() - oldest] = shift.upperMicros();
        most[pair.to() - oldest][pair.from() - oldest] = -shift.lowerMicros();
    }

    @Override
    public String toString() {
        return ties.toString();
    }
}
