package yardclock.core.run;

import yardclock.core.account.Cause;
import yardclock.core.account.TrayEdge;
import yardclock.core.passage.EdgeKey;
import yardclock.core.passage.TimedEdge;

import java.util.List;

/**
 * Moves a passage to the turn a person assigned it to, and back when that is withdrawn: out of the
 * turn that held it or out of the tray, so that it is evidence in one place only.
 */
final class Assigning {
    private final CourseRun course;

    Assigning(CourseRun course) {
        this.course = course;
    }

    /** The turn it was taken out of; null when that was the tray, or the very same turn. */
    Turn move(EdgeKey key, Turn to, String point, long entry) {
        PassageAt found = PassageAt.find(course, key).orElseThrow();
        Turn from = found.from();
        if (from == null) {
            course.account.handOut(key);
            to.evidence.give(List.of(found.edge()));
            to.assigned.add(
                    entry, new Assigned.Passage(point, key, List.of(key), null, found.kept()));
            return null;
        }
        List<EdgeKey> keys =
                from.evidence.block(key, from.station.restState(found.edge().sensor()));
        to.evidence.give(from.evidence.take(keys));
        to.assigned.add(entry, new Assigned.Passage(point, key, keys, from, null));
        if (from == to) {
            return null;
        }
        from.letGo(mark -> mark.edge() != null && keys.contains(mark.edge().key()));
        from.touch();
        return from;
    }

    /** Where it came from, or to the tray when that turn is not kept any more. */
    void moveBack(Turn turn, Assigned.Passage passage) {
        List<TimedEdge> edges = turn.evidence.take(passage.edges());
        turn.letGo(mark -> mark.edge() != null && passage.edges().contains(mark.edge().key()));
        Turn from = passage.from();
        if (from != null && isKept(from)) {
            from.evidence.give(edges);
            from.touch();
            return;
        }
        Cause cause = from == null ? passage.kept().cause() : Cause.TOO_LATE;
        for (TimedEdge edge : edges) {
            if (edge.key().equals(passage.marks())) {
                course.account.putBack(new TrayEdge(turn.station.id(), edge, cause));
            }
        }
    }

    private boolean isKept(Turn turn) {
        return course.stations.get(turn.station.id()).turns().contains(turn);
    }
}
