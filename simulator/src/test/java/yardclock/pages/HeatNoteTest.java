package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The heat's level stands in the header of every page, and what it asks of people below. */
class HeatNoteTest extends WithPresses {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "post-free",
                "post-under-way",
                "post-splits",
                "control",
                "crew",
                "watch",
                "board",
                "bench",
                "leaderboard"
            })
    void every_page_says_the_level_its_caution_and_who_decides(String scene) {
        try (Tablet tablet = show(scene)) {
            assertThat(tablet.page().locator("[data-status=heat]"))
                    .containsText("level 1, caution");
            Locator note = tablet.page().locator("main [data-heat-note='1']");
            assertThat(note).containsText("Water and shade within reach");
            assertThat(note).containsText("local codes and medical direction decide");
        }
    }

    @Test
    void a_level_that_is_not_known_asks_for_caution_too() {
        try (Tablet tablet = show("board")) {
            server.show("board", ScriptedFrames.of("board", "unread"));
            assertThat(tablet.page().locator("main [data-heat-note=unknown]"))
                    .containsText("The heat is not known");
        }
    }
}
