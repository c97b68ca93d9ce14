package yardclock.pages;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;

import yardclock.app.json.Json;
import yardclock.core.board.BenchFrame;
import yardclock.core.board.BoardFrame;
import yardclock.core.board.ControlFrame;
import yardclock.core.board.CrewFrame;
import yardclock.core.board.LeaderboardFrame;
import yardclock.core.board.PostFrame;
import yardclock.core.board.WatchFrame;
import yardclock.core.run.Rejudged;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;

/**
 * Frames of a busy quarter of an hour in the invented demo day, written as JSON under {@code
 * pages/frames}. Each is read through the gateway's own records first: a frame the gateway could
 * not send is an error here.
 */
final class ScriptedFrames {
    private static final Map<String, Class<?>> TYPES =
            Map.of(
                    "post", PostFrame.class,
                    "control", ControlFrame.class,
                    "crew", CrewFrame.class,
                    "watch", WatchFrame.class,
                    "board", BoardFrame.class,
                    "bench", BenchFrame.class,
                    "leaderboard", LeaderboardFrame.class);

    private ScriptedFrames() {}

    /** The frame of this name under this head, as the gateway would write it. */
    static String of(String name, String head) {
        try {
            ObjectNode frame = Json.mapper().createObjectNode();
            frame.set("head", tree("head-" + head));
            frame.setAll((ObjectNode) tree(name));
            Class<?> type = TYPES.get(name.replaceFirst("-.*", ""));
            Object asRead = Json.mapper().treeToValue(frame, type);
            String asSent = Json.mapper().writeValueAsString(asRead);
            if (!Json.mapper().readTree(asSent).equals(frame)) {
                throw new IllegalStateException(name + " is no frame of the gateway: " + asSent);
            }
            return asSent;
        } catch (IOException e) {
            throw new UncheckedIOException(name, e);
        }
    }

    /** What other guards of the drag's start would have found, as the gateway would answer. */
    static String rejudged() {
        try {
            JsonNode written = tree("rejudged");
            String asSent =
                    Json.mapper()
                            .writeValueAsString(Json.mapper().treeToValue(written, Rejudged.class));
            if (!Json.mapper().readTree(asSent).equals(written)) {
                throw new IllegalStateException("no answer of the gateway: " + asSent);
            }
            return asSent;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JsonNode tree(String name) throws IOException {
        return Json.mapper().readTree(StaticFiles.text("pages/frames/" + name + ".json"));
    }
}
