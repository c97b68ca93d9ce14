package yardclock.core.board;

import java.util.List;

/**
 * The public board. It has no outcome, and no status from which one follows, before it was told;
 * failed, withdrawn and passed all read course done.
 */
public record BoardFrame(Head head, List<Line> lines, List<Time> times) {

    /**
     * @param status waiting, called, on-course or course-done
     * @param place the place in the queue from 1, or 0 when not waiting
     * @param earliestMicros gateway time of the earliest call, −1 when not waiting
     * @param latestMicros gateway time of the latest call
     */
    public record Line(
            int number,
            int group,
            String status,
            int place,
            long earliestMicros,
            long latestMicros) {}

    /** A time, when the plan publishes times and the result was told. */
    public record Time(int number, String display, boolean provisional) {}
}
