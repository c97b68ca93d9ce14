package yardclock.app.boot;

import yardclock.app.web.Certificate;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** The lines an operator reads when the gateway has started. No secret stands in them. */
record Announcement(
        ServeSettings settings,
        Path directory,
        int httpPort,
        Certificate certificate,
        boolean first) {
    private static final List<String> PAGES =
            List.of("", "control", "post", "crew", "watch", "board", "bench", "leaderboard");

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        String pages =
                (certificate == null ? "http://" : "https://")
                        + new HostPort(settings.http().host(), httpPort)
                        + "/";
        lines.add("Yardclock runs. Journal: " + directory.resolve("journal.db"));
        PAGES.forEach(page -> lines.add("  " + pages + page));
        lines.add(
                "Field units: "
                        + (settings.hasOwnBroker()
                                ? "the embedded broker at tcp://" + settings.mqtt()
                                : settings.broker()));
        lines.add("  their passwords: " + directory.resolve("unit-passwords.json"));
        lines.add(
                (first ? "One-time codes for the first tablets: " : "First codes, unless used: ")
                        + directory.resolve("first-codes.json"));
        if (settings.speed() != 1) {
            lines.add("Speed " + settings.speed() + ": a demonstration, not for a real day.");
        }
        if (certificate != null) {
            lines.add("Pages go encrypted. The certificate is good until " + certificate.lastDay());
        } else if (!settings.http().isLoopback()) {
            lines.add("Pages go over the network unencrypted: whoever listens can read tokens.");
        }
        return lines;
    }
}
