package yardclock.sim.referee;

import yardclock.sim.people.TruthBook;

import java.util.ArrayList;
import java.util.List;

/**
 * Judges proposals by the truth: was this candidate at this station then?
 *
 * <p>Candidates come to a station minutes apart, so some seconds of tolerance cannot hide a mix-up,
 * and no clock error can make one.
 */
final class Assignments {
    private static final long TOLERANCE_MICROS = 15_000_000;

    private final TruthBook book;
    private final long aheadOfGatewayMicros;

    /**
     * @param aheadOfGatewayMicros how far the truth's time is ahead of the gateway's
     */
    Assignments(TruthBook book, long aheadOfGatewayMicros) {
        this.book = book;
        this.aheadOfGatewayMicros = aheadOfGatewayMicros;
    }

    List<Proposal> wrong(List<Proposal> proposals) {
        List<Proposal> wrong = new ArrayList<>();
        for (Proposal proposal : proposals) {
            if (!isRight(proposal, proposal.micros() + aheadOfGatewayMicros)) {
                wrong.add(proposal);
            }
        }
        return wrong;
    }

    private boolean isRight(Proposal proposal, long at) {
        TruthBook.Instants truth = book.at(proposal.number(), proposal.station());
        if (truth == null) {
            return false;
        }
        return switch (proposal.point()) {
            case "start" -> isNear(at, truth.startMicros());
            case "finish" -> truth.finishMicros() >= 0 && isNear(at, truth.finishMicros());
            default ->
                    at >= truth.startMicros() - TOLERANCE_MICROS
                            && (truth.finishMicros() < 0
                                    || at <= truth.finishMicros() + TOLERANCE_MICROS);
        };
    }

    private static boolean isNear(long at, long truth) {
        return Math.abs(at - truth) <= TOLERANCE_MICROS;
    }
}
