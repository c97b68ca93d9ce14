package yardclock.pages;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.WaitForSelectorState;

import yardclock.core.board.Head;

import java.util.List;

/**
 * One state of one page, staged by a scripted frame.
 *
 * @param role whose badge the tablet carries, or empty
 * @param frame null for a page without a stream
 * @param press a button to press before it is looked at, or empty
 */
record Scene(String name, String path, String role, String stream, Object frame, String press) {
    static List<Scene> all() {
        Head stopped = Frames.head(Head.CourseStatus.STOPPED, "", List.of("The disk is full."));
        Head held = Frames.head(Head.CourseStatus.HELD, "weather", List.of());
        return List.of(
                new Scene("front", "/#/code=PR0CT0R1", "", "", null, ""),
                new Scene("front-held", "/", "coordinator", "", null, ""),
                post("post-free", Frames.post(null), ""),
                post("post-start", Frames.post(PostFrames.beforeStart()), ""),
                post("post-under-way", Frames.post(PostFrames.underWay(0)), ""),
                post("post-walking", Frames.post(PostFrames.walking()), ""),
                post("post-call", Frames.post(PostFrames.underWay(1)), "[data-act=call]"),
                post("post-held", Frames.post(PostFrames.held()), ""),
                post("post-splits", Frames.post(PostFrames.finished()), ""),
                post(
                        "post-rule",
                        Frames.post(PostFrames.finished()),
                        "[data-act=other-mannequin-drag]"),
                post("post-done", Frames.post(PostFrames.done(false)), ""),
                post("post-stopped", Frames.post(stopped, PostFrames.underWay(1)), ""),
                control("control", Frames.control(Frames.head(), false), "coordinator", ""),
                control("control-ready", Frames.control(Frames.head(), true), "coordinator", ""),
                control(
                        "control-menu",
                        Frames.control(held, false),
                        "coordinator",
                        "[aria-controls]"),
                control("control-safety", Frames.control(stopped, false), "safety", ""),
                control(
                        "control-hold",
                        Frames.control(Frames.head(), true),
                        "coordinator",
                        "[data-act=hold-course]"),
                new Scene("crew", "/crew", "crew", "crew", Frames.crew(), ""),
                new Scene("board", "/board", "", "board", Frames.board(Frames.head(), false), ""),
                new Scene("board-held", "/board", "", "board", Frames.board(held, true), ""),
                new Scene("bench", "/bench", "technician", "bench", Frames.bench(), ""),
                new Scene(
                        "leaderboard",
                        "/leaderboard",
                        "coordinator",
                        "leaderboard",
                        Frames.leaderboard(),
                        ""));
    }

    private static Scene post(String name, Object frame, String press) {
        return new Scene(name, "/post", "proctor", "post", frame, press);
    }

    private static Scene control(String name, Object frame, String role, String press) {
        return new Scene(name, "/control", role, "control", frame, press);
    }

    void stage(PageServer server) {
        if (frame != null) {
            server.show(stream, frame);
        }
    }

    /** Waits until the page shows its frame, and presses what is to be pressed. */
    void settle(Page page) {
        page.waitForSelector(frame == null ? "form" : "html[data-link=live] main > *");
        if (!press.isEmpty()) {
            page.click(press);
            page.waitForSelector(
                    ".ask, .menu",
                    new Page.WaitForSelectorOptions().setState(WaitForSelectorState.VISIBLE));
        }
    }
}
