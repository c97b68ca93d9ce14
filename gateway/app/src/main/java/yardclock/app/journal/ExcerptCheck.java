package yardclock.app.journal;

import java.util.Base64;
import java.util.HexFormat;
import java.util.Iterator;
import java.util.Optional;

/** Computes an excerpt's chain anew, from the beginning to its head. Used once, by one thread. */
final class ExcerptCheck {
    private static final int HASH_BYTES = 32;

    private final Excerpt excerpt;
    private final Chain chain = new Chain(Excerpt.FORMAT);
    private long next = 1;

    ExcerptCheck(Excerpt excerpt) {
        this.excerpt = excerpt;
    }

    Optional<String> problem() {
        if (excerpt.format() != Excerpt.FORMAT) {
            return Optional.of(
                    "Its chain is of format " + excerpt.format() + ", which allows no proof.");
        }
        Iterator<Excerpt.LeftOut> gaps = excerpt.leftOut().iterator();
        String wrong = null;
        for (Excerpt.KeptEntry each : excerpt.kept()) {
            if (wrong == null && each.entry() > next) {
                wrong = gaps.hasNext() ? pass(gaps.next()) : missing();
            }
            if (wrong == null) {
                wrong = follow(each);
            }
        }
        while (wrong == null && gaps.hasNext()) {
            wrong = pass(gaps.next());
        }
        return Optional.ofNullable(wrong == null ? head() : wrong);
    }

    private String missing() {
        return "Entry " + next + " is missing: neither kept nor left out with its hash.";
    }

    private String follow(Excerpt.KeptEntry each) {
        if (each.entry() != next) {
            return each.entry() > next
                    ? missing()
                    : "Entry " + each.entry() + " stands where entry " + next + " is next.";
        }
        byte[] content =
                chain.content(each.entry(), each.kind(), each.gatewayMicros(), each.body());
        if (!hex(content).equals(each.contentSha256())) {
            return "Entry " + each.entry() + " was changed: it does not hash as stated.";
        }
        if (!hex(chain.pass(content)).equals(each.sha256())) {
            return "The chain does not hold at entry "
                    + each.entry()
                    + ": a hash between it and the kept entry before was changed, or its own.";
        }
        next++;
        return null;
    }

    private String pass(Excerpt.LeftOut gap) {
        byte[] contents = bytes(gap.contents());
        long count = gap.to() - gap.from() + 1;
        if (gap.from() != next) {
            return gap.from() > next ? missing() : "Entry " + gap.from() + " stands there twice.";
        }
        if (count < 1 || contents.length != count * HASH_BYTES) {
            return "Entries "
                    + gap.from()
                    + " to "
                    + gap.to()
                    + " are left out without a hash for each.";
        }
        for (int at = 0; at < contents.length; at += HASH_BYTES) {
            chain.pass(java.util.Arrays.copyOfRange(contents, at, at + HASH_BYTES));
        }
        next = gap.to() + 1;
        return null;
    }

    private static byte[] bytes(String base64) {
        try {
            return Base64.getDecoder().decode(base64);
        } catch (IllegalArgumentException e) {
            return new byte[0];
        }
    }

    private String head() {
        if (next != excerpt.headEntry() + 1) {
            return "It ends with entry "
                    + (next - 1)
                    + ", its head is "
                    + excerpt.headEntry()
                    + ".";
        }
        return hex(chain.last()).equals(excerpt.headSha256())
                ? null
                : "The chain does not lead to the stated head, entry " + excerpt.headEntry() + ".";
    }

    private static String hex(byte[] hash) {
        return HexFormat.of().formatHex(hash);
    }
}
