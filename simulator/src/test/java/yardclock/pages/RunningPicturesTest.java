package yardclock.pages;

import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;

/**
 * Takes the pictures for people from a running demonstration: {@code -Dpictures.from=ADDRESS
 * -Dpictures.codes=coordinator:CODE,… -Dpictures.to=DIR}. A code works once, so each role is
 * enrolled once and its pages are shown in the same browser, on both sizes of glass.
 */
@Tag("pictures")
class RunningPicturesTest {
    private static final Map<String, String> PAGES =
            new TreeMap<>(
                    Map.of(
                            "control", "coordinator",
                            "leaderboard", "coordinator",
                            "crew", "crew",
                            "post", "proctor",
                            "bench", "technician"));
    private final String from = System.getProperty("pictures.from");
    private final Path to = Path.of(System.getProperty("pictures.to"));
    private final String look = System.getProperty("pictures.look", "light");

    @Test
    void takesAPictureOfEveryPage() {
        try (Chromium chromium = new Chromium()) {
            Chromium.Way way = new Chromium.Way(Chromium.Glass.TABLET, "en", look, false);
            Page page = chromium.open(from + "/board", "", way);
            shoot(page, "front", "/", "form");
            shoot(page, "board", "/board", "html[data-link=live] main > *");
            for (String code : System.getProperty("pictures.codes").split(",", -1)) {
                enrol(page, code.replaceFirst(".*:", ""));
            }
            PAGES.forEach(
                    (name, role) ->
                            shoot(
                                    page,
                                    name,
                                    "/" + name + "?as=" + role,
                                    "html[data-link=live] main > *"));
        }
    }

    private void enrol(Page page, String code) {
        page.navigate(from + "/board");
        page.navigate(from + "/enrol#" + code);
        page.fill("[name=person]", "Spruce");
        page.click("[data-act=enrol]");
        page.waitForSelector("html[data-link=live]");
    }

    private void shoot(Page page, String name, String path, String shown) {
        page.navigate(from + path);
        page.waitForSelector(shown);
        for (Chromium.Glass glass :
                new Chromium.Glass[] {Chromium.Glass.TABLET, Chromium.Glass.PHONE}) {
            page.setViewportSize(glass.width(), glass.height());
            String file = name + "-" + glass.name() + ".png";
            page.screenshot(new Page.ScreenshotOptions().setPath(to.resolve(file)));
        }
    }
}
