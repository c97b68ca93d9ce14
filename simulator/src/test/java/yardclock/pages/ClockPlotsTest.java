package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;

/** The technician opens a unit's clock and sees its legs, its limits and its steadiness. */
class ClockPlotsTest extends WithPages {
    @Test
    void each_trouble_of_a_clock_is_a_sentence_with_its_figures() {
        try (Tablet tablet = show()) {
            Page page = tablet.page();
            assertThat(card(page, "fu-08")).containsText("known to 61.4 ms only");
            assertThat(card(page, "fu-08")).containsText("runs +211.3 ppm off");
            assertThat(card(page, "fu-08"))
                    .containsText("jumped without a restart. Jumps: 1, the last 4:5");
            assertThat(card(page, "fu-08")).containsText("24 of the last 60");
            assertThat(card(page, "fu-12")).containsText("No bound yet");
            assertThat(card(page, "fu-12")).containsText("waiting for the first exchange: 3.");
            assertThat(page.locator(".unit:has(h3:text('fu-02')) .clock-troubles")).hasCount(0);
            assertThat(card(page, "fu-02")).containsText("4 of 60");
        }
    }

    @Test
    void the_clocks_to_look_at_are_named_above_and_lead_to_their_cards() {
        try (Tablet tablet = show()) {
            Page page = tablet.page();
            assertThat(page.locator(".to-look-at .button")).hasCount(2);
            page.click("[data-act=to-fu-12]");
            assertThat(page.evaluate("() => document.activeElement.id")).isEqualTo("unit-fu-12");
        }
    }

    @Test
    void a_chosen_units_clock_is_drawn_and_told_in_words() {
        try (Tablet tablet = show()) {
            Page page = tablet.page();
            page.click("[data-act=clock-fu-08]");
            assertThat(page.locator(".plot")).hasCount(2);
            for (String part : new String[] {".band", ".leg.up", ".leg.down"}) {
                assertThat(page.locator(".plot-field path" + part).first().getAttribute("d"))
                        .startsWith("M");
            }
            assertThat(page.locator(".plot figcaption").first()).containsText("exchanges. A stamp");
            assertThat(page.locator(".plot .plot-table tbody tr").count()).isGreaterThan(4);
            page.click("summary");
            assertThat(page.locator("details tbody tr").count()).isGreaterThan(50);
            assertThat(page.locator("[data-act=clock-fu-08]"))
                    .hasAttribute("aria-expanded", "true");
            page.click("[data-act=clock-fu-08]");
            assertThat(page.locator(".plot")).hasCount(0);
            assertThat(tablet.complaints()).isEmpty();
        }
    }

    @Test
    void it_opens_by_the_keyboard_alone() {
        try (Tablet tablet = show()) {
            Page page = tablet.page();
            page.focus("[data-act=clock-fu-08]");
            page.keyboard().press("Enter");
            assertThat(page.locator(".plot")).hasCount(2);
            page.keyboard().press("Tab");
            assertThat(page.evaluate("() => document.activeElement.tagName")).isEqualTo("SUMMARY");
            page.keyboard().press("Enter");
            assertThat(page.locator("details[open]")).hasCount(1);
        }
    }

    @Test
    void an_answer_since_draws_it_anew() {
        try (Tablet tablet = show()) {
            Page page = tablet.page();
            server.showClock("fu-08", ScriptedClock.of("fu-08", 3));
            page.click("[data-act=clock-fu-08]");
            assertThat(page.locator(".plot figcaption").first()).containsText("3 exchanges");
            server.showClock("fu-08", ScriptedClock.of("fu-08", 4));
            String frame = ScriptedFrames.of("bench", "running");
            server.show("bench", frame.replace("\"exchanges\":388", "\"exchanges\":389"));
            assertThat(page.locator(".plot figcaption").first()).containsText("4 exchanges");
        }
    }

    @Test
    void a_clock_without_a_bound_and_one_that_can_not_be_had_are_said_so() {
        try (Tablet tablet = show()) {
            Page page = tablet.page();
            server.showClock("fu-12", ScriptedClock.of("fu-12", 0));
            page.click("[data-act=clock-fu-12]");
            assertThat(card(page, "fu-12")).containsText("Nothing to draw yet");
            page.click("[data-act=clock-fu-02]");
            assertThat(card(page, "fu-02")).containsText("could not be had");
        }
    }

    private Tablet show() {
        return Tablet.show(chromium, server, Scene.named("bench"), Chromium.Way.PLAIN);
    }

    private static Locator card(Page page, String unit) {
        return page.locator(".unit:has(h3:text('" + unit + "'))");
    }
}
