package yardclock.core.board;

import yardclock.core.course.Text;
import yardclock.core.passage.EdgeKey;

import java.util.List;

/**
 * One proctor's picture. It carries no running total, no cut-off and no earlier split until the
 * course is done and the proctor gathers confirmations.
 *
 * @param candidate null while the proctor is free
 * @param tray passages that are nobody's, newest first; {@code trayRest} more are not listed
 */
public record PostFrame(
        Head head,
        String device,
        String person,
        Candidate candidate,
        List<TrayView> tray,
        int trayRest) {

    /**
     * The candidate beside the proctor.
     *
     * @param phase released, at-station, walking, held, finished or done
     * @param revision give it back as {@code basis} with a ruling
     * @param canGiveStart whether the start signal can be asked for now
     * @param signalPendingSinceMicros the start signal was asked for and has not come yet; or −1
     * @param startsAgain held until they start the station again
     * @param station null when the course is done
     * @param ahead the stations after this one in course order: a page that loses its link goes on
     *     by them
     * @param splits empty until the course is done
     * @param missing required acts not seen when the finish was, while they can be put right
     */
    public record Candidate(
            int number,
            String phase,
            long revision,
            boolean canGiveStart,
            long signalPendingSinceMicros,
            boolean startsAgain,
            At station,
            List<At> ahead,
            List<Warning> calls,
            List<Split> splits,
            List<Missing> missing,
            String result,
            boolean told) {}

    /**
     * The station they are at, or walk to.
     *
     * @param started whether its start was seen
     * @param finishJudged whether the finish is the proctor's press
     * @param finishArmed whether everything required before the finish was seen
     */
    public record At(
            String id,
            int index,
            int of,
            Text name,
            Text task,
            Text finishWords,
            StationView.State state,
            boolean started,
            boolean finishJudged,
            boolean finishArmed,
            List<Point> checkpoints,
            List<CriterionView> criteria) {}

    /** A checkpoint: how often it was seen, how often it must be. */
    public record Point(String id, Text name, int seen, int count, boolean byProctor) {}

    /** A required act that was not seen, at the station whose finish was seen or tapped last. */
    public record Missing(String station, String checkpoint, Text words, int seen, int count) {}

    /** A criterion as words to press. */
    public record CriterionView(String id, String kind, Text words, int warnings, int faults) {}

    /** A warning or fault given so far. */
    public record Warning(String station, String criterion, boolean fault) {}

    /**
     * A split to rule on.
     *
     * @param state proposed, ambiguous, incomplete, confirmed, void or by-hand
     * @param clean whether nothing speaks against confirming
     * @param splitMicros −1 while incomplete
     * @param lowerMicros the interval of the split
     * @param handMicros the split by the proctor's own taps, or −1
     * @param why how the finish was found, or what is missing
     * @param label clean, provisional, ambiguous or look
     * @param readings best first; empty unless ambiguous
     * @param late what came after the ruling and speaks against it; or null
     * @param tie whether another candidate's mark here may have been in the other order
     * @param checkpoints how often each was seen
     * @param standing the ruling that decides it, or null: give its entry back as {@code
     *     supersedes}
     * @param marks what it rests on, and what else a reading of it would rest on, in time order
     * @param onEvidence rulings that struck a passage or added a mark, and stand: each can be taken
     *     back
     */
    public record Split(
            String station,
            Text name,
            String state,
            boolean clean,
            long splitMicros,
            long lowerMicros,
            long upperMicros,
            long handMicros,
            Text why,
            String label,
            List<Reading> readings,
            Late late,
            boolean tie,
            List<Point> checkpoints,
            Ruled standing,
            List<MarkView> marks,
            List<Ruled> onEvidence) {}

    /**
     * A ruling as people read it.
     *
     * @param reason a code of the closed list, or empty
     * @param atMicros gateway time when it was in
     */
    public record Ruled(
            long entry,
            String act,
            String reason,
            String words,
            String person,
            String role,
            long atMicros) {}

    /**
     * A mark.
     *
     * @param point start, finish or a checkpoint's id
     * @param sensor what saw it; null for a person's mark
     * @param edge names the passage to strike it; null for a person's mark
     */
    public record MarkView(String point, Text name, long atMicros, Text sensor, EdgeKey edge) {}

    /** One way to understand an ambiguous split. */
    public record Reading(long splitMicros, long lowerMicros, long upperMicros, Text words) {}

    /** What came after the ruling that stands; splitMicros −1 when it gives no split. */
    public record Late(long splitMicros, Text words) {}
}
