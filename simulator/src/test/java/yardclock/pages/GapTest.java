package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;

import java.util.List;

/**
 * The proctor's page without its link: it goes on by what it knows, keeps each press over a reload,
 * and sends them in order, each once.
 */
class GapTest extends WithPages {
    @Test
    void presses_of_a_gap_survive_a_reload_in_the_gap_and_arrive_once_in_order() {
        try (Tablet tablet = show("post-under-way")) {
            Page page = tablet.page();
            becomeInstalled(page);
            cut(page);
            press(page, "mark");
            press(page, "finish");
            assertThat(page.locator("[data-waiting]")).hasAttribute("data-waiting", "2");
            assertThat(page.locator("main h3").first()).hasText("Pike poles");
            page.reload();
            assertThat(page.locator("[data-waiting]")).hasAttribute("data-waiting", "2");
            assertThat(page.locator("main h3").first()).hasText("Pike poles");
            assertThat(page.locator("html")).hasAttribute("data-stale", "true");
            press(page, "mark");
            assertThat(page.locator("[data-waiting]")).hasAttribute("data-waiting", "3");
            assertThat(server.rulings()).isEmpty();
            page.context().setOffline(false);
            await().until(() -> server.rulings().size() >= 3);
            page.waitForSelector("html[data-link=live][data-stale=false]");
            assertThat(points()).containsExactly("turned-post", "finish", "start");
            assertThat(server.rulings())
                    .extracting(one -> one.path("key").asText())
                    .doesNotHaveDuplicates();
            assertThat(page.locator("[data-waiting]")).hasCount(0);
            assertThat(server.rulings().get(0).path("boot"))
                    .isEqualTo(server.rulings().get(1).path("boot"))
                    .isNotEqualTo(server.rulings().get(2).path("boot"));
            assertThat(tablet.complaints()).isEmpty();
        }
    }

    /** The page's files are on the tablet from then on. */
    private static void becomeInstalled(Page page) {
        page.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
    }

    private void cut(Page page) {
        page.context().setOffline(true);
        server.dropLinks();
        page.waitForSelector("[data-waiting]");
    }

    private static void press(Page page, String zone) {
        page.click("[data-act=" + zone + "][data-settled=true][aria-disabled=false]");
        page.waitForSelector("[data-act=" + zone + "][aria-busy=false]");
    }

    private List<String> points() {
        return server.rulings().stream()
                .map(one -> one.path("act").path("point").asText())
                .toList();
    }

    private Tablet show(String scene) {
        return Tablet.show(chromium, server, Scene.named(scene), Chromium.Way.MEASURED);
    }
}
