package yardclock.app.pins;

import yardclock.core.board.Head;

/**
 * What lamps and horn can say of the day.
 *
 * @param isHeld whether anything holds new releases; also while everybody is stopped
 * @param level the heat watch's, 0 to 4; −1 for unknown
 */
record YardSignal(boolean isStopped, boolean isHeld, int level) {
    static YardSignal of(Head head) {
        boolean isStopped = head.course() == Head.CourseStatus.STOPPED;
        boolean isHeld = head.course() != Head.CourseStatus.RUNNING || !head.holds().isEmpty();
        return new YardSignal(isStopped, isHeld, head.heat().level());
    }
}
