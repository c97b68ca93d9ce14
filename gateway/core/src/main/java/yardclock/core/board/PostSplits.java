package yardclock.core.board;

import yardclock.core.course.Checkpoint;
import yardclock.core.course.Station;
import yardclock.core.course.Text;
import yardclock.core.passage.TimedEdge;
import yardclock.core.run.Mark;
import yardclock.core.run.Ruling;
import yardclock.core.run.Split;
import yardclock.core.run.SplitReadings;
import yardclock.core.run.Splits;
import yardclock.core.run.Turn;
import yardclock.core.run.TurnEvidence;
import yardclock.core.run.TurnFile;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Shows a split to the person who rules on it: what it is, what it rests on, what was ruled. */
final class PostSplits {
    private static final Text LATE =
            new Text(
                    "a reading came after the ruling and speaks against it; the ruling stands",
                    "una lectura llegó después de la decisión y la contradice; la decisión vale");

    private final Picture picture;

    PostSplits(Picture picture) {
        this.picture = picture;
    }

    /** Any turn that has an owner. */
    PostFrame.Split of(Turn turn) {
        Split split = Splits.of(turn);
        TurnFile file = new TurnFile(turn);
        List<SplitReadings.SplitReading> readings = SplitReadings.of(turn);
        return new PostFrame.Split(
                split.station(),
                turn.station().name(),
                split.state().word(),
                split.clean(),
                split.micros(),
                split.lowerMicros(),
                split.upperMicros(),
                split.handMicros(),
                split.why(),
                split.label().word(),
                readings.stream().map(PostSplits::reading).toList(),
                late(turn),
                picture.course().station(split.station()).map(r -> r.isTied(turn)).orElse(false),
                turn.station().checkpoints().stream().map(c -> point(c, turn)).toList(),
                file.standing().map(PostSplits::ruled).orElse(null),
                marks(turn, readings),
                onEvidence(file));
    }

    static PostFrame.Point point(Checkpoint checkpoint, Turn turn) {
        return new PostFrame.Point(
                checkpoint.id(),
                checkpoint.name(),
                turn == null ? 0 : turn.seen(checkpoint),
                checkpoint.count(),
                checkpoint.trigger().isJudged());
    }

    private static PostFrame.Reading reading(SplitReadings.SplitReading reading) {
        return new PostFrame.Reading(
                reading.micros(), reading.lowerMicros(), reading.upperMicros(), reading.words());
    }

    private static PostFrame.Late late(Turn turn) {
        return turn.isRuled() && turn.hasLateEvidence()
                ? new PostFrame.Late(turn.lateMicros(), LATE)
                : null;
    }

    private static PostFrame.Ruled ruled(Ruling ruling) {
        return new PostFrame.Ruled(
                ruling.entry(),
                ruling.act(),
                ruling.what().reason(),
                ruling.what().words(),
                ruling.by().person(),
                ruling.by().role(),
                ruling.by().atMicros());
    }

    private static List<PostFrame.Ruled> onEvidence(TurnFile file) {
        return file.all().stream()
                .filter(r -> r.isStanding() && r.state() == null && file.canBeWithdrawn(r))
                .map(PostSplits::ruled)
                .toList();
    }

    /** A mark and the point it stands for. */
    private record Pointed(String point, Mark mark) {}

    /** The marks that stand, and those of the other readings. */
    private List<PostFrame.MarkView> marks(Turn turn, List<SplitReadings.SplitReading> readings) {
        List<Pointed> all = new ArrayList<>();
        all.add(new Pointed("start", turn.start()));
        all.add(new Pointed("finish", turn.finish()));
        for (SplitReadings.SplitReading reading : readings) {
            all.add(new Pointed("start", reading.start()));
            all.add(new Pointed("finish", reading.finish()));
        }
        Map<String, List<Mark>> seen = TurnEvidence.of(turn).checkpoints();
        for (Checkpoint point : turn.station().checkpoints()) {
            for (Mark mark : seen.getOrDefault(point.id(), List.of())) {
                all.add(new Pointed(point.id(), mark));
            }
        }
        return all.stream()
                .filter(each -> each.mark() != null)
                .map(each -> view(turn.station(), each))
                .distinct()
                .sorted(Comparator.comparingLong(PostFrame.MarkView::atMicros))
                .toList();
    }

    private PostFrame.MarkView view(Station station, Pointed pointed) {
        TimedEdge edge = pointed.mark().edge();
        return new PostFrame.MarkView(
                pointed.point(),
                Points.name(station, pointed.point()),
                pointed.mark().best().micros(),
                edge == null ? null : picture.sensorName(edge.sensor()),
                edge == null ? null : edge.key());
    }
}
