package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;

/** The page's own clock: compared, read at the press, and counted anew when it must be. */
class TabletClockTest extends WithPages {
    @Test
    void a_page_answers_the_question_on_its_stream_and_presses_by_the_same_clock() {
        try (Tablet tablet = show()) {
            await().until(() -> !server.clockAnswers().isEmpty());
            JsonNode answer = server.clockAnswers().get(0);
            assertThat(answer.path("id").asText()).startsWith("q");
            assertThat(answer.path("sent").asLong())
                    .isGreaterThanOrEqualTo(answer.path("received").asLong());
            JsonNode press = press(tablet.page());
            assertThat(press.path("boot").asText())
                    .isNotEmpty()
                    .isEqualTo(answer.path("boot").asText());
            assertThat(press.path("deviceMicros").asLong())
                    .isGreaterThan(answer.path("sent").asLong());
            assertThat(tablet.page().locator("[data-clock=none]")).hasCount(0);
            assertThat(tablet.complaints()).isEmpty();
        }
    }

    @Test
    void a_press_that_gets_through_late_carries_the_time_it_was_made_at() {
        try (Tablet tablet = show()) {
            Page page = tablet.page();
            await().until(() -> !server.clockAnswers().isEmpty());
            page.context().setOffline(true);
            page.click("[data-act=finish]");
            page.waitForTimeout(1_500);
            assertThat(server.rulings()).isEmpty();
            page.context().setOffline(false);
            await().until(() -> server.rulings().size() == 1);
            long late = server.rulings().get(0).path("deviceMicros").asLong();
            page.waitForSelector("[data-act=finish][aria-busy=false]");
            JsonNode next = press(page);
            long apart = next.path("deviceMicros").asLong() - late;
            assertThat(apart).as("the first was pressed before the wait").isGreaterThan(1_400_000);
            assertThat(next.path("boot")).isEqualTo(server.rulings().get(0).path("boot"));
        }
    }

    @Test
    void a_page_loaded_anew_counts_under_another_boot() {
        try (Tablet tablet = show()) {
            await().until(() -> !server.clockAnswers().isEmpty());
            tablet.page().reload();
            await().until(() -> server.clockAnswers().size() == 2);
            assertThat(boot(1)).isNotEqualTo(boot(0));
        }
    }

    @Test
    void a_page_back_in_view_counts_under_another_boot_and_asks_to_be_asked() {
        try (Tablet tablet = show()) {
            await().until(() -> !server.clockAnswers().isEmpty());
            tablet.page()
                    .evaluate("() => document.dispatchEvent(new Event('visibilitychange')) && 0");
            await().until(() -> server.clockWanted() == 1);
            assertThat(press(tablet.page()).path("boot").asText()).isNotEqualTo(boot(0));
        }
    }

    @Test
    void a_wall_clock_that_jumps_beside_the_steady_one_is_another_boot() {
        try (Tablet tablet = show()) {
            await().until(() -> !server.clockAnswers().isEmpty());
            tablet.page()
                    .evaluate("() => { const d = Date.now; Date.now = () => d() + 60; return 0; }");
            assertThat(press(tablet.page()).path("boot").asText()).isNotEqualTo(boot(0));
            await().until(() -> server.clockWanted() == 1);
        }
    }

    @Test
    void a_page_whose_clock_is_not_compared_says_that_taps_have_no_time() {
        server.compareClocks(false);
        Chromium.Way spanish = new Chromium.Way(Chromium.Glass.TABLET, "es", "light", false);
        Scene scene = Scene.named("post-under-way");
        try (Tablet tablet = Tablet.show(chromium, server, scene, spanish)) {
            assertThat(tablet.page().locator("[data-clock=none]"))
                    .containsText("los toques no tienen hora");
        }
    }

    private Tablet show() {
        return Tablet.show(chromium, server, Scene.named("post-under-way"), Chromium.Way.MEASURED);
    }

    private JsonNode press(Page page) {
        int before = server.rulings().size();
        page.click("[data-act=finish]");
        await().until(() -> server.rulings().size() > before);
        return server.rulings().get(before);
    }

    private String boot(int answer) {
        return server.clockAnswers().get(answer).path("boot").asText();
    }
}
