package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;

import org.junit.jupiter.api.Test;

import yardclock.app.json.Json;
import yardclock.core.course.GuardTimes;
import yardclock.core.ruling.Act;

import java.util.List;

/** The technician sees what judges the edges, and gives a trigger other guards. */
class TriggersPageTest extends WithPages {
    private static final String ADJUST = "[data-act=adjust-mannequin-drag-start]";

    private Tablet show(String role) {
        Scene scene = new Scene("bench", "/bench", role, "bench on running", "");
        return Tablet.show(chromium, server, scene, Chromium.Way.PLAIN);
    }

    private static Locator trigger(Page page, String name) {
        return page.locator("[data-trigger=mannequin-drag-" + name + "]");
    }

    @Test
    void each_trigger_says_its_words_version_sensors_and_guards_in_force() {
        try (Tablet tablet = show("technician")) {
            Page page = tablet.page();
            assertThat(trigger(page, "start"))
                    .containsText("start: start mat left fu-02/1, version 3+0 stood for 300 ms");
            assertThat(trigger(page, "finish"))
                    .containsText(
                            "fu-02/3, version 3+2 clear for 1.5 s · shortest block that counts"
                                    + " 40 ms");
            page.evaluate(
                    "() => import('/ui/lib/look.js').then((on) => on.chooseLanguage('es'))",
                    List.of());
            assertThat(trigger(page, "finish"))
                    .containsText("versión 3+2 libre durante 1.5 s · tapado más corto");
            assertThat(tablet.complaints()).isEmpty();
        }
    }

    @Test
    void other_values_are_given_by_keyboard_with_the_adjustment_that_was_on_the_screen()
            throws JsonProcessingException {
        try (Tablet tablet = show("technician")) {
            Page page = tablet.page();
            page.focus(ADJUST);
            page.keyboard().press("Enter");
            assertThat(page.locator(".ask")).isFocused();
            page.keyboard().press("Tab");
            assertThat(page.locator("[name=lockout]")).isFocused();
            page.keyboard().press("Tab");
            page.keyboard().type("450,5");
            String adjustedMeanwhile =
                    ScriptedFrames.of("bench", "running")
                            .replace(
                                    "\"version\":\"3+0\",\"adjustment\":0",
                                    "\"version\":\"3+1\",\"adjustment\":1");
            server.show("bench", adjustedMeanwhile);
            assertThat(trigger(page, "start")).containsText("3+1");
            page.fill(".ask textarea", "the mat springs back");
            page.focus("[data-ask=yes]");
            page.keyboard().press("Enter");
            await().until(() -> server.rulings().size() == 1);
            assertThat(act(0))
                    .isEqualTo(
                            new Act.AdjustTrigger(
                                    "mannequin-drag",
                                    "start",
                                    0,
                                    0,
                                    0,
                                    0,
                                    450_500,
                                    0,
                                    0,
                                    0,
                                    0,
                                    "the mat springs back"));
        }
    }

    @Test
    void values_that_cannot_be_are_answered_by_a_sentence_and_nothing_is_sent() {
        try (Tablet tablet = show("technician")) {
            Page page = tablet.page();
            page.click(ADJUST);
            assertThat(page.locator("#guard-stoodFor-limits"))
                    .hasText("More than 0, at most 10 s. In force: 300 ms.");
            Locator wrong = page.locator(".ask [role=alert]");
            page.click("[data-ask=yes]");
            assertThat(wrong).containsText("Every value is the one in force.");
            page.fill("[name=stoodFor]", "0.3 s");
            page.click("[data-ask=yes]");
            assertThat(wrong).containsText("stood for: type milliseconds, as 1500 or 0.5.");
            page.fill("[name=stoodFor]", "10000.001");
            page.click("[data-ask=yes]");
            assertThat(wrong).containsText("stood for: outside its limits. More than 0");
            page.fill("[name=stoodFor]", "10000");
            page.click("[data-ask=yes]");
            assertThat(wrong).containsText("Say why, in words.");
            assertThat(server.rulings()).isEmpty();
        }
    }

    @Test
    void a_refusal_is_said_and_what_was_typed_is_there_again() {
        try (Tablet tablet = show("technician")) {
            Page page = tablet.page();
            page.click(ADJUST);
            page.fill("[name=minBlock]", "30");
            page.fill(".ask textarea", "a cord hangs loose");
            server.answerWith(409, "{\"refused\":\"guards-impossible\",\"words\":\"-\"}");
            page.click("[data-ask=yes]");
            assertThat(page.locator(".note.warn"))
                    .containsText("Refused: These values are outside their limits");
            page.click(ADJUST);
            assertThat(page.locator("[name=minBlock]")).hasValue("30");
            assertThat(page.locator(".ask textarea")).hasValue("a cord hangs loose");
        }
    }

    @Test
    void a_trigger_somebody_needs_now_says_why_it_waits() {
        try (Tablet tablet = show("technician")) {
            Page page = tablet.page();
            assertThat(page.locator("[data-act=adjust-mannequin-drag-finish]"))
                    .hasAttribute("aria-disabled", "true");
            assertThat(trigger(page, "finish"))
                    .containsText("Not now: someone is here or on the way.");
        }
    }

    @Test
    void the_coordinator_looks_and_adjusts_nothing() {
        try (Tablet tablet = show("coordinator")) {
            Page page = tablet.page();
            assertThat(trigger(page, "start")).containsText("version 3+0");
            assertThat(page.locator("[data-act^=adjust-]")).hasCount(0);
        }
    }

    @Test
    void what_would_change_is_shown_and_nothing_is_done() throws JsonProcessingException {
        try (Tablet tablet = show("coordinator")) {
            Page page = tablet.page();
            page.focus("[data-act=try-mannequin-drag-start]");
            page.keyboard().press("Enter");
            page.fill("[name=stoodFor]", "10000.5");
            page.click("[data-act=show-rejudged]");
            assertThat(page.locator(".rejudged .wrong")).containsText("outside its limits");
            page.fill("[name=stoodFor]", "150");
            page.focus("[data-act=show-rejudged]");
            page.keyboard().press("Enter");
            assertThat(page.locator(".rejudged"))
                    .containsText("26 judged anew: 24 as before, 2 otherwise.");
            assertThat(page.locator(".rejudged tbody tr"))
                    .hasText(
                            new String[] {
                                "7 47.312 s clean 47.824 s ambiguous start −0.512 s split +0.512 s",
                                "Stands now: confirmed, 47.312 s."
                                        + " With these: more than one reading is plausible;"
                                        + " choose one.",
                                "12, run 2 51.040 s clean no split to look at",
                                "Stands now: proposed, 51.040 s."
                                        + " With these: the start was not seen."
                            },
                            new LocatorAssertions.HasTextOptions().setUseInnerText(true));
            assertThat(page.locator(".rejudged li"))
                    .hasText(
                            new String[] {
                                "still under way: 14",
                                "edges came, or may have come, too late for it: 3, 5"
                            });
            assertThat(page.locator(".rejudged")).containsText("Nothing was applied.");
            assertThat(server.rulings()).isEmpty();
            assertThat(server.rejudgeQuestions()).hasSize(1);
            JsonNode asked = server.rejudgeQuestions().get(0);
            assertThat(asked.path("point").asText()).isEqualTo("start");
            assertThat(Json.mapper().treeToValue(asked, GuardTimes.class))
                    .isEqualTo(new GuardTimes(0, 0, 0, 150_000, 0, 0, 0, 0));
        }
    }

    @Test
    void what_was_tried_is_there_when_it_is_to_be_given() {
        try (Tablet tablet = show("technician")) {
            Page page = tablet.page();
            page.click("[data-act=try-mannequin-drag-start]");
            page.fill("[name=stoodFor]", "150");
            page.click("[data-act=show-rejudged]");
            assertThat(page.locator(".rejudged table")).hasCount(1);
            page.click("[data-ask=back]");
            page.click(ADJUST);
            assertThat(page.locator("[name=stoodFor]")).hasValue("150");
            assertThat(page.locator(".ask textarea")).hasValue("");
        }
    }

    private Act act(int place) throws JsonProcessingException {
        return Json.mapper().treeToValue(server.rulings().get(place).path("act"), Act.class);
    }
}
