package yardclock.core.run;

import yardclock.core.account.Cause;
import yardclock.core.account.Disposition;
import yardclock.core.account.TrayEdge;
import yardclock.core.passage.EdgeKey;
import yardclock.core.passage.TimedEdge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Answers what became of an edge, and what lies in the tray: what turns say of their edges and what
 * was written down together. Used on the state's own thread, at one moment.
 */
public final class EdgeEnds {
    private static final Comparator<TrayEdge> NEWEST_FIRST =
            Comparator.comparing(TrayEdge::edge).reversed();

    private final CourseRun course;
    private TreeMap<EdgeKey, Cause> inTurns;

    EdgeEnds(CourseRun course) {
        this.course = course;
    }

    /** Empty for an edge that never came. */
    public Optional<Cause> of(EdgeKey key) {
        Cause inTurn = inTurns().get(key);
        Cause written = course.account.of(key).orElse(null);
        return Optional.ofNullable(first(inTurn, written));
    }

    private static Cause first(Cause one, Cause other) {
        if (one == null || other == null) {
            return one == null ? other : one;
        }
        return one.compareTo(other) <= 0 ? one : other;
    }

    private TreeMap<EdgeKey, Cause> inTurns() {
        if (inTurns == null) {
            inTurns = new TreeMap<>();
            for (StationRun run : course.stations.values()) {
                for (Turn turn : run.turns()) {
                    course.causes(turn)
                            .each()
                            .forEach((key, cause) -> inTurns.merge(key, cause, EdgeEnds::first));
                }
            }
        }
        return inTurns;
    }

    /** Passages that are nobody's, newest first. */
    public List<TrayEdge> tray() {
        List<TrayEdge> tray = new ArrayList<>();
        for (TrayEdge kept : course.account.tray()) {
            if (isStillNobodys(kept)) {
                tray.add(kept);
            }
        }
        for (StationRun run : course.stations.values()) {
            Turn turn = run.current();
            if (turn.number == 0 && !turn.evidence.all().isEmpty()) {
                course.causes(turn).tray().stream().filter(this::isStillNobodys).forEach(tray::add);
            }
        }
        tray.sort(NEWEST_FIRST);
        return tray;
    }

    /** How many passages are nobody's and too many to be listed. */
    public long trayDropped() {
        return course.account.trayDropped();
    }

    /** A ruling may have struck it, and another station's turn may have a use for it. */
    private boolean isStillNobodys(TrayEdge kept) {
        TimedEdge edge = kept.edge();
        EdgeKey key = edge.key();
        boolean isTray =
                course.account
                        .of(key)
                        .filter(cause -> cause.disposition() != Disposition.TRAY)
                        .filter(cause -> cause.compareTo(kept.cause()) < 0)
                        .isEmpty();
        return isTray
                && course.stationsOf(edge.sensor()).stream()
                        .flatMap(run -> run.turnOf(edge).stream())
                        .map(turn -> course.causes(turn).each().get(key))
                        .allMatch(cause -> cause == null || cause.compareTo(kept.cause()) >= 0);
    }
}
