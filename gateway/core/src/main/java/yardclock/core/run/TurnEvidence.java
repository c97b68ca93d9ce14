package yardclock.core.run;

import yardclock.core.passage.EdgeKey;
import yardclock.core.passage.TimedEdge;
import yardclock.core.reading.PointReading;

import java.util.List;
import java.util.Map;
import java.util.SortedSet;

/** What a turn rests on, for those who write it down. A look at the turn's own state, no copy. */
public record TurnEvidence(
        List<TimedEdge> edges,
        SortedSet<EdgeKey> struck,
        List<PointReading> starts,
        List<PointReading> finishes,
        Map<String, List<Mark>> checkpoints,
        List<Ruling> rulings) {

    public static TurnEvidence of(Turn turn) {
        return new TurnEvidence(
                turn.evidence.all(),
                turn.evidence.struck(),
                turn.startReadings.ranked(),
                turn.finishReadings.ranked(),
                turn.checkpoints,
                turn.rulings.all());
    }
}
