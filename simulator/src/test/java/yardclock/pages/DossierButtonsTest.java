package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Download;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;

import java.nio.file.Files;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;

/** A dossier from the list of those who are done: to look at, to keep, and while it is made. */
class DossierButtonsTest extends WithPages {
    private static final String SHOWN = "[data-act=dossier-11]";
    private static final String KEPT = "[data-act=dossier-file-11]";

    private Tablet show() {
        return Tablet.show(chromium, server, Scene.named("control"), Chromium.Way.PLAIN);
    }

    @Test
    void its_button_is_busy_until_the_page_is_there_and_a_second_press_asks_for_nothing() {
        CompletableFuture<String> made = new CompletableFuture<>();
        server.giveDossiers(made);
        try (Tablet tablet = show()) {
            Page page = tablet.page();
            assertThat(page.locator(SHOWN)).hasAttribute("aria-busy", "false");
            page.click(SHOWN);
            assertThat(page.locator(SHOWN)).hasAttribute("aria-busy", "true");
            assertThat(page.locator(KEPT)).hasAttribute("aria-busy", "false");
            page.locator(SHOWN).dispatchEvent("click");
            made.complete("the whole story");
            assertThat(page.frameLocator("iframe.sheet").locator("body"))
                    .hasText("/api/dossier/11?as=en the whole story");
            assertThat(page.locator(SHOWN)).hasAttribute("aria-busy", "false");
            assertThat(page.locator("iframe.sheet")).hasCount(1);
            assertThat(tablet.complaints()).isEmpty();
        }
    }

    @Test
    void the_file_to_check_is_kept_under_the_numbers_name() throws Exception {
        server.giveDossiers(CompletableFuture.completedFuture("the proof"));
        try (Tablet tablet = show()) {
            Download kept = tablet.page().waitForDownload(() -> tablet.page().click(KEPT));
            assertThat(kept.suggestedFilename()).isEqualTo("dossier-11.json");
            assertThat(Files.readString(kept.path()))
                    .isEqualTo("/api/dossier/11?as=json the proof");
            assertThat(tablet.page().locator(KEPT)).hasAttribute("aria-busy", "false");
            assertThat(tablet.page().locator(".note")).hasCount(0);
            assertThat(tablet.complaints()).isEmpty();
        }
    }

    @Test
    void one_that_could_not_be_had_is_said_and_can_be_asked_for_again() {
        CompletableFuture<String> busy = new CompletableFuture<>();
        busy.completeExceptionally(new CompletionException("busy", null));
        server.giveDossiers(busy);
        try (Tablet tablet = show()) {
            Page page = tablet.page();
            Locator note = page.locator(".note.warn");
            page.click(SHOWN);
            assertThat(note).containsText("It could not be fetched. Try again in a moment.");
            assertThat(page.locator("iframe.sheet")).hasCount(0);
            server.giveDossiers(CompletableFuture.completedFuture("at last"));
            page.click(SHOWN);
            assertThat(page.frameLocator("iframe.sheet").locator("body")).containsText("at last");
        }
    }
}
