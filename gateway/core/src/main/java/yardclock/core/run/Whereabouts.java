package yardclock.core.run;

import java.util.Optional;
import java.util.function.Predicate;

/** Who is where on the course, and who comes next: questions that change nothing. */
public final class Whereabouts {
    private final CourseRun course;

    Whereabouts(CourseRun course) {
        this.course = course;
    }

    /** The candidate who is next to be released. */
    public Optional<Attempt> next() {
        for (Attempt attempt : course.attempts.values()) {
            if (attempt.phase == Attempt.Phase.WAITING) {
                return Optional.of(attempt);
            }
        }
        return Optional.empty();
    }

    /** The candidate beside a proctor's device, on the course or with splits to rule on. */
    public Optional<Attempt> beside(String device) {
        return first(
                a ->
                        (a.isOnCourse() || a.phase == Attempt.Phase.FINISHED)
                                && a.proctorDevice.equals(device));
    }

    /** The candidate this device had last and whose result is not told yet. */
    public Optional<Attempt> toTell(String device) {
        Attempt last = null;
        for (Attempt attempt : course.attempts.values()) {
            boolean isToTell =
                    attempt.isDone() && !attempt.told && attempt.proctorDevice.equals(device);
            if (isToTell && (last == null || attempt.releaseOrder > last.releaseOrder)) {
                last = attempt;
            }
        }
        return Optional.ofNullable(last);
    }

    /** Whoever comes to this station next, in the order of release: nobody overtakes. */
    Optional<Attempt> expectedAt(int index) {
        return first(a -> isExpected(a, index));
    }

    /** Of those meant, who was released first. Screens and edges ask for it all day. */
    private Optional<Attempt> first(Predicate<Attempt> isMeant) {
        Attempt first = null;
        for (Attempt attempt : course.attempts.values()) {
            boolean isSooner = first == null || attempt.releaseOrder < first.releaseOrder;
            if (isSooner && isMeant.test(attempt)) {
                first = attempt;
            }
        }
        return Optional.ofNullable(first);
    }

    boolean isExpected(Attempt attempt, int index) {
        return attempt.isOnCourse()
                && attempt.phase != Attempt.Phase.AT_STATION
                && attempt.stationIndex == index;
    }

    /** Whether this candidate, and nobody before them, is awaited at the station. */
    public boolean isExpectedAt(Attempt attempt, StationRun run) {
        return expectedAt(course.plan.indexOf(run.station().id()))
                .filter(a -> a == attempt)
                .isPresent();
    }

    /** Somebody's turn is under way there, or somebody comes next and may have started already. */
    public boolean isTaken(StationRun run) {
        boolean isAwaited = expectedAt(course.plan.indexOf(run.station.id())).isPresent();
        return run.state == StationRun.State.IN_USE
                || run.state == StationRun.State.READY && isAwaited;
    }

    /** The first station is ready and nobody is already sent to it. */
    public boolean isFirstFree() {
        return course.stationAt(0).state == StationRun.State.READY && expectedAt(0).isEmpty();
    }

    /** Whether nobody is on the course who is at this station, or has still to come by it. */
    public boolean isClearOf(StationRun run) {
        int index = course.plan.indexOf(run.station.id());
        return run.state != StationRun.State.IN_USE
                && course.attempts.values().stream()
                        .noneMatch(a -> a.isOnCourse() && a.stationIndex <= index);
    }

    /** Whether nobody is on the course. */
    public boolean isEmpty() {
        return course.attempts.values().stream().noneMatch(Attempt::isOnCourse);
    }

    /** Whether nobody is at a station this unit serves, or has still to come by one. */
    public boolean isClearOf(String unit) {
        int last =
                course.stations.values().stream()
                        .filter(run -> run.uses(unit))
                        .mapToInt(run -> course.plan.indexOf(run.station().id()))
                        .max()
                        .orElse(-1);
        return course.attempts.values().stream()
                .noneMatch(attempt -> attempt.isOnCourse() && attempt.stationIndex <= last);
    }
}
