package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;
import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.BoundingBox;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Stop: same place, one hold of 0.6 s, never queued, and loud when it was not acknowledged. */
class StopTest extends WithPages {
    @Test
    void a_hold_of_six_tenths_stops_everyone_once() {
        try (Tablet tablet = show("post-under-way")) {
            hold(tablet.page());
            awaitActs("stop-all");
            assertThat(tablet.page().locator(".note")).containsText("Stop is on");
            assertThat(tablet.complaints()).isEmpty();
        }
    }

    @Test
    void a_touch_that_lets_go_early_stops_nobody() {
        try (Tablet tablet = show("post-under-way")) {
            Page page = tablet.page();
            stop(page).hover();
            page.mouse().down();
            assertThat(stop(page)).hasAttribute("data-state", "pressing");
            page.mouse().up();
            assertThat(stop(page)).hasAttribute("data-state", "rest");
            page.click("[data-act=mark]");
            awaitActs("tap");
        }
    }

    @Test
    void the_space_key_held_down_stops_as_well() {
        try (Tablet tablet = show("crew")) {
            stop(tablet.page()).focus();
            tablet.page().keyboard().down(" ");
            awaitActs("stop-all");
            tablet.page().keyboard().up(" ");
        }
    }

    @Test
    void without_an_answer_in_one_second_the_page_says_not_sent() {
        try (Tablet tablet = show("control")) {
            server.fallDeaf(true);
            hold(tablet.page());
            long pressed = System.nanoTime();
            assertThat(tablet.page().locator(".not-sent")).containsText("NOT SENT");
            assertThat(tablet.page().locator(".not-sent")).containsText("whistle, voice, radio");
            assertThat((System.nanoTime() - pressed) / 1e9).isBetween(0.0, 1.5);
            server.fallDeaf(false);
            awaitOneNote();
            tablet.page().click("[data-act=did-that]");
            assertThat(tablet.page().locator(".not-sent")).hasCount(0);
        }
    }

    @Test
    void a_question_on_the_page_leaves_stop_in_reach() {
        try (Tablet tablet = show("control-hold")) {
            hold(tablet.page());
            awaitActs("stop-all");
        }
    }

    @Test
    void a_locked_page_takes_no_press_but_stop() {
        try (Tablet tablet = show("post-locked")) {
            assertThat(tablet.page().locator("main")).hasAttribute("inert", "");
            hold(tablet.page());
            awaitActs("stop-all");
        }
    }

    static List<Chromium.Glass> glasses() {
        return List.of(Chromium.Glass.TABLET, Chromium.Glass.PHONE);
    }

    @ParameterizedTest
    @MethodSource("glasses")
    void stop_lies_at_the_same_place_on_every_staff_page(Chromium.Glass glass) {
        Map<String, Set<String>> scenesAt = new TreeMap<>();
        for (Scene scene : Scene.all()) {
            if (scene.isLive() && !scene.role().isEmpty()) {
                scenesAt.computeIfAbsent(placeOfStop(scene, glass), place -> new TreeSet<>())
                        .add(scene.name());
            }
        }
        assertThat(scenesAt).as(glass.name()).hasSize(1);
    }

    /** One stop, never repeated, and one note, which may be sent again under its one key. */
    private void awaitOneNote() {
        await().untilAsserted(() -> assertThat(acts()).startsWith("stop-all", "note"));
        List<JsonNode> notes = server.rulings().subList(1, server.rulings().size());
        assertThat(notes)
                .extracting(one -> one.path("key").asText())
                .containsOnly(key(notes.get(0)));
        assertThat(notes.get(0).path("act").path("words").asText()).contains("Stop pressed at");
        assertThat(acts()).containsOnlyOnce("stop-all");
    }

    private static String key(JsonNode ruling) {
        return ruling.path("key").asText();
    }

    private List<String> acts() {
        return server.rulings().stream().map(one -> one.path("act").path("act").asText()).toList();
    }

    private String placeOfStop(Scene scene, Chromium.Glass glass) {
        Chromium.Way way = new Chromium.Way(glass, "en", "light", false);
        try (Tablet tablet = Tablet.show(chromium, server, scene, way)) {
            BoundingBox box = stop(tablet.page()).boundingBox();
            return box.x + " " + box.y + " " + box.width + " " + box.height;
        }
    }

    private Tablet show(String scene) {
        return Tablet.show(chromium, server, Scene.named(scene), Chromium.Way.PLAIN);
    }

    private static Locator stop(Page page) {
        return page.locator("[data-act=stop]");
    }

    private void hold(Page page) {
        int before = server.rulings().size();
        stop(page).hover();
        page.mouse().down();
        await().until(() -> server.rulings().size() > before);
        page.mouse().up();
    }

    /** Exactly these acts came, in this order: nothing was sent twice or later. */
    private void awaitActs(String... acts) {
        await().untilAsserted(() -> assertThat(acts()).containsExactly(acts));
    }
}
