package yardclock.core.fact;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/**
 * Writes state as text whose bytes depend on nothing but the state, and takes its fingerprint.
 *
 * <p>Each line is a name and a value; values are integers, strings, enums and records of those,
 * whose {@code toString} is the same in every JVM. Collections must have a defined order.
 */
public final class Canonical {
    private final MessageDigest digest;

    public Canonical() {
        try {
            digest = MessageDigest.getInstance("SHA-256");
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java platform has SHA-256", e);
        }
    }

    public Canonical line(String name, Object value) {
        digest.update((name + '=' + value + '\n').getBytes(StandardCharsets.UTF_8));
        return this;
    }

    /** The fingerprint of the lines so far; what comes after begins a new text. */
    public String hex() {
        return HexFormat.of().formatHex(digest.digest());
    }
}
