package yardclock.core.run;

import yardclock.core.time.Carry;
import yardclock.core.time.Shift;

/**
 * One ruling as it stands in a turn's file. It is never edited: a later one may supersede it, or
 * withdraw it, and says so in its own entry.
 *
 * @param entry the journal entry that is the ruling
 * @param supersedes the entry of the ruling that stood on this split before; −1 for none
 * @param decided what it says of the split; null when it says nothing of its time
 * @param endedBy the entry that superseded or withdrew it; −1 while it stands
 */
public record Ruling(
        long entry,
        What what,
        RuledBy by,
        long supersedes,
        Decided decided,
        Status status,
        long endedBy) {
    /**
     * What was ruled, and why.
     *
     * @param act the act's word, as {@code void-split}
     * @param reason a code of the closed list, or empty where the act has none
     */
    public record What(String act, String reason, String words) {}

    /** What became of a ruling. */
    public enum Status {
        STANDING,
        SUPERSEDED,
        WITHDRAWN
    }

    /**
     * What a ruling says of a split: its state and the marks that count by it.
     *
     * @param shift how the marks' time lines lay to each other when it was ruled; or null
     */
    record Decided(SplitState state, Mark start, Mark finish, Shift shift) {
        Decided carried(Carry carry) {
            return new Decided(state, carried(start, carry), carried(finish, carry), shift);
        }

        private static Mark carried(Mark mark, Carry carry) {
            return mark == null ? null : mark.carried(carry);
        }
    }

    /** A ruling that stands and, so far, decides nothing of a split's time. */
    public static Ruling made(long entry, What what, RuledBy by, long supersedes) {
        return new Ruling(entry, what, by, supersedes, null, Status.STANDING, -1);
    }

    public String act() {
        return what.act();
    }

    public boolean isStanding() {
        return status == Status.STANDING;
    }

    /** The state it gives the split; null when it decides none. */
    public SplitState state() {
        return decided == null ? null : decided.state();
    }

    /** Reason and words as one. */
    public String sentence() {
        boolean isOne = what.reason().isEmpty() || what.words().isEmpty();
        return what.reason() + (isOne ? "" : ": ") + what.words();
    }

    Ruling deciding(Decided how) {
        return new Ruling(entry, what, by, supersedes, how, status, endedBy);
    }

    Ruling ended(Status how, long byEntry) {
        return new Ruling(entry, what, by, supersedes, decided, how, byEntry);
    }

    Ruling carried(Carry carry) {
        return decided == null ? this : deciding(decided.carried(carry));
    }
}
