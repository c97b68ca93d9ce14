package yardclock.core.board;

import yardclock.core.result.OutcomeKind;
import yardclock.core.result.Results;
import yardclock.core.ruling.Refusal;
import yardclock.core.run.Attempt;
import yardclock.core.run.CourseRun;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Makes the public board's frame and the leaderboard's. */
public final class BoardProjection {
    /** How much later than planned a call may come, for each place in the queue [choice]. */
    private static final long LATER_PERCENT = 20;

    /** What the public is told, whatever holds new releases. */
    private static final List<Head.ReleaseHold> HELD =
            List.of(new Head.ReleaseHold(Refusal.COURSE_HELD.code(), ""));

    private final Picture picture;
    private final CourseRun course;

    public BoardProjection(Picture picture) {
        this.picture = picture;
        this.course = picture.course();
    }

    public BoardFrame board() {
        List<BoardFrame.Line> lines = new ArrayList<>();
        int place = 0;
        for (Attempt attempt : course.attempts()) {
            boolean waits = attempt.phase() == Attempt.Phase.WAITING;
            place += waits ? 1 : 0;
            lines.add(line(attempt, waits ? place : 0));
        }
        return new BoardFrame(publicHead(), lines, times());
    }

    /** Reasons for a hold are for staff; that there is one, or a trouble, is for everyone. */
    private Head publicHead() {
        Head head = picture.head();
        return new Head(
                head.frame(),
                head.gatewayMicros(),
                head.wallMicros(),
                head.speed(),
                head.course(),
                "",
                head.holds().isEmpty() ? List.of() : HELD,
                head.heat(),
                head.troubles());
    }

    private BoardFrame.Line line(Attempt attempt, int place) {
        long earliest = -1;
        long latest = -1;
        if (place > 0) {
            long interval = course.plan().day().releaseIntervalMicros();
            long first = Math.max(picture.moment().gatewayMicros(), course.notBeforeMicros());
            earliest = first + (place - 1) * interval;
            latest = earliest + interval / 2 + place * interval * LATER_PERCENT / 100;
        }
        return new BoardFrame.Line(
                attempt.number(), attempt.group(), status(attempt), place, earliest, latest);
    }

    private static String status(Attempt attempt) {
        return switch (attempt.phase()) {
            case WAITING -> "waiting";
            case RELEASED -> "called";
            case WALKING, AT_STATION -> "on-course";
            case FINISHED, DONE -> "course-done";
        };
    }

    private List<BoardFrame.Time> times() {
        if (!course.plan().day().timesOnBoard()) {
            return List.of();
        }
        return course.attempts().stream()
                .filter(a -> a.isDone() && a.isTold())
                .map(a -> Results.headline(course.plan(), a))
                .filter(r -> r.officialMicros() >= 0)
                .map(r -> new BoardFrame.Time(r.number(), r.display(), true))
                .toList();
    }

    /** Where the plan makes it public, a result stands on it only after it was told. */
    public LeaderboardFrame leaderboard() {
        boolean isPublic = course.plan().day().leaderboardPublic();
        List<Results.Headline> timed =
                course.attempts().stream()
                        .filter(a -> a.isDone() || a.phase() == Attempt.Phase.FINISHED)
                        .filter(a -> a.isTold() || !isPublic)
                        .map(a -> Results.headline(course.plan(), a))
                        .sorted(BY_TIME)
                        .toList();
        List<LeaderboardFrame.Row> rows = new ArrayList<>();
        for (Results.Headline result : timed) {
            rows.add(row(result, rank(result, rows)));
        }
        return new LeaderboardFrame(isPublic ? publicHead() : picture.head(), rows);
    }

    private static final Comparator<Results.Headline> BY_TIME =
            Comparator.comparing((Results.Headline r) -> !isRanked(r))
                    .thenComparingLong(Results.Headline::officialMicros)
                    .thenComparingInt(Results.Headline::number);

    /** The time of a void attempt is kept, and compared with nobody's. */
    private static boolean isRanked(Results.Headline result) {
        return result.officialMicros() >= 0
                && !result.outcome().equals(OutcomeKind.VOID_RE_RUN.word());
    }

    private static int rank(Results.Headline result, List<LeaderboardFrame.Row> before) {
        if (!isRanked(result)) {
            return 0;
        }
        if (before.isEmpty()) {
            return 1;
        }
        LeaderboardFrame.Row last = before.get(before.size() - 1);
        return last.display().equals(result.display()) ? last.rank() : before.size() + 1;
    }

    private static LeaderboardFrame.Row row(Results.Headline result, int rank) {
        return new LeaderboardFrame.Row(
                rank,
                result.number(),
                result.display(),
                result.officialMicros(),
                result.lowerMicros(),
                result.upperMicros(),
                result.decision(),
                result.outcome());
    }
}
