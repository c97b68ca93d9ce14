package yardclock.app.web;

import java.util.Locale;

/**
 * For whom a frame is drawn. All streams of one audience share its bytes.
 *
 * @param device the proctor's device for {@link Kind#POST}, else empty
 */
record Audience(Kind kind, String device) {
    enum Kind {
        CONTROL,
        POST,
        CREW,
        WATCH,
        BOARD,
        BENCH,
        LEADERBOARD;

        /** The word in addresses. */
        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }
}
