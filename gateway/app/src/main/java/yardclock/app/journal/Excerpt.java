package yardclock.app.journal;

import yardclock.core.engine.Entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * A part of a journal, with what ties it to the journal's head.
 *
 * <p>Kept entries stand here whole; of each entry left out only its content's hash. With both the
 * chain is computed anew, link by link, from the beginning to the head. That proves that exactly
 * these entries stand at these numbers of the journal with that head. It proves nothing about who
 * wrote the journal, and only a head known from elsewhere (a printed page, a seal) tells that it is
 * the journal of the day. Immutable.
 *
 * @param format the chain's format
 * @param headEntry the number of the journal's last entry
 * @param headSha256 that entry's hash
 */
public record Excerpt(
        int format,
        long headEntry,
        String headSha256,
        List<KeptEntry> kept,
        List<LeftOut> leftOut) {
    /** The first format whose rows can be left out. */
    static final int FORMAT = 2;

    public Excerpt {
        Objects.requireNonNull(headSha256, "headSha256");
        kept = kept == null ? List.of() : List.copyOf(kept);
        leftOut = leftOut == null ? List.of() : List.copyOf(leftOut);
    }

    /**
     * An entry as it stands in the journal.
     *
     * @param body the bytes that were hashed, as text
     * @param contentSha256 of number, time, kind and body
     * @param sha256 of the hash before and the content: the row's hash
     */
    public record KeptEntry(
            long entry,
            String kind,
            long gatewayMicros,
            String body,
            String contentSha256,
            String sha256) {
        public KeptEntry {
            Objects.requireNonNull(kind, "kind");
            Objects.requireNonNull(body, "body");
            Objects.requireNonNull(contentSha256, "contentSha256");
            Objects.requireNonNull(sha256, "sha256");
        }
    }

    /**
     * Entries left out, one after the other.
     *
     * @param contents the hash of each one's content, 32 bytes each, in base64
     */
    public record LeftOut(long from, long to, String contents) {
        public LeftOut {
            Objects.requireNonNull(contents, "contents");
        }
    }

    /** What is wrong with it, in plain words; empty when it holds. */
    public Optional<String> problem() {
        return new ExcerptCheck(this).problem();
    }

    /**
     * The kept entries, read.
     *
     * @throws JournalRefusedException naming one that this version can't read
     */
    public List<Entry> entries() throws JournalRefusedException {
        List<Entry> entries = new ArrayList<>();
        for (KeptEntry each : kept) {
            entries.add(
                    Bodies.read(
                            new Row(
                                    each.entry(),
                                    each.kind(),
                                    each.gatewayMicros(),
                                    each.body(),
                                    null,
                                    null)));
        }
        return entries;
    }
}
