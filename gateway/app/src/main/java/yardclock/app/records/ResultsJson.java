package yardclock.app.records;

import com.fasterxml.jackson.core.JsonProcessingException;

import yardclock.app.json.Json;
import yardclock.core.course.Condition;
import yardclock.core.course.PlanName;
import yardclock.core.result.Result;
import yardclock.core.result.Result.CallLine;
import yardclock.core.result.Result.SplitLine;
import yardclock.core.run.Elapsed;

import java.util.List;

/** The results of the day as one JSON document: microseconds, and times as the plan shows them. */
final class ResultsJson {
    private ResultsJson() {}

    record Document(
            PlanLine plan,
            long cutOffMicros,
            String cutOffDisplay,
            boolean provisional,
            List<Candidate> results) {}

    record PlanLine(String id, int version, String sha256) {}

    record Candidate(
            int number,
            int run,
            int group,
            String outcome,
            String outcomeWords,
            long officialMicros,
            long lowerMicros,
            long upperMicros,
            Elapsed.Parts parts,
            Result.Settled settled,
            String display,
            String decision,
            String rule,
            long withinPerMillion,
            long creditedHoldMicros,
            boolean told,
            List<Split> splits,
            List<CallLine> calls) {}

    record Split(
            String station,
            String state,
            long startMicros,
            long finishMicros,
            long splitMicros,
            long lowerMicros,
            long upperMicros,
            long automaticMicros,
            long handMicros,
            String display,
            String why,
            List<Condition> conditions) {}

    static byte[] of(DaySheet day) {
        try {
            return Json.mapper().writeValueAsBytes(document(day));
        } catch (JsonProcessingException e) {
            throw new IllegalStateException("records of numbers and words always become JSON", e);
        }
    }

    private static Document document(DaySheet day) {
        PlanName name = day.frozen().plan().name();
        long cutOff = day.frozen().plan().timing().cutOffMicros();
        return new Document(
                new PlanLine(name.id(), name.version(), day.frozen().sha256()),
                cutOff,
                day.display(cutOff),
                true,
                day.results().stream().map(result -> candidate(result, day)).toList());
    }

    private static Candidate candidate(Result r, DaySheet day) {
        return new Candidate(
                r.number(),
                r.run(),
                r.group(),
                r.outcome(),
                r.outcomeWords(),
                r.officialMicros(),
                r.lowerMicros(),
                r.upperMicros(),
                r.parts(),
                r.settled(),
                r.display(),
                r.decision(),
                r.rule(),
                Conformance.perMillion(r, day.frozen().plan().timing().cutOffMicros()),
                r.creditedHoldMicros(),
                r.told(),
                r.splits().stream().map(line -> split(line, day)).toList(),
                r.calls());
    }

    private static Split split(SplitLine s, DaySheet day) {
        return new Split(
                s.station(),
                s.state(),
                s.startMicros(),
                s.finishMicros(),
                s.splitMicros(),
                s.lowerMicros(),
                s.upperMicros(),
                s.automaticMicros(),
                s.handMicros(),
                day.display(s.splitMicros()),
                s.why(),
                s.conditions());
    }
}
