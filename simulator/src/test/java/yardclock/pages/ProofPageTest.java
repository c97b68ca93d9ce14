package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;

import yardclock.app.json.Json;
import yardclock.core.proof.ProofWhy;
import yardclock.core.ruling.Act;

/** The technician walks the course: begins, presses at points, sees what is missing, signs. */
class ProofPageTest extends WithPages {
    private Tablet show(String scene) {
        return Tablet.show(chromium, server, Scene.named(scene), Chromium.Way.PLAIN);
    }

    private Act act(int place) throws JsonProcessingException {
        await().until(() -> server.rulings().size() > place);
        return Json.mapper().treeToValue(server.rulings().get(place).path("act"), Act.class);
    }

    @Test
    void a_station_is_chosen_and_its_proof_run_begun() throws JsonProcessingException {
        try (Tablet tablet = show("bench")) {
            tablet.page().selectOption("[data-choose=proof]", "mannequin-drag");
            tablet.page().focus("[data-act=begin-proof]");
            tablet.page().keyboard().press("Enter");
            assertThat(act(0))
                    .isEqualTo(new Act.BeginProofRun("mannequin-drag", ProofWhy.AFTER_REPAIR));
            assertThat(tablet.complaints()).isEmpty();
        }
    }

    @Test
    void each_point_says_by_word_and_shape_what_it_is_and_is_signed_with_a_reason()
            throws JsonProcessingException {
        try (Tablet tablet = show("bench-proof")) {
            Page page = tablet.page();
            assertThat(page.locator("[data-point='mannequin-drag/start']"))
                    .containsText("✓ seen sensor − hand −0.12 s");
            assertThat(page.locator("[data-point='mannequin-drag/cone']"))
                    .containsText("≠ apart sensor − hand −0.41 s");
            assertThat(page.locator("[data-point='mannequin-drag/finish']"))
                    .containsText("– missing: no sensor");
            page.click("[data-act=proof-mannequin-drag-finish]");
            assertThat(act(0)).isEqualTo(new Act.ProofTap("mannequin-drag", "finish"));
            page.click("[data-act=sign-proof]");
            page.fill(".ask textarea", "Cone seen by eye");
            page.click(".ask .button.strong");
            assertThat(act(1)).isEqualTo(new Act.SignProofRun("Cone seen by eye"));
            assertThat(server.rulings().get(1).path("basis").asLong()).isEqualTo(31);
            assertThat(tablet.complaints()).isEmpty();
        }
    }
}
