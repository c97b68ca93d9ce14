package yardclock.core.engine;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;

/**
 * What the written rules say of rulings on splits, as plainly as can be: a split has a pile of
 * rulings. A ruling names the one it supersedes, and is taken only if that one is on top. Taking
 * the top one back uncovers the one below. A request counts once, whatever its copies. The attempt
 * is over when each pile has a ruling; over or not, its rulings may be superseded and taken back
 * until the result is told.
 *
 * <p>Written from the design's words (rulings supersede in the open, the second of two that
 * conflict is refused, each applied once); it shares nothing with the rules it is compared to.
 */
final class RulingModel {
    /** One ruling on top of others. */
    record Laid(long entry, String state) {}

    private final Map<String, List<Laid>> piles = new HashMap<>();
    private final Map<String, String> answered = new HashMap<>();
    private final Set<Long> taken = new LinkedHashSet<>();

    /** Every ruling that was ever on a pile, with its station. */
    private final Map<Long, String> ever = new HashMap<>();

    RulingModel(List<String> stations) {
        stations.forEach(station -> piles.put(station, new ArrayList<>()));
    }

    long top(String station) {
        List<Laid> pile = piles.get(station);
        return pile.isEmpty() ? -1 : pile.get(pile.size() - 1).entry();
    }

    String state(String station) {
        List<Laid> pile = piles.get(station);
        return pile.isEmpty() ? "proposed" : pile.get(pile.size() - 1).state();
    }

    boolean isOver() {
        return piles.values().stream().noneMatch(List::isEmpty);
    }

    int applied() {
        return taken.size();
    }

    /** Every entry that was taken, in their order. */
    List<Long> taken() {
        return List.copyOf(taken);
    }

    /** A ruling that decides; the answer is a refusal's code, or empty. */
    String lay(String key, long entry, String station, String state, long supersedes) {
        return once(
                key,
                () -> {
                    if (top(station) != supersedes) {
                        return top(station) < 0 ? "out-of-date" : "already-ruled";
                    }
                    piles.get(station).add(new Laid(entry, state));
                    taken.add(entry);
                    return "";
                });
    }

    /** Takes a ruling back. */
    String lift(String key, long entry, String station, long which) {
        return once(
                key,
                () -> {
                    if (!taken.contains(which) || !everOn(station, which)) {
                        return "no-such-ruling";
                    }
                    if (top(station) != which) {
                        return "out-of-date";
                    }
                    List<Laid> pile = piles.get(station);
                    pile.remove(pile.size() - 1);
                    taken.add(entry);
                    return "";
                });
    }

    private boolean everOn(String station, long which) {
        return station.equals(ever.get(which));
    }

    private String once(String key, Supplier<String> judge) {
        if (!answered.containsKey(key)) {
            answered.put(key, judge.get());
            piles.forEach((station, pile) -> pile.forEach(l -> ever.put(l.entry(), station)));
        }
        return answered.get(key);
    }
}
