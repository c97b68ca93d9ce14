package yardclock.core.ruling;

import yardclock.core.run.Ruling;

/**
 * The answer to a ruling, an enrolment or a code: accepted at an entry, or refused with a reason.
 *
 * @param refusal null when accepted
 * @param entry the journal entry that was accepted; for a repeated key the first one's
 * @param standing the ruling that stands instead, where one stood in the way; else null
 */
public record Verdict(Refusal refusal, long entry, Ruling standing) {
    public static Verdict accepted(long entry) {
        return new Verdict(null, entry, null);
    }

    public static Verdict refused(Refusal refusal, long entry) {
        return new Verdict(refusal, entry, null);
    }

    static Verdict refused(Refusal refusal, long entry, Ruling standing) {
        return new Verdict(refusal, entry, standing);
    }

    public boolean isAccepted() {
        return refusal == null;
    }
}
