package yardclock.pages;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import java.nio.file.Path;

/** Takes a picture of every scripted state, for looking at: {@code -Dpictures.to=DIR}. */
@Tag("pictures")
class PicturesTest {
    @Test
    void takesAPictureOfEveryState() {
        String to = System.getProperty("pictures.to", "");
        assumeTrue(!to.isEmpty());
        String look = System.getProperty("pictures.look", "light");
        String language = System.getProperty("pictures.language", "en");
        try (PageServer server = new PageServer();
                Chromium chromium = new Chromium()) {
            for (Scene scene : Scene.all()) {
                scene.stage(server);
                for (Chromium.Glass glass :
                        new Chromium.Glass[] {Chromium.Glass.TABLET, Chromium.Glass.PHONE}) {
                    Page page =
                            chromium.open(
                                    server.address(scene.path()),
                                    scene.role(),
                                    new Chromium.Way(glass, language, look, false));
                    scene.settle(page);
                    page.screenshot(
                            new Page.ScreenshotOptions()
                                    .setPath(
                                            Path.of(
                                                    to,
                                                    scene.name() + "-" + glass.name() + ".png")));
                    page.context().close();
                }
            }
        }
    }
}
