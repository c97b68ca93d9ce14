package yardclock.pages;

import yardclock.app.web.PostWorker;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The dashboard's and the WebJars' files on the class path, by the addresses pages ask for. */
final class StaticFiles {
    private static final Set<String> SHELLS =
            Set.of(
                    "/",
                    "/enrol",
                    "/post",
                    "/control",
                    "/crew",
                    "/watch",
                    "/board",
                    "/bench",
                    "/leaderboard");
    private static final String WORKER = "/post-worker.js";
    private static final Pattern IMPORT_MAP =
            Pattern.compile("<script type=\"importmap\">(.*?)</script>", Pattern.DOTALL);

    record Found(int status, String type, byte[] bytes) {}

    Found find(String path) {
        String place = placeOf(path);
        byte[] bytes = path.equals(WORKER) ? worker() : read(place);
        return bytes == null
                ? new Found(404, "text/plain", new byte[0])
                : new Found(200, type(place), bytes);
    }

    private static byte[] worker() {
        return PostWorker.script(read("dashboard" + WORKER), path -> read(placeOf(path)));
    }

    private static String placeOf(String path) {
        if (SHELLS.contains(path)) {
            return "dashboard/index.html";
        }
        if (path.startsWith("/ui/")) {
            return "dashboard/" + path.substring("/ui/".length());
        }
        return path.startsWith("/modules/") ? "pages" + path : "META-INF/resources" + path;
    }

    /** The import map is the one inline script; the page policy names it by its hash. */
    String importMapHash() {
        Matcher map = IMPORT_MAP.matcher(text("dashboard/index.html"));
        if (!map.find()) {
            throw new IllegalStateException("index.html has no import map");
        }
        try {
            byte[] hash =
                    MessageDigest.getInstance("SHA-256")
                            .digest(map.group(1).getBytes(StandardCharsets.UTF_8));
            return "sha256-" + Base64.getEncoder().encodeToString(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    static String text(String place) {
        return new String(read(place), StandardCharsets.UTF_8);
    }

    private static byte[] read(String place) {
        try (InputStream from = StaticFiles.class.getClassLoader().getResourceAsStream(place)) {
            return from == null ? null : from.readAllBytes();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String type(String place) {
        String end = place.substring(place.lastIndexOf('.') + 1);
        return switch (end) {
            case "html" -> "text/html; charset=utf-8";
            case "js" -> "text/javascript; charset=utf-8";
            case "css" -> "text/css; charset=utf-8";
            case "svg" -> "image/svg+xml";
            case "webmanifest" -> "application/manifest+json";
            default -> "application/octet-stream";
        };
    }
}
