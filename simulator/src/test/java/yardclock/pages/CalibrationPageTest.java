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

import java.util.List;

/** The technician compares two units: chooses, begins, watches the trips, accepts or gives up. */
class CalibrationPageTest extends WithPages {
    private Tablet show(String scene) {
        return Tablet.show(chromium, server, Scene.named(scene), Chromium.Way.PLAIN);
    }

    @Test
    void two_sensors_are_chosen_by_keyboard_and_begun() throws JsonProcessingException {
        try (Tablet tablet = show("bench")) {
            Page page = tablet.page();
            assertThat(page.locator("[data-act=begin-calibration]"))
                    .hasAttribute("aria-disabled", "true");
            page.focus("[data-choose=reference]");
            page.keyboard().press("ArrowDown");
            page.selectOption("[data-choose=other]", "fu-08/2");
            page.focus("[data-act=begin-calibration]");
            page.keyboard().press("Enter");
            await().until(() -> server.rulings().size() == 1);
            assertThat(act(0)).isEqualTo(new Act.BeginCalibration("fu-02", 1, "fu-08", 2));
            assertThat(tablet.complaints()).isEmpty();
        }
    }

    @Test
    void a_sensor_of_the_same_unit_is_not_offered_a_beginning() {
        try (Tablet tablet = show("bench")) {
            tablet.page().selectOption("[data-choose=reference]", "fu-02/1");
            tablet.page().selectOption("[data-choose=other]", "fu-02/2");
            tablet.page().focus("[data-act=begin-calibration]");
            tablet.page().keyboard().press("Enter");
            assertThat(tablet.page().locator(".calibration"))
                    .containsText("Choose sensors of two different units.");
            assertThat(server.rulings()).isEmpty();
        }
    }

    @Test
    void rejected_trips_are_marked_by_word_and_shape() {
        try (Tablet tablet = show("bench-calibrating")) {
            Page page = tablet.page();
            assertThat(page.locator(".differences li")).hasCount(17);
            assertThat(page.locator(".differences .rejected"))
                    .containsText(
                            new String[] {
                                "✕ +48.20 ms rejected: not the same instant",
                                "✕ −9.40 ms rejected: far from the others"
                            });
            assertThat(page.locator(".calibration")).containsText("15 of 20 trips count");
            assertThat(page.locator("[data-act=accept-calibration]"))
                    .hasAttribute("aria-disabled", "true");
        }
    }

    @Test
    void accepting_gives_back_the_revision_that_was_seen() throws JsonProcessingException {
        try (Tablet tablet = show("bench-calibrating")) {
            String ready =
                    ScriptedFrames.of("bench-calibrating", "running")
                            .replace("\"too-few\"", "\"\"")
                            .replace("\"kept\":15", "\"kept\":21");
            server.show("bench", ready);
            Page page = tablet.page();
            assertThat(page.locator(".calibration")).containsText("21 of 20 trips count");
            page.click("[data-act=accept-calibration]");
            await().until(() -> server.rulings().size() == 1);
            assertThat(act(0)).isEqualTo(new Act.EndCalibration(true));
            assertThat(server.rulings().get(0).path("basis").asLong()).isEqualTo(48);
            assertThat(page.locator(".note")).containsText("fu-08");
        }
    }

    @Test
    void giving_up_is_always_possible() throws JsonProcessingException {
        try (Tablet tablet = show("bench-calibrating")) {
            tablet.page().click("[data-act=give-up-calibration]");
            await().until(() -> server.rulings().size() == 1);
            assertThat(act(0)).isEqualTo(new Act.EndCalibration(false));
        }
    }

    @Test
    void what_ended_says_why_in_both_languages() {
        try (Tablet tablet = show("bench")) {
            Page page = tablet.page();
            assertThat(page.locator(".calibration"))
                    .containsText("fu-12 is at another access point. Calibrate again.");
            page.evaluate(
                    "() => import('/ui/lib/look.js').then((on) => on.chooseLanguage('es'))",
                    List.of());
            assertThat(page.locator(".calibration"))
                    .containsText("fu-12 está en otro punto de acceso. Calibre de nuevo.");
        }
    }

    private Act act(int place) throws JsonProcessingException {
        JsonNode ruling = server.rulings().get(place);
        return Json.mapper().treeToValue(ruling.path("act"), Act.class);
    }
}
