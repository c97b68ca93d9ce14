package yardclock.pages;

import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import java.nio.file.Path;
import java.util.List;

/**
 * Takes a picture of every scripted state, for looking at: {@code -Dpictures.to=DIR}, and with
 * {@code -Dpictures.of=bench} only of those whose names begin so.
 */
@Tag("pictures")
class PicturesTest {
    private static final String TO = System.getProperty("pictures.to");
    private static final String OF = System.getProperty("pictures.of", "");
    private static final String LOOK = System.getProperty("pictures.look", "light");
    private static final String LANGUAGE = System.getProperty("pictures.language", "en");

    @Test
    void takesAPictureOfEveryState() {
        try (PageServer server = new PageServer();
                Chromium chromium = new Chromium()) {
            for (Scene scene : scenes()) {
                scene.stage(server);
                for (Chromium.Glass glass :
                        new Chromium.Glass[] {Chromium.Glass.TABLET, Chromium.Glass.PHONE}) {
                    Page page =
                            chromium.open(
                                    server.address(scene.path()),
                                    scene.role(),
                                    new Chromium.Way(glass, LANGUAGE, LOOK, false));
                    scene.settle(page);
                    shoot(page, scene.name(), glass);
                    page.context().close();
                }
            }
        }
    }

    @Test
    void takesPicturesOfALostLinkAndAStopThatWasNotSent() {
        for (Chromium.Glass glass : List.of(Chromium.Glass.TABLET, Chromium.Glass.PHONE)) {
            try (PageServer server = new PageServer();
                    Chromium chromium = new Chromium();
                    Tablet tablet =
                            Tablet.show(
                                    chromium,
                                    server,
                                    Scene.named("control"),
                                    new Chromium.Way(glass, LANGUAGE, LOOK, false))) {
                Page page = tablet.page();
                server.fallSilent(true);
                server.fallDeaf(true);
                page.waitForSelector("html[data-stale=true]");
                shoot(page, "stale", glass);
                page.click("[data-act=stop]", new Page.ClickOptions().setDelay(800));
                page.waitForSelector(".not-sent");
                shoot(page, "not-sent", glass);
            }
        }
    }

    @Test
    void takesPicturesOfAPostWithoutItsLinkAndOfWhatWasRefusedMeanwhile() {
        for (Chromium.Glass glass : List.of(Chromium.Glass.TABLET, Chromium.Glass.PHONE)) {
            try (PageServer server = new PageServer();
                    Chromium chromium = new Chromium()) {
                Chromium.Way way = new Chromium.Way(glass, LANGUAGE, LOOK, false);
                Scene scene = Scene.named("post-under-way");
                try (Tablet tablet = Tablet.show(chromium, server, scene, way)) {
                    Page page = tablet.page();
                    page.context().setOffline(true);
                    server.dropLinks();
                    page.waitForSelector("[data-waiting]");
                    for (String zone : List.of("mark", "finish", "mark")) {
                        page.click("[data-act=" + zone + "][data-settled=true]");
                        page.waitForTimeout(3_500);
                    }
                    page.waitForSelector("[data-waiting='3']");
                    shoot(page, "gap-waiting", glass);
                    server.answerWith(409, "{\"refused\":\"stopped\",\"words\":\"-\"}");
                    page.context().setOffline(false);
                    page.waitForSelector("[data-act=not-taken]");
                    page.waitForSelector("html[data-link=live]");
                    page.waitForTimeout(2_000);
                    shoot(page, "gap-refused", glass);
                    page.click("[data-act=not-taken]");
                    shoot(page, "gap-both-sides", glass);
                }
            }
        }
    }

    private static List<Scene> scenes() {
        return Scene.all().stream().filter(scene -> scene.name().startsWith(OF)).toList();
    }

    private static void shoot(Page page, String name, Chromium.Glass glass) {
        Path file = Path.of(TO, name + "-" + glass.name() + ".png");
        page.screenshot(new Page.ScreenshotOptions().setPath(file));
    }
}
