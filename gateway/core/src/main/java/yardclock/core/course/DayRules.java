package yardclock.core.course;

/**
 * How the day is run.
 *
 * @param timesOnBoard whether the public board shows times
 * @param leaderboardPublic whether the leaderboard is public
 * @param workWatts the metabolic rate the heat watch reckons with
 */
public record DayRules(
        long releaseIntervalMicros,
        StartKind startKind,
        ProctorMode proctors,
        AfterFault afterFault,
        long maxHoldCreditOneMicros,
        long maxHoldCreditAllMicros,
        boolean timesOnBoard,
        boolean leaderboardPublic,
        Text startWords,
        Text stopSignal,
        int workWatts) {

    /** What starts the clock; one choice for all candidates. */
    public enum StartKind {
        SIGNAL,
        FIRST_MOVEMENT
    }

    /** Whether a proctor walks with a candidate or stands at a station. */
    public enum ProctorMode {
        WITH_CANDIDATE,
        AT_STATION,
        MIXED
    }

    /** What happens to a candidate after a fault in the middle of the course. */
    public enum AfterFault {
        STOP_NOW,
        MAY_FINISH
    }
}
