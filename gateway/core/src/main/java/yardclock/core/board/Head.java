package yardclock.core.board;

import java.util.List;

/**
 * What every page shows, always.
 *
 * @param frame the number of the newest journal entry this picture includes
 * @param gatewayMicros gateway time of the picture
 * @param wallMicros the wall clock at that time, microseconds since 1970, for reading only
 * @param speed exam time per real time; pages multiply by it when they let a clock run on
 * @param course running, held or stopped
 * @param courseWords why, in plain words; empty while running
 * @param holds what else holds new releases, in the order of their precedence
 * @param heat what the heat watch says
 * @param troubles standing sentences everyone must know, as "the disk is full"
 */
public record Head(
        long frame,
        long gatewayMicros,
        long wallMicros,
        int speed,
        CourseStatus course,
        String courseWords,
        List<ReleaseHold> holds,
        HeatView heat,
        List<String> troubles) {

    /**
     * One thing that holds new releases.
     *
     * @param code the refusal that a release would meet
     * @param about the team that is away, as a word; empty where nothing is to be named
     */
    public record ReleaseHold(String code, String about) {}

    /** Whether new releases are possible and anyone may move. */
    public enum CourseStatus {
        RUNNING,
        HELD,
        STOPPED
    }
}
