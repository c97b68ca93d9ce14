package yardclock.app.records.dossier;

import yardclock.core.course.Condition;
import yardclock.core.course.Text;

import java.util.List;

/**
 * Everything a dossier says of one attempt, in the order it came. Instants are microseconds of
 * gateway time, −1 where there is none; {@code entry} is a number in the journal. Immutable.
 *
 * @param standing how the attempt stands by the last entry; null when the number is not known
 * @param further null in a dossier of the first version
 */
public record Timeline(
        int number,
        Made made,
        Standing standing,
        List<TurnLine> turns,
        List<EdgeLine> edges,
        List<RulingLine> rulings,
        List<FactLine> concluded,
        List<ConditionLine> conditions,
        Further further) {
    public Timeline {
        turns = List.copyOf(turns);
        edges = List.copyOf(edges);
        rulings = List.copyOf(rulings);
        concluded = List.copyOf(concluded);
        conditions = List.copyOf(conditions);
    }

    /**
     * By what plan and rules it was judged.
     *
     * @param wallMicros what the wall clock read at {@code wallAtMicros}; for reading only
     */
    public record Made(
            String planId,
            int planVersion,
            String planSha256,
            String rulesVersion,
            int speed,
            long wallMicros,
            long wallAtMicros) {}

    /** The result as it stands. */
    public record Standing(
            String outcome,
            String outcomeWords,
            long officialMicros,
            long lowerMicros,
            long upperMicros,
            String decision,
            String rule,
            long creditedHoldMicros,
            boolean told) {}

    /**
     * One station's turn with its split.
     *
     * @param conditions what was noted of the station's ground and weather when it was begun; empty
     *     where nobody had said anything, and in dossiers of before it could be noted
     */
    public record TurnLine(
            String station,
            String state,
            MarkLine start,
            MarkLine finish,
            long splitMicros,
            long lowerMicros,
            long upperMicros,
            long automaticMicros,
            long handMicros,
            Text why,
            List<ReadingLine> readings,
            List<Condition> conditions) {
        public TurnLine {
            readings = List.copyOf(readings);
            conditions = conditions == null ? List.of() : List.copyOf(conditions);
        }
    }

    /**
     * @param entry of the edge it rests on; −1 for a press
     */
    public record MarkLine(
            long micros, long lowerMicros, long upperMicros, String source, long entry) {}

    /** One way to understand a start or a finish, best first. */
    public record ReadingLine(String point, long entry, Text why) {}

    /**
     * A raw edge of the stations' sensors during the attempt's turns.
     *
     * @param mark the mark it makes: start, finish or a checkpoint's id; else empty
     * @param became the word for what became of it, with its sentence in {@code why}
     */
    public record EdgeLine(
            long entry,
            String station,
            String unit,
            int sensor,
            int state,
            String boot,
            long seq,
            long tick,
            long micros,
            long lowerMicros,
            long upperMicros,
            String mark,
            String became,
            Text why) {}

    /**
     * A ruling or tap.
     *
     * @param what the act's own fields, as JSON
     * @param refusal the reason it was refused; empty when it was accepted
     * @param status standing, superseded or withdrawn; empty for one that decides no split
     * @param endedBy the entry that superseded or withdrew it, −1 for none
     */
    public record RulingLine(
            long entry,
            long gatewayMicros,
            long receivedMicros,
            long deviceMicros,
            String device,
            String person,
            String role,
            String act,
            String what,
            long basis,
            List<Long> shownMicros,
            String refusal,
            long supersedes,
            String status,
            long endedBy) {}

    /** Something that was concluded, as a fact says it, when it was. */
    public record FactLine(
            long entry,
            long gatewayMicros,
            String kind,
            String where,
            String point,
            long micros,
            long lowerMicros,
            long upperMicros,
            long valueMicros,
            String words) {}

    /** A climate reading. */
    public record ConditionLine(
            long entry, long gatewayMicros, int centiCelsius, int centiPercent) {}
}
