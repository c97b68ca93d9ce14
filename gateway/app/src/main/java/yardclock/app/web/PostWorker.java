package yardclock.app.web;

import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The service worker's script: the dashboard's {@code post-worker.js} with the files of the
 * proctor's page filled in, each with its hash. A browser takes a worker for a new one when its
 * bytes differ, so it finds a new page exactly when one of the files has changed. Any thread.
 *
 * <p>The files are those the shell and the script name themselves. Public, so that the pages' tests
 * serve the same script from the same files.
 */
public final class PostWorker {
    /** The page's own address, and the file behind it. */
    public static final String PAGE = "/post";

    private static final Pattern ADDRESS = Pattern.compile("\"(/(?:ui|webjars)/[^\"]+)\"");

    private PostWorker() {}

    /**
     * @param files the bytes at an address as a page asks for it
     * @throws IllegalStateException when a named file is not there: the jars do not fit together
     */
    public static byte[] script(byte[] source, Function<String, byte[]> files) {
        String template = new String(source, StandardCharsets.UTF_8);
        Map<String, String> hashes = new TreeMap<>();
        byte[] shell = bytes(PAGE, files);
        hashes.put(PAGE, hash(shell));
        addNamed(new String(shell, StandardCharsets.UTF_8), files, hashes);
        addNamed(template, files, hashes);
        String list =
                hashes.entrySet().stream()
                        .map(file -> "\"" + file.getKey() + "\":\"" + file.getValue() + "\"")
                        .collect(Collectors.joining(",\n", "{", "}"));
        String version = hash(list.getBytes(StandardCharsets.UTF_8));
        return template.replace("/*files*/ {}", list)
                .replace("/*version*/", version)
                .getBytes(StandardCharsets.UTF_8);
    }

    private static void addNamed(
            String text, Function<String, byte[]> files, Map<String, String> hashes) {
        Matcher named = ADDRESS.matcher(text);
        while (named.find()) {
            hashes.computeIfAbsent(named.group(1), address -> hash(bytes(address, files)));
        }
    }

    private static byte[] bytes(String address, Function<String, byte[]> files) {
        byte[] bytes = files.apply(address);
        if (bytes == null) {
            throw new IllegalStateException("the proctor's page names " + address);
        }
        return bytes;
    }

    /** As browsers check it, see W3C Subresource Integrity. */
    private static String hash(byte[] bytes) {
        return "sha256-" + Base64.getEncoder().encodeToString(WebFile.sha256(bytes));
    }
}
