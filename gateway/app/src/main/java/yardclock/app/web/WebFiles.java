package yardclock.app.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Pattern;

/**
 * The pages' files, out of the jars on the class path: our own under {@code dashboard/}, and the
 * few libraries that pages may load. Any thread.
 *
 * <p>A path is taken only when each of its parts is a plain name and its ending is known, so that
 * nothing outside the two folders, and no folder, can be reached. Files are read once and kept.
 */
final class WebFiles {
    private static final Pattern NAME = Pattern.compile("[A-Za-z0-9_@][A-Za-z0-9_@.-]{0,63}");
    private static final int PARTS_MAX = 8;
    private static final Set<String> LIBRARIES =
            Set.of(
                    "lit",
                    "lit-html",
                    "lit-element",
                    "lit__reactive-element",
                    "lit-labs__ssr-dom-shim",
                    "uplot");
    private static final Map<String, String> TYPES =
            Map.ofEntries(
                    Map.entry("html", "text/html; charset=utf-8"),
                    Map.entry("js", "text/javascript; charset=utf-8"),
                    Map.entry("mjs", "text/javascript; charset=utf-8"),
                    Map.entry("css", "text/css; charset=utf-8"),
                    Map.entry("json", "application/json"),
                    Map.entry("webmanifest", "application/manifest+json"),
                    Map.entry("svg", "image/svg+xml"),
                    Map.entry("png", "image/png"),
                    Map.entry("jpg", "image/jpeg"),
                    Map.entry("ico", "image/x-icon"),
                    Map.entry("woff2", "font/woff2"),
                    Map.entry("wav", "audio/wav"),
                    Map.entry("mp3", "audio/mpeg"));

    private static final String WORKER = "post-worker.js";
    private static final String LIBRARY = "/webjars/";

    private final ClassLoader jars = WebFiles.class.getClassLoader();
    private final Map<String, WebFile> kept = new ConcurrentHashMap<>();

    Optional<WebFile> own(String path) {
        return find("dashboard/", path);
    }

    /** A library's file, by package, version and path as the jar has them. */
    Optional<WebFile> library(String path) {
        int slash = path.indexOf('/');
        boolean known = slash > 0 && LIBRARIES.contains(path.substring(0, slash));
        return known ? find("META-INF/resources/webjars/", path) : Optional.empty();
    }

    /** The proctor's page's service worker, made of the page's own files. */
    Optional<WebFile> postWorker() {
        WebFile made = kept.get(WORKER);
        if (made == null) {
            byte[] source = own(WORKER).orElseThrow().bytes();
            made = WebFile.of(PostWorker.script(source, this::bytesAt), TYPES.get("js"));
            kept.put(WORKER, made);
        }
        return Optional.of(made);
    }

    /** By the address a page asks for; null for one that is not there. */
    private byte[] bytesAt(String address) {
        Optional<WebFile> file =
                address.equals(PostWorker.PAGE)
                        ? own("index.html")
                        : address.startsWith(LIBRARY)
                                ? library(address.substring(LIBRARY.length()))
                                : own(address.substring("/ui/".length()));
        return file.map(WebFile::bytes).orElse(null);
    }

    /** The description of everything that can be asked for. */
    Optional<WebFile> description() {
        return Optional.of(
                kept.computeIfAbsent(
                        "yardclock/openapi.yaml", path -> load(path, "application/yaml")));
    }

    private Optional<WebFile> find(String folder, String path) {
        String type = TYPES.get(path.substring(path.lastIndexOf('.') + 1));
        if (type == null || !isPlain(path)) {
            return Optional.empty();
        }
        WebFile file = kept.get(folder + path);
        if (file == null) {
            file = load(folder + path, type);
            if (file != null) {
                kept.put(folder + path, file);
            }
        }
        return Optional.ofNullable(file);
    }

    private static boolean isPlain(String path) {
        String[] parts = path.split("/", -1);
        if (parts.length > PARTS_MAX) {
            return false;
        }
        for (String part : parts) {
            if (!NAME.matcher(part).matches()) {
                return false;
            }
        }
        return true;
    }

    private WebFile load(String resource, String type) {
        try (InputStream in = jars.getResourceAsStream(resource)) {
            return in == null ? null : WebFile.of(in.readAllBytes(), type);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
