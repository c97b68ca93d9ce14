package yardclock.core.ruling;

/**
 * The answer to a ruling, an enrolment or a code: accepted at an entry, or refused with a reason.
 *
 * @param refusal null when accepted
 * @param entry the journal entry that was accepted; for a repeated key the first one's
 */
public record Verdict(Refusal refusal, long entry) {
    public static Verdict accepted(long entry) {
        return new Verdict(null, entry);
    }

    public static Verdict refused(Refusal refusal, long entry) {
        return new Verdict(refusal, entry);
    }

    public boolean isAccepted() {
        return refusal == null;
    }
}
