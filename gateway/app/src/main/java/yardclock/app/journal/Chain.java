package yardclock.app.journal;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;

/**
 * How a row is tied to the row before it.
 *
 * <p>A row's content is SHA-256 over, in this order and with nothing between:
 *
 * <ol>
 *   <li>the entry number, 8 bytes, big-endian;
 *   <li>the gateway time in microseconds, 8 bytes, big-endian, two's complement;
 *   <li>the length of the kind in bytes, 4 bytes, big-endian, then the kind in UTF-8;
 *   <li>the length of the body in bytes, 4 bytes, big-endian, then the body in UTF-8.
 * </ol>
 *
 * <p>Its hash is SHA-256 over the hash of the row before, 32 bytes (for entry 1 the SHA-256 of the
 * text {@code yardclock journal 2}), and the content, 32 bytes. So the chain can be followed past a
 * row whose content alone is known, which is how an {@link Excerpt} leaves rows out. Journals of
 * format 1 hashed the row before and the row in one go; they are read and continued so.
 *
 * <p>All lengths are fixed or written down, so no two different rows give the same bytes. An
 * instance remembers the last hash and belongs to one thread.
 */
final class Chain {
    private static final String BEGINNING = "yardclock journal ";

    private final int format;
    private final MessageDigest sha256;
    private byte[] last;

    Chain() {
        this(Schema.newest());
    }

    /**
     * @param format the journal's, 1 or 2
     */
    Chain(int format) {
        this.format = format;
        try {
            sha256 = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform must have SHA-256", e);
        }
        last = sha256.digest((BEGINNING + format).getBytes(StandardCharsets.UTF_8));
    }

    /** The hash the next row must name as its previous one. */
    byte[] last() {
        return last.clone();
    }

    void continueFrom(byte[] hash) {
        last = hash.clone();
    }

    /** Appends a row to the chain and returns it with its two hashes. */
    Row link(long entry, String kind, long gatewayMicros, String body) {
        byte[] previous = last;
        last = hash(previous, entry, kind, gatewayMicros, body);
        return new Row(entry, kind, gatewayMicros, body, previous, last);
    }

    /** Whether the row continues the chain; if so the chain moves on to it. */
    boolean follows(Row row) {
        byte[] expected = hash(last, row.entry(), row.kind(), row.gatewayMicros(), row.body());
        boolean holds =
                MessageDigest.isEqual(last, row.previous())
                        && MessageDigest.isEqual(expected, row.hash());
        if (holds) {
            last = expected;
        }
        return holds;
    }

    /** Moves on past a row of which only the content is known, and returns that row's hash. */
    byte[] pass(byte[] content) {
        sha256.update(last);
        last = sha256.digest(content);
        return last.clone();
    }

    byte[] content(long entry, String kind, long gatewayMicros, String body) {
        update(entry, kind, gatewayMicros, body);
        return sha256.digest();
    }

    private byte[] hash(byte[] previous, long entry, String kind, long gatewayMicros, String body) {
        if (format == 1) {
            sha256.update(previous);
            update(entry, kind, gatewayMicros, body);
            return sha256.digest();
        }
        byte[] content = content(entry, kind, gatewayMicros, body);
        sha256.update(previous);
        return sha256.digest(content);
    }

    private void update(long entry, String kind, long gatewayMicros, String body) {
        sha256.update(ByteBuffer.allocate(16).putLong(entry).putLong(gatewayMicros).array());
        updateFramed(kind);
        updateFramed(body);
    }

    private void updateFramed(String text) {
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        sha256.update(ByteBuffer.allocate(4).putInt(bytes.length).array());
        sha256.update(bytes);
    }
}
