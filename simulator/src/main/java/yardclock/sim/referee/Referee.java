package yardclock.sim.referee;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.result.OutcomeKind;
import yardclock.core.result.Result;
import yardclock.sim.people.TruthBook;
import yardclock.sim.units.UnitCounts;

import java.util.Collection;
import java.util.List;

/** Makes the figures of a day from what the gateway says and what is true. Stateless. */
public final class Referee {
    private static final Logger LOG = LoggerFactory.getLogger(Referee.class);

    private final TruthBook book;
    private final FeedWatch feed;
    private final long aheadOfGatewayMicros;
    private final int speed;

    public Referee(TruthBook book, FeedWatch feed, long aheadOfGatewayMicros, int speed) {
        this.book = book;
        this.feed = feed;
        this.aheadOfGatewayMicros = aheadOfGatewayMicros;
        this.speed = speed;
    }

    public Figures judge(
            List<Result> results,
            Collection<UnitCounts> units,
            JournalEdges journal,
            String digest) {
        SplitErrors errors = SplitErrors.of(results, book);
        List<Proposal> wrong = new Assignments(book, aheadOfGatewayMicros).wrong(feed.proposals());
        wrong.forEach(proposal -> LOG.warn("wrongly assigned: {}", proposal));
        return new Figures(
                results.size(),
                count(results, OutcomeKind.PASSED),
                count(results, OutcomeKind.FAILED_TIME)
                        + count(results, OutcomeKind.FAILED_CRITERION),
                count(results, OutcomeKind.UNDECIDED),
                units.stream().mapToLong(UnitCounts::edges).sum(),
                errors.p99Millis(1),
                errors.p99Millis(speed),
                units.stream().mapToLong(journal::missingOf).sum(),
                wrong.size(),
                digest);
    }

    /** How many of the marks in a day's facts a sensor proposed for the wrong visit. */
    public static int wrongAssignments(TruthBook book, List<Fact> facts) {
        List<Proposal> proposals =
                facts.stream()
                        .filter(Referee::isProposal)
                        .map(
                                f ->
                                        new Proposal(
                                                f.number(),
                                                f.station(),
                                                f.point(),
                                                f.stamp().micros()))
                        .toList();
        return new Assignments(book, 0).wrong(proposals).size();
    }

    private static boolean isProposal(Fact fact) {
        boolean proposes =
                fact.kind() == FactKind.MARK_PROPOSED || fact.kind() == FactKind.MARK_CHANGED;
        return proposes && (fact.words().equals("AUTOMATIC") || fact.words().equals("BUTTON"));
    }

    private static int count(List<Result> results, OutcomeKind outcome) {
        return (int) results.stream().filter(r -> r.outcome().equals(outcome.word())).count();
    }
}
