package yardclock.pages;

import com.microsoft.playwright.Page;

import java.util.List;

/**
 * One state of one page, staged by a scripted frame.
 *
 * @param role whose badge the tablet carries, or empty
 * @param frame a scripted frame's name and head, as {@code post-held on running}; or empty
 * @param press what to press before the page is looked at, one {@code then} another; or empty
 */
record Scene(String name, String path, String role, String frame, String press) {
    /** Long enough for what wants to be held; a plain button does not mind. */
    private static final double HOLD_MILLIS = 800;

    /** What a press leads to, once nothing is asked of the gateway any more. */
    private static final String SHOWN = ".ask:not(:has([aria-busy=true])), .menu, .locked, .plot";

    static List<Scene> all() {
        return List.of(
                new Scene("front", "/#/code=PR0CT0R1", "", "", ""),
                new Scene("front-held", "/", "coordinator", "", ""),
                post("post-free", "post-free on running", ""),
                post("post-start", "post-start on running", ""),
                post("post-under-way", "post-under-way on running", ""),
                post("post-walking", "post-walking on running", ""),
                post("post-call", "post-seen on running", "[data-act=call]"),
                post("post-held", "post-held on running", ""),
                post("post-again", "post-again on running", ""),
                post("post-splits", "post-splits on running", ""),
                post("post-rule", "post-splits on running", "[data-act=other-mannequin-drag]"),
                post("post-done", "post-done on running", ""),
                post("post-stopped", "post-seen on stopped", ""),
                post("post-away", "post-seen on away", ""),
                post("post-locked", "post-seen on running", "[data-act=lock]"),
                control("control", "control on running", ""),
                control("control-menu", "control on held", "[aria-controls=settings]"),
                control("control-early", "control-early on early", ""),
                new Scene("control-safety", "/control", "safety", "control on stopped", ""),
                control("control-hold", "control-ready on running", "[data-act=hold-course]"),
                new Scene("crew", "/crew", "crew", "crew on running", ""),
                new Scene("crew-away", "/crew", "crew", "crew on crew-away", ""),
                watch("watch", "watch on running", ""),
                watch("watch-stopped", "watch-unknown on stopped", ""),
                watch("watch-away", "watch-away on away", ""),
                watch("watch-early", "watch-early on early", ""),
                watch("watch-sign", "watch-early on early", "[data-act=check-trained]"),
                watch("watch-ice", "watch-ice on ice", ""),
                watch("watch-ground", "watch on running", "[data-act=ground-climb]"),
                watch("watch-stop-one", "watch-away on away", "[data-act=stop-7]"),
                watch("watch-reading", "watch on running", "[data-act=hand-reading]"),
                new Scene("board", "/board", "", "board on running", ""),
                new Scene("board-held", "/board", "", "board-times on held", ""),
                bench("bench", "bench on running", ""),
                bench("bench-calibrating", "bench-calibrating on running", ""),
                bench("bench-proof", "bench-proof on running", ""),
                bench("bench-clock", "bench on running", "[data-act=clock-fu-08]"),
                bench("bench-adjust", "bench on running", "[data-act=adjust-mannequin-drag-start]"),
                bench(
                        "bench-rejudge",
                        "bench on running",
                        "[data-act=try-mannequin-drag-start] then [data-act=show-rejudged]"),
                new Scene(
                        "leaderboard",
                        "/leaderboard",
                        "coordinator",
                        "leaderboard on running",
                        ""));
    }

    static Scene named(String name) {
        return all().stream()
                .filter(scene -> scene.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalArgumentException(name));
    }

    private static Scene post(String name, String frame, String press) {
        return new Scene(name, "/post", "proctor", frame, press);
    }

    private static Scene control(String name, String frame, String press) {
        return new Scene(name, "/control", "coordinator", frame, press);
    }

    private static Scene watch(String name, String frame, String press) {
        return new Scene(name, "/watch", "safety", frame, press);
    }

    private static Scene bench(String name, String frame, String press) {
        return new Scene(name, "/bench", "technician", frame, press);
    }

    boolean isLive() {
        return !frame.isEmpty();
    }

    void stage(PageServer server) {
        if (isLive()) {
            String[] parts = frame.split(" on ", -1);
            server.show(path.substring(1), ScriptedFrames.of(parts[0], parts[1]));
            server.showClock("fu-08", ScriptedClock.of("fu-08", 300));
        }
    }

    /** Waits until the page shows its frame, and presses what is to be pressed. */
    void settle(Page page) {
        page.waitForSelector(isLive() ? "html[data-link=live] main > *" : "form");
        for (String one : press.isEmpty() ? new String[0] : press.split(" then ", -1)) {
            page.click(one, new Page.ClickOptions().setDelay(HOLD_MILLIS));
            page.waitForSelector(SHOWN).scrollIntoViewIfNeeded();
        }
    }

    @Override
    public String toString() {
        return name;
    }
}
