package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;

import org.junit.jupiter.api.Test;

/** The live link: frames show at once, silence shows within three seconds, and it comes back. */
class LinkTest extends WithPages {
    private static final LocatorAssertions.ContainsTextOptions SOON =
            new LocatorAssertions.ContainsTextOptions().setTimeout(12_000);

    @Test
    void a_new_frame_is_on_the_page_at_once() {
        try (Tablet tablet = show("board")) {
            server.show("board", ScriptedFrames.of("board", "stopped"));
            assertThat(tablet.page().locator("[data-status=course]")).containsText("stopped");
            assertThat(tablet.complaints()).isEmpty();
        }
    }

    @Test
    void silence_makes_data_look_old_within_three_seconds_and_a_sign_of_life_ends_it() {
        try (Tablet tablet = show("crew")) {
            Page page = tablet.page();
            assertThat(page.locator("html")).hasAttribute("data-stale", "false");
            server.fallSilent(true);
            page.waitForSelector(
                    "html[data-stale=true]", new Page.WaitForSelectorOptions().setTimeout(4_500));
            assertThat(page.locator("[data-status=link]")).containsText("old data");
            assertThat(page.locator(".banner.old")).containsText("This picture is old");
            server.fallSilent(false);
            assertThat(page.locator("[data-status=link]")).containsText("live", SOON);
            assertThat(page.locator("html")).hasAttribute("data-stale", "false");
        }
    }

    @Test
    void a_cut_network_is_found_again_without_a_touch() {
        try (Tablet tablet = show("post-under-way")) {
            Page page = tablet.page();
            page.context().setOffline(true);
            server.dropLinks();
            page.waitForSelector("html[data-link=lost]");
            page.context().setOffline(false);
            server.show("post", ScriptedFrames.of("post-held", "running"));
            page.waitForSelector("[data-act=resume]");
        }
    }

    @Test
    void a_tablet_without_a_badge_is_led_to_the_front_page() {
        Scene scene = new Scene("post-no-badge", "/post", "", "", "");
        Page page = chromium.open(server.address(scene.path()), "", Chromium.Way.PLAIN);
        assertThat(page.locator("main")).containsText("not enrolled");
        page.click("main a");
        page.waitForSelector("form");
        page.context().close();
    }

    @Test
    void clocks_run_on_between_frames_at_the_speed_of_the_exam() {
        try (Tablet tablet = show("control")) {
            Page page = tablet.page();
            String first = page.locator(".on-course .time").first().innerText();
            assertThat(page.locator(".on-course .time").first()).not().hasText(first);
        }
    }

    private Tablet show(String scene) {
        return Tablet.show(chromium, server, Scene.named(scene), Chromium.Way.PLAIN);
    }
}
