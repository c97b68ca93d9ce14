package yardclock.core.board;

import yardclock.core.proof.ProofAsked;
import yardclock.core.proof.ProofPoint;
import yardclock.core.proof.ProofRecord;
import yardclock.core.proof.ProofRun;
import yardclock.core.proof.ProofWhy;
import yardclock.core.proof.Proofs;
import yardclock.core.proof.Signature;

import java.util.List;

/**
 * The proof run under way as the technician sees it, and those that were signed today.
 *
 * @param revision what a signature names as the state it was given for
 * @param run null while none is under way
 * @param points of the run under way, in the order of the course
 * @param signed the newest first
 * @param asked stations that should be proven anew, in the order of the course
 * @param missing whether releases wait for a proof run
 * @param signal whether the run under way has a start signal to be asked for
 */
public record ProofView(
        long revision,
        RunView run,
        List<ProofPoint> points,
        List<SignedView> signed,
        List<ProofAsked> asked,
        boolean missing,
        boolean signal) {

    /**
     * @param station the one that is proven; empty for the whole course
     * @param person who began it
     * @param signedBy who signed what is seen now; empty for nobody
     */
    public record RunView(
            String station, ProofWhy why, long beganMicros, String person, String signedBy) {}

    /**
     * A proof run that was signed.
     *
     * @param wallMicros what the wall clock read then
     * @param seen how many of its points were seen
     * @param largestMicros automatic minus hand where they were furthest apart; null for none
     * @param words what the two gave as a reason, where something was missing or apart
     */
    public record SignedView(
            String station,
            ProofWhy why,
            long signedMicros,
            long wallMicros,
            int seen,
            int points,
            Long largestMicros,
            String first,
            String second,
            String words) {}

    static ProofView of(Proofs proofs, long nowMicros) {
        List<ProofPoint> points = proofs.points(nowMicros);
        return new ProofView(
                proofs.revision(),
                proofs.underWay().map(run -> of(run, points)).orElse(null),
                points,
                proofs.signed().stream().map(ProofView::of).toList(),
                proofs.asked(),
                proofs.isMissing(),
                proofs.hasSignal());
    }

    private static RunView of(ProofRun run, List<ProofPoint> points) {
        return new RunView(
                run.station(),
                run.why(),
                run.beganMicros(),
                run.person(),
                run.standing(points).map(Signature::person).orElse(""));
    }

    public static SignedView of(ProofRecord proof) {
        String first = proof.first().words();
        String second = proof.second().words();
        boolean isOne = first.isEmpty() || second.isEmpty() || first.equals(second);
        return new SignedView(
                proof.station(),
                proof.why(),
                proof.signedMicros(),
                proof.second().wallMicros(),
                proof.seen(),
                proof.points().size(),
                proof.largestMicros(),
                proof.first().person(),
                proof.second().person(),
                isOne ? (first.isEmpty() ? second : first) : first + "; " + second);
    }
}
