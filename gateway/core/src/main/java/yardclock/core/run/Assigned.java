package yardclock.core.run;

import yardclock.core.account.TrayEdge;
import yardclock.core.ordering.Evidence;
import yardclock.core.passage.EdgeKey;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The passages that people assigned to one turn. Each makes the mark of its point, whatever the
 * trigger's rule says of it; the edges themselves lie in the turn's evidence.
 */
final class Assigned {
    private final Evidence evidence;
    private final Map<Long, Passage> byEntry = new TreeMap<>();

    Assigned(Evidence evidence) {
        this.evidence = evidence;
    }

    /**
     * One passage, and where it goes back to.
     *
     * @param marks the edge that makes the mark
     * @param edges all that were moved with it
     * @param from the turn that held it; null when it lay in the tray
     * @param kept as it lay in the tray; null when a turn held it
     */
    record Passage(String point, EdgeKey marks, List<EdgeKey> edges, Turn from, TrayEdge kept) {}

    void add(long entry, Passage passage) {
        byEntry.put(entry, passage);
    }

    boolean made(long entry) {
        return byEntry.containsKey(entry);
    }

    boolean isNone() {
        return byEntry.isEmpty();
    }

    /** What an entry assigned, and does no more; empty when it assigned nothing. */
    Optional<Passage> withdraw(long entry) {
        return Optional.ofNullable(byEntry.remove(entry));
    }

    /** The mark of a point by the latest assignment; null when there is none. */
    Mark mark(String point) {
        List<Mark> marks = marks(point);
        return marks.isEmpty() ? null : marks.get(marks.size() - 1);
    }

    /** All marks of a point, in the order in which they were assigned. */
    List<Mark> marks(String point) {
        List<Mark> marks = new ArrayList<>();
        for (Passage passage : byEntry.values()) {
            if (passage.point().equals(point)) {
                evidence.edge(passage.marks()).map(Mark::automatic).ifPresent(marks::add);
            }
        }
        return marks;
    }

    /** Each with the turn it came from by its number: no turn is written within another. */
    @Override
    public String toString() {
        StringBuilder text = new StringBuilder();
        byEntry.forEach(
                (entry, p) ->
                        text.append(entry).append(p.point()).append(p.edges()).append(from(p)));
        return text.toString();
    }

    private static String from(Passage passage) {
        return passage.from() == null ? passage.kept().station() : "" + passage.from().number();
    }
}
