package yardclock.core.run;

import yardclock.core.account.TrayEdge;
import yardclock.core.course.Station;
import yardclock.core.passage.EdgeKey;
import yardclock.core.passage.TimedEdge;

import java.util.Optional;

/**
 * A passage by the edge that names it, and where it lies: as evidence in a turn, or in the tray.
 *
 * @param from the turn that holds it; null when it lies in the tray
 * @param kept as it lies in the tray; null when a turn holds it
 */
public record PassageAt(TimedEdge edge, Turn from, TrayEdge kept) {
    /** Empty for an edge that no turn holds and that is not in the tray. */
    public static Optional<PassageAt> find(CourseRun course, EdgeKey key) {
        Turn holder = TurnFile.holding(course, key).map(TurnFile::turn).orElse(null);
        if (holder != null) {
            return holder.evidence.edge(key).map(edge -> new PassageAt(edge, holder, null));
        }
        return course.account.tray().stream()
                .filter(kept -> kept.edge().key().equals(key))
                .findFirst()
                .map(kept -> new PassageAt(kept.edge(), null, kept));
    }

    public Optional<Turn> holder() {
        return Optional.ofNullable(from);
    }

    /** The ruling that struck it and stands. */
    public Optional<Ruling> strike() {
        return holder().flatMap(turn -> new TurnFile(turn).strikeOf(edge.key()));
    }

    /** Whether the sensor that saw it is one of that point's. */
    public boolean canMark(Station station, String point) {
        return station.pointsOf(edge.sensor()).contains(point);
    }

    /** Not before the candidate was sent, and start and finish in their order. */
    public boolean isPlausible(Turn turn, String point) {
        long micros = edge.stamp().micros();
        Mark start = turn.start();
        Mark finish = turn.finish();
        boolean isBeforeStart = start != null && micros <= start.stamp().micros();
        boolean isAfterFinish = finish != null && micros >= finish.stamp().micros();
        boolean isInOrder =
                switch (point) {
                    case TurnJudge.START -> !isAfterFinish;
                    case TurnJudge.FINISH -> !isBeforeStart;
                    default -> true;
                };
        return isInOrder && micros >= turn.owner.releasedMicros();
    }
}
