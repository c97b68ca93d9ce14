package yardclock.pages;

import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Takes the pictures for people from a running demonstration: {@code -Dpictures.from=ADDRESS
 * -Dpictures.codes=coordinator:CODE,… -Dpictures.to=DIR}. A code works once, so each role is
 * enrolled once and its pages are shown in the same browser, on both sizes of glass. A candidate on
 * the course is handed over to the proctor in the picture.
 */
@Tag("pictures")
class RunningPicturesTest {
    private static final Map<String, String> PAGES =
            new TreeMap<>(
                    Map.of(
                            "control", "coordinator",
                            "leaderboard", "coordinator",
                            "crew", "crew",
                            "bench", "technician"));
    private static final String LIVE = "html[data-link=live] main > *";
    private static final double COURSE_MAX_MILLIS = 110_000;

    private final String from = System.getProperty("pictures.from");
    private final Path to = Path.of(System.getProperty("pictures.to"));
    private final String look = System.getProperty("pictures.look", "light");

    @Test
    @Timeout(300)
    void takesAPictureOfEveryPage() {
        try (Chromium chromium = new Chromium()) {
            Chromium.Way way = new Chromium.Way(Chromium.Glass.TABLET, "en", look, false);
            Page page = chromium.open(from + "/board", "", way);
            shoot(page, "front", "/", "form");
            shoot(page, "board", "/board", LIVE);
            for (String code : System.getProperty("pictures.codes").split(",", -1)) {
                enrol(page, code.replaceFirst(".*:", ""));
            }
            PAGES.forEach((name, role) -> shoot(page, name, "/" + name + "?as=" + role, LIVE));
            handOver(page);
            shoot(page, "post", "/post", "[data-act=finish][aria-disabled=false]");
            page.waitForSelector(
                    ".splits", new Page.WaitForSelectorOptions().setTimeout(COURSE_MAX_MILLIS));
            shoot(page, "post-splits", "/post", ".splits");
        }
    }

    private void enrol(Page page, String code) {
        page.navigate(from + "/board");
        page.navigate(from + "/enrol#" + code);
        page.fill("[name=person]", "Spruce");
        page.click("[data-act=enrol]");
        page.waitForSelector(LIVE);
    }

    private void handOver(Page page) {
        page.navigate(from + "/control?as=coordinator");
        page.locator(".on-course.at-station [data-act^=more], .on-course.walking [data-act^=more]")
                .last()
                .click();
        page.click(".ask button:has-text('Spruce')");
        page.waitForSelector(".note.done");
    }

    private void shoot(Page page, String name, String path, String shown) {
        page.navigate(from + path);
        page.waitForSelector(shown);
        for (Chromium.Glass glass : List.of(Chromium.Glass.TABLET, Chromium.Glass.PHONE)) {
            page.setViewportSize(glass.width(), glass.height());
            String file = name + "-" + glass.name() + ".png";
            page.screenshot(new Page.ScreenshotOptions().setPath(to.resolve(file)));
        }
    }
}
