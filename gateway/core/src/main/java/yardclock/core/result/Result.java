package yardclock.core.result;

import yardclock.core.course.Condition;
import yardclock.core.run.Elapsed;

import java.util.List;

/**
 * Everything a result says about one candidate, as exported and as told.
 *
 * @param run which attempt of this number it is; the last one counts, earlier ones are void
 * @param outcome a word of {@link OutcomeKind}, or empty while the attempt is open
 * @param outcomeWords the outcome in a plain sentence
 * @param officialMicros finish of the last station − start of the first − credited holds; −1 if
 *     none
 * @param lowerMicros the official time's interval
 * @param parts what that interval is made of; null without an official time
 * @param settled what the final clock values say; null while they are open
 * @param display the official time as the plan displays it
 * @param decision within, over, undecided or empty
 * @param rule the plan's rule that was applied, in words
 */
public record Result(
        int number,
        int run,
        int group,
        String outcome,
        String outcomeWords,
        long officialMicros,
        long lowerMicros,
        long upperMicros,
        Elapsed.Parts parts,
        Settled settled,
        String display,
        String decision,
        String rule,
        long creditedHoldMicros,
        boolean told,
        List<SplitLine> splits,
        List<CallLine> calls) {
    public Result {
        splits = List.copyOf(splits);
        calls = List.copyOf(calls);
    }

    /**
     * The official time by final clock values, kept beside the one that was ruled on.
     *
     * @param decision within, over or undecided
     */
    public record Settled(long micros, long lowerMicros, long upperMicros, String decision) {}

    /**
     * One station's split as it stands.
     *
     * @param state proposed, incomplete, confirmed, void or by-hand
     * @param startMicros gateway time, −1 while unknown
     * @param conditions what the station's ground and weather were noted to be like at its start;
     *     empty where nobody had said anything, or nothing was started
     * @param automaticMicros the split as the sensors gave it before any ruling, −1 if they did not
     */
    public record SplitLine(
            String station,
            String state,
            long startMicros,
            long finishMicros,
            long splitMicros,
            long lowerMicros,
            long upperMicros,
            long automaticMicros,
            long handMicros,
            String why,
            List<Condition> conditions) {
        public SplitLine {
            conditions = conditions == null ? List.of() : List.copyOf(conditions);
        }
    }

    /** A warning or fault as called. */
    public record CallLine(
            String station, String criterion, boolean fault, long atMicros, String proctor) {}
}
