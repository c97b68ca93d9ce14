package yardclock.core.run;

/**
 * Whether somebody else stood by when a candidate started: they can be on the mat or in the beam as
 * well, and then what is seen there is not the candidate's alone. Pure, a look at the course.
 */
final class Crowd {
    private Crowd() {}

    /**
     * Asked while the candidate is still to start and later; the answer stays the same. Where
     * others do not trip the start's sensor it does not matter who stands by, and nobody is looked
     * for.
     */
    static boolean isAtStart(Turn turn, CourseRun course) {
        Mark tap = turn.startTap();
        int index = course.plan.indexOf(turn.station.id());
        boolean isCrossed = course.crossed.isCrossed(turn.station.start());
        if (tap == null || index == 0 || !isCrossed) {
            return false;
        }
        int owner =
                turn.number > 0
                        ? turn.number
                        : course.whereabouts().expectedAt(index).map(a -> a.number).orElse(0);
        long at = tap.stamp().micros();
        for (Attempt other : course.attempts.values()) {
            boolean isElse = other.number != owner && other.stationIndex >= index;
            if (isElse && isBetween(other, index, at, course)) {
                return true;
            }
        }
        return false;
    }

    /** Through with the station before, and not yet begun here. */
    private static boolean isBetween(Attempt other, int index, long atMicros, CourseRun course) {
        Turn left = other.at(course.plan.stations().get(index - 1).id());
        if (left == null || left.finish() == null || left.finish().stamp().micros() > atMicros) {
            return false;
        }
        Turn here = other.at(course.plan.stations().get(index).id());
        if (here == null) {
            return other.isOnCourse();
        }
        return here.start() != null && here.start().stamp().micros() > atMicros;
    }
}
