package yardclock.core.run;

import java.util.Comparator;
import java.util.Optional;

/** Who is where on the course, and who comes next: questions that change nothing. */
public final class Whereabouts {
    private final CourseRun course;

    Whereabouts(CourseRun course) {
        this.course = course;
    }

    /** The candidate who is next to be released. */
    public Optional<Attempt> next() {
        return course.attempts.values().stream()
                .filter(a -> a.phase == Attempt.Phase.WAITING)
                .findFirst();
    }

    /** The candidate beside a proctor's device, on the course or with splits to rule on. */
    public Optional<Attempt> beside(String device) {
        return course.attempts.values().stream()
                .filter(a -> a.isOnCourse() || a.phase == Attempt.Phase.FINISHED)
                .filter(a -> a.proctorDevice.equals(device))
                .min(Comparator.comparingLong(a -> a.releaseOrder));
    }

    /** The candidate this device had last and whose result is not told yet. */
    public Optional<Attempt> toTell(String device) {
        return course.attempts.values().stream()
                .filter(a -> a.isDone() && !a.told && a.proctorDevice.equals(device))
                .max(Comparator.comparingLong(a -> a.releaseOrder));
    }

    /** Whoever comes to this station next, in the order of release: nobody overtakes. */
    Optional<Attempt> expectedAt(int index) {
        return course.attempts.values().stream()
                .filter(a -> isExpected(a, index))
                .min(Comparator.comparingLong(a -> a.releaseOrder));
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

    /** The first station is ready and nobody is already sent to it. */
    public boolean isFirstFree() {
        return course.stationAt(0).state == StationRun.State.READY && expectedAt(0).isEmpty();
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
