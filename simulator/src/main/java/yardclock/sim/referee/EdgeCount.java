package yardclock.sim.referee;

import yardclock.core.account.Cause;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.passage.EdgeKey;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;

/**
 * The journal's own edges, each looked up by itself: nothing is found by subtraction, so an edge
 * that the gateway forgot can't hide behind one it counted twice.
 *
 * @param edges distinct ones
 * @param by how many ended so, as {@code explained: crossing}
 * @param unaccounted of which the gateway does not know what became
 */
public record EdgeCount(long edges, Map<String, Long> by, long unaccounted) {
    public static EdgeCount of(List<Entry> journal, Function<EdgeKey, Optional<Cause>> causes) {
        TreeSet<EdgeKey> keys = new TreeSet<>();
        for (Entry entry : journal) {
            if (entry.input() instanceof Input.Edge edge) {
                keys.add(new EdgeKey(edge.unit(), edge.boot(), edge.seq()));
            }
        }
        Map<String, Long> by = new TreeMap<>();
        long unaccounted = 0;
        for (EdgeKey key : keys) {
            Optional<Cause> cause = causes.apply(key);
            unaccounted += cause.isEmpty() ? 1 : 0;
            cause.ifPresent(known -> by.merge(words(known), 1L, Long::sum));
        }
        return new EdgeCount(keys.size(), by, unaccounted);
    }

    private static String words(Cause cause) {
        String end = cause.disposition().word();
        return end.equals(cause.word()) ? end : end + ": " + cause.word();
    }
}
