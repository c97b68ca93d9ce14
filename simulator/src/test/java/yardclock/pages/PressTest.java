package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;

import yardclock.app.json.Json;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;

import java.util.List;

/** What a press sends: the very acts the gateway reads, once each, and what comes back as words. */
class PressTest extends WithPages {
    @Test
    void the_proctors_zones_send_start_mark_and_finish() {
        try (Tablet tablet = show("post-start")) {
            tablet.page().click("[data-act=start]");
            awaitActs(new Act.GiveStart(17));
            server.show("post", ScriptedFrames.of("post-under-way", "running"));
            pressWhenSettled(tablet.page(), "[data-act=mark]");
            tablet.page().click("[data-act=finish]");
            awaitActs(
                    new Act.GiveStart(17),
                    new Act.Tap(17, "mannequin-drag", "turned-post"),
                    new Act.Tap(17, "mannequin-drag", "finish"));
            assertThat(tablet.complaints()).isEmpty();
        }
    }

    /** A finger already on its way when the zone changed its meaning does not count. */
    private static void pressWhenSettled(Page page, String zone) {
        page.waitForSelector(zone + "[data-settled=true]");
        page.click(zone);
    }

    @Test
    void a_fault_names_its_criterion() {
        try (Tablet tablet = show("post-call")) {
            tablet.page().click(".criteria li:first-child button:last-child");
            awaitActs(new Act.Call(17, "mannequin-drag", "no-running", true, ""));
            assertThat(tablet.page().locator(".ask")).hasCount(0);
        }
    }

    @Test
    void an_equipment_fault_holds_the_candidate_with_its_reason_and_words() {
        try (Tablet tablet = show("post-call")) {
            Page page = tablet.page();
            page.click("[data-act=hold]");
            page.click("label:has([value=equipment-fault])");
            page.fill("textarea", "maul head loose");
            page.click("[data-ask=yes]");
            awaitActs(new Act.HoldCandidate(17, Reason.EQUIPMENT_FAULT, "maul head loose"));
        }
    }

    @Test
    void a_double_tap_is_one_act() {
        try (Tablet tablet = show("post-under-way")) {
            tablet.page().dblclick("[data-act=finish]");
            tablet.page().click("[data-act=mark]");
            awaitActs(
                    new Act.Tap(17, "mannequin-drag", "finish"),
                    new Act.Tap(17, "mannequin-drag", "turned-post"));
        }
    }

    @Test
    void a_lost_answer_is_asked_for_again_under_the_same_key() {
        try (Tablet tablet = show("post-under-way")) {
            server.cutAnswers(1);
            tablet.page().click("[data-act=finish]");
            await().until(() -> server.rulings().size() == 2);
            assertThat(server.rulings())
                    .extracting(one -> one.path("key").asText())
                    .containsOnly(server.rulings().get(0).path("key").asText());
            assertThat(tablet.page().locator("[data-act=finish]"))
                    .hasAttribute("aria-busy", "false");
            assertThat(tablet.page().locator(".note")).hasCount(0);
        }
    }

    @Test
    void a_refusal_is_said_in_the_tablets_language() {
        server.answerWith(409, "{\"refused\":\"already-ruled\",\"words\":\"Someone did.\"}");
        Chromium.Way spanish = new Chromium.Way(Chromium.Glass.PHONE, "es", "dark", false);
        Scene scene = Scene.named("post-splits");
        try (Tablet tablet = Tablet.show(chromium, server, scene, spanish)) {
            tablet.page().click("[data-act=confirm-mannequin-drag]");
            assertThat(tablet.page().locator(".note.warn"))
                    .containsText("Rechazado: Alguien ya decidió sobre esto.");
        }
    }

    @Test
    void a_confirm_says_which_picture_it_was_based_on() {
        try (Tablet tablet = show("post-splits")) {
            tablet.page().click("[data-act=confirm-mannequin-drag]");
            awaitActs(new Act.Confirm(17, "mannequin-drag"));
            assertThat(server.rulings().get(0).path("basis").asLong()).isEqualTo(9);
        }
    }

    @Test
    void all_clean_splits_go_with_one_press() {
        try (Tablet tablet = show("post-splits")) {
            tablet.page().click("[data-act=confirm-all]");
            awaitActs(new Act.Confirm(17, "mannequin-drag"), new Act.Confirm(17, "rope-bag"));
        }
    }

    @Test
    void a_hand_time_is_read_from_a_stop_watch_or_refused_in_words() {
        try (Tablet tablet = show("post-splits")) {
            Page page = tablet.page();
            page.click("[data-act=other-low-deck]");
            page.click("label:has([value=watch])");
            page.fill("[name=time]", "64");
            page.fill("[name=time]", "6:4");
            page.click("[data-ask=yes]");
            assertThat(page.locator(".wrong")).containsText("1:05.3");
            page.fill("[name=time]", "1:04.2");
            page.click("[data-ask=yes]");
            page.click("label:has([value=sensor-failed])");
            page.click("[data-ask=yes]");
            awaitActs(new Act.HandTime(17, "low-deck", 64_200_000, Reason.SENSOR_FAILED, ""));
        }
    }

    @Test
    void control_releases_the_next_with_the_chosen_proctor() {
        try (Tablet tablet = show("control")) {
            assertThat(tablet.page().locator("[data-act=release]"))
                    .hasAttribute("aria-disabled", "true");
            server.show("control", ScriptedFrames.of("control-ready", "running"));
            tablet.page().click("label:has([value=d-5])");
            tablet.page().click("[data-act=release][aria-disabled=false]");
            awaitActs(new Act.Release(18, "d-5"));
        }
    }

    @Test
    void the_crews_ready_waits_for_the_last_contact() {
        try (Tablet tablet = show("crew")) {
            assertThat(tablet.page().locator("[data-act=ready-rope-bag]"))
                    .hasAttribute("aria-disabled", "true");
            tablet.page().click("[data-act=ready-pike-poles]");
            awaitActs(new Act.StationReady("pike-poles"));
        }
    }

    @Test
    void the_technician_makes_a_unit_blink() {
        try (Tablet tablet = show("bench")) {
            tablet.page().click("[data-act=identify-fu-02]");
            awaitActs(new Act.Identify("fu-02", 10));
        }
    }

    private Tablet show(String scene) {
        return Tablet.show(chromium, server, Scene.named(scene), Chromium.Way.PLAIN);
    }

    private void awaitActs(Act... acts) {
        await().untilAsserted(() -> assertThat(acts()).isEqualTo(List.of(acts)));
    }

    private List<Act> acts() {
        return server.rulings().stream().map(PressTest::act).toList();
    }

    private static Act act(JsonNode ruling) {
        try {
            return Json.mapper().treeToValue(ruling.path("act"), Act.class);
        } catch (JsonProcessingException e) {
            throw new IllegalStateException(ruling.toString(), e);
        }
    }
}
