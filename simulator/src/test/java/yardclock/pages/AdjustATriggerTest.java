package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;

import static yardclock.pages.Patient.soon;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import java.nio.file.Path;

/** One trigger open on two pages, through the real gateway with its own broker. */
class AdjustATriggerTest {
    private static final String POST = "[data-act=adjust-mannequin-drag-turned-post]";

    @TempDir Path folder;

    @Test
    void what_one_page_adjusts_another_that_still_showed_the_old_values_does_not()
            throws Exception {
        try (OpenYard yard = new OpenYard(folder);
                Chromium chromium = new Chromium()) {
            Page first = technician(chromium, yard);
            Page second = first.context().newPage();
            second.navigate(first.url());
            soon(trigger(first)).containsText("version 1+0 shortest block that counts 90 ms");
            first.click("[data-act=try-mannequin-drag-turned-post]");
            first.click("[data-act=show-rejudged]");
            soon(first.locator(".rejudged")).containsText("0 judged anew");
            first.click("[data-ask=back]");
            ask(first, "120");
            ask(second, "60");
            first.click("[data-ask=yes]");
            soon(trigger(first)).containsText("version 1+1 shortest block that counts 120 ms");
            soon(trigger(second)).containsText("version 1+1");
            second.click("[data-ask=yes]");
            soon(second.locator(".note.warn"))
                    .containsText("This has changed since it was on your screen. Look again.");
            second.click(".note.warn button");
            soon(trigger(second)).containsText("version 1+1 shortest block that counts 120 ms");
            ask(second, "60");
            // As slowly as a hand: two presses at once are one finger bouncing.
            second.click("[data-ask=yes]", new Page.ClickOptions().setDelay(500));
            soon(trigger(first)).containsText("version 1+2 shortest block that counts 60 ms");
            assertThat(Measure.axe(second)).isEmpty();
        }
    }

    private static void ask(Page page, String minBlock) {
        page.click(POST);
        assertThat(page.locator(".ask")).isFocused();
        page.fill("[name=minBlock]", minBlock);
        page.fill(".ask textarea", "the strap was shortened");
    }

    private static Locator trigger(Page page) {
        return page.locator("[data-trigger=mannequin-drag-turned-post]");
    }

    private static Page technician(Chromium chromium, OpenYard yard) throws Exception {
        String link = yard.address("/enrol#" + yard.code("technician"));
        Page page = chromium.open(link, "", Chromium.Way.MEASURED);
        page.fill("[name=person]", "Rowan");
        page.click("[data-act=enrol]");
        page.waitForSelector("html[data-link=live] main > *");
        return page;
    }
}
