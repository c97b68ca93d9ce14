package yardclock.core.course;

/**
 * How the day is run.
 *
 * @param timesOnBoard whether the public board shows times
 * @param leaderboardPublic whether the leaderboard is public
 * @param workWatts the metabolic rate the heat watch reckons with
 * @param proofRun advised where an older plan says nothing
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
        int workWatts,
        ProofRule proofRun) {
    public DayRules {
        proofRun = proofRun == null ? ProofRule.ADVISED : proofRun;
    }

    /** The same rules where nobody has to walk the course first. */
    public DayRules withoutProofRun() {
        return new DayRules(
                releaseIntervalMicros,
                startKind,
                proctors,
                afterFault,
                maxHoldCreditOneMicros,
                maxHoldCreditAllMicros,
                timesOnBoard,
                leaderboardPublic,
                startWords,
                stopSignal,
                workWatts,
                ProofRule.ADVISED);
    }

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

    /** Whether a proof run signed by two must come before the first release. */
    public enum ProofRule {
        ADVISED,
        REQUIRED
    }

    /** What happens to a candidate after a fault in the middle of the course. */
    public enum AfterFault {
        STOP_NOW,
        MAY_FINISH
    }
}
