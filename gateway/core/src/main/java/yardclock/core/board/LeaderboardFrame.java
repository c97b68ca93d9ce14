package yardclock.core.board;

import java.util.List;

/** Candidates by official time; a staff view, and public only by plan. Provisional until sealed. */
public record LeaderboardFrame(Head head, List<Row> rows) {

    /**
     * @param rank equal displayed times share a rank; 0 for those without an official time
     * @param display the official time as the plan displays it, or empty
     * @param decision within, over, undecided or empty
     */
    public record Row(
            int rank,
            int number,
            String display,
            long officialMicros,
            long lowerMicros,
            long upperMicros,
            String decision,
            String outcome) {}
}
