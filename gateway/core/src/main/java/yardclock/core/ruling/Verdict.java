package yardclock.core.ruling;

import yardclock.core.course.Text;
import yardclock.core.run.Ruling;

import java.util.List;

/**
 * The answer to a ruling, an enrolment or a code: accepted at an entry, or refused with a reason.
 *
 * @param refusal null when accepted
 * @param entry the journal entry that was accepted; for a repeated key the first one's
 * @param standing the ruling that stands instead, where one stood in the way; else null
 * @param named what the refusal is about, as the checklist's open items; mostly nothing
 */
public record Verdict(Refusal refusal, long entry, Ruling standing, List<Text> named) {
    public Verdict {
        named = List.copyOf(named);
    }

    public static Verdict accepted(long entry) {
        return new Verdict(null, entry, null, List.of());
    }

    /** Refused with a reason, or accepted where there is none. */
    public static Verdict of(Refusal refusal, long entry) {
        return new Verdict(refusal, entry, null, List.of());
    }

    public static Verdict refused(Refusal refusal, long entry) {
        return new Verdict(refusal, entry, null, List.of());
    }

    static Verdict refused(Refusal refusal, long entry, Ruling standing) {
        return new Verdict(refusal, entry, standing, List.of());
    }

    static Verdict refused(Refusal refusal, long entry, List<Text> named) {
        return new Verdict(refusal, entry, null, named);
    }

    public boolean isAccepted() {
        return refusal == null;
    }
}
