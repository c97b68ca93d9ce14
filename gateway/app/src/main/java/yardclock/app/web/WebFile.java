package yardclock.app.web;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One file of a page as it is sent.
 *
 * @param etag changes with the bytes; weak, because a compressed copy has the same
 * @param scriptHash the content security policy's word for the page's import map, or empty
 */
record WebFile(byte[] bytes, String contentType, String etag, String scriptHash) {
    private static final Pattern IMPORT_MAP =
            Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);

    static WebFile of(byte[] bytes, String contentType) {
        String etag =
                Base64.getUrlEncoder()
                        .withoutPadding()
                        .encodeToString(sha256(bytes))
                        .substring(0, 22);
        String hash = contentType.startsWith("text/html") ? importMapHash(bytes) : "";
        return new WebFile(bytes, contentType, "W/\"" + etag + "\"", hash);
    }

    /** Browsers take an import map only in the page itself, so the policy names its hash. */
    private static String importMapHash(byte[] html) {
        Matcher map = IMPORT_MAP.matcher(new String(html, StandardCharsets.UTF_8));
        if (!map.find()) {
            return "";
        }
        byte[] hash = sha256(map.group(1).getBytes(StandardCharsets.UTF_8));
        return "'sha256-" + Base64.getEncoder().encodeToString(hash) + "'";
    }

    static byte[] sha256(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every JDK has SHA-256", e);
        }
    }
}
