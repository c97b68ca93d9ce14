package yardclock.app.access;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.security.SecureRandom;
import java.util.Base64;
import java.util.HexFormat;
import java.util.Locale;

/** Makes codes, tokens and device ids, and their hashes. Safe from any thread. */
final class Secrets {
    /** No I, O, 0 or 1: they are read and typed wrongly. 32 characters, so 5 bits each. */
    static final String ALPHABET = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";

    static final int CODE_LENGTH = 8;
    private static final int DEVICE_LENGTH = 6;
    private static final int TOKEN_BYTES = 32;

    private final SecureRandom random = new SecureRandom();

    String code() {
        return letters(CODE_LENGTH);
    }

    /** A short name for a tablet, unique enough for one day's few dozen. */
    String device() {
        return "t-" + letters(DEVICE_LENGTH).toLowerCase(Locale.ROOT);
    }

    String token() {
        byte[] bytes = new byte[TOKEN_BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private String letters(int length) {
        StringBuilder letters = new StringBuilder(length);
        for (int i = 0; i < length; i++) {
            letters.append(ALPHABET.charAt(random.nextInt(ALPHABET.length())));
        }
        return letters.toString();
    }

    /** A code as typed by a person, without the spaces and hyphens that help reading. */
    static String typed(String code) {
        return code.replace(" ", "").replace("-", "").toUpperCase(Locale.ROOT);
    }

    /** Whether this could be a code at all. */
    static boolean isCode(String code) {
        return code.length() == CODE_LENGTH && code.chars().allMatch(c -> ALPHABET.indexOf(c) >= 0);
    }

    static String sha256(String secret) {
        try {
            MessageDigest digest = MessageDigest.getInstance("SHA-256");
            byte[] hash = digest.digest(secret.getBytes(StandardCharsets.UTF_8));
            return HexFormat.of().formatHex(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
