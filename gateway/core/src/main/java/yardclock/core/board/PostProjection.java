package yardclock.core.board;

import yardclock.core.course.Criterion;
import yardclock.core.course.Station;
import yardclock.core.result.Results;
import yardclock.core.run.Attempt;
import yardclock.core.run.CourseRun;
import yardclock.core.run.Movements;
import yardclock.core.run.StationRun;
import yardclock.core.run.Turn;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** Makes one proctor's frame. Splits appear only once the course is done. */
public final class PostProjection {
    private static final int TRAY_LISTED = 8;

    private final Picture picture;
    private final CourseRun course;
    private final String device;
    private final PostSplits splits;

    public PostProjection(Picture picture, String device) {
        this.picture = picture;
        this.course = picture.course();
        this.device = device;
        this.splits = new PostSplits(picture);
    }

    public PostFrame frame() {
        Optional<Attempt> attempt =
                course.whereabouts().beside(device).or(() -> course.whereabouts().toTell(device));
        Tray tray = Tray.of(picture, TRAY_LISTED);
        return new PostFrame(
                picture.head(),
                device,
                picture.person(device),
                attempt.map(this::candidate).orElse(null),
                tray.listed(),
                tray.rest());
    }

    private PostFrame.Candidate candidate(Attempt attempt) {
        boolean isThrough = attempt.phase() == Attempt.Phase.FINISHED || attempt.isDone();
        return new PostFrame.Candidate(
                attempt.number(),
                Phases.word(attempt),
                attempt.revision(),
                canGiveStart(attempt),
                course.isSignalPending(attempt) ? attempt.signalAskedMicros() : -1,
                attempt.startsAgain(),
                isThrough ? null : at(attempt, attempt.stationIndex()),
                isThrough ? List.of() : ahead(attempt),
                calls(attempt),
                isThrough ? attempt.turns().stream().map(splits::of).toList() : List.of(),
                missing(attempt),
                attempt.isDone() ? Results.standing(course.plan(), attempt).outcome() : "",
                attempt.isTold());
    }

    /** Of the station they were at last, until the next one begins. */
    private static List<PostFrame.Missing> missing(Attempt attempt) {
        boolean isOver = attempt.turns().isEmpty() || attempt.isDone();
        Turn last = isOver ? null : attempt.turns().get(attempt.turns().size() - 1);
        if (last == null || last.isRuled() || !last.isFinishKnown()) {
            return List.of();
        }
        return last.station().checkpoints().stream()
                .filter(checkpoint -> !last.isSeen(checkpoint))
                .map(
                        checkpoint ->
                                new PostFrame.Missing(
                                        last.station().id(),
                                        checkpoint.id(),
                                        checkpoint.name(),
                                        last.seen(checkpoint),
                                        checkpoint.count()))
                .toList();
    }

    private boolean canGiveStart(Attempt attempt) {
        return attempt.phase() == Attempt.Phase.RELEASED
                && !attempt.isHeld()
                && course.status() != CourseRun.Course.STOPPED
                && Movements.startsBySignal(course.plan().stations().get(0))
                && !course.isSignalPending(attempt);
    }

    private static List<PostFrame.Warning> calls(Attempt attempt) {
        return attempt.calls().stream()
                .map(c -> new PostFrame.Warning(c.station(), c.criterion(), c.fault()))
                .toList();
    }

    private List<PostFrame.At> ahead(Attempt attempt) {
        return IntStream.range(attempt.stationIndex() + 1, course.plan().stations().size())
                .mapToObj(index -> at(attempt, index))
                .toList();
    }

    private PostFrame.At at(Attempt attempt, int index) {
        Station station = course.plan().stations().get(index);
        StationRun run = course.station(station.id()).orElseThrow();
        Optional<Turn> turn = attempt.turnAt(station.id());
        return new PostFrame.At(
                station.id(),
                index,
                course.plan().stations().size(),
                station.name(),
                station.task(),
                station.finish().words(),
                StationView.State.valueOf(run.state().name()),
                turn.map(Turn::isStarted).orElse(false),
                station.finish().isJudged(),
                turn.map(Turn::allSeen).orElse(false),
                station.checkpoints().stream()
                        .map(c -> PostSplits.point(c, turn.orElse(null)))
                        .toList(),
                station.criteria().stream().map(c -> criterion(attempt, station, c)).toList());
    }

    private static PostFrame.CriterionView criterion(
            Attempt attempt, Station station, Criterion criterion) {
        return new PostFrame.CriterionView(
                criterion.id(),
                criterion.kind().word(),
                criterion.words(),
                (int) attempt.warnings(station.id(), criterion.id()),
                (int) attempt.faults(station.id(), criterion.id()));
    }
}
