package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import java.util.ArrayList;
import java.util.List;

/** Everything can be done without a pointer, and one sees where one is. */
class KeyboardTest {
    private static final String CONTROLS =
            """
            () => [...document.querySelectorAll('button, a[href], input, textarea')]
              .filter((one) => one.checkVisibility() && !one.closest('[inert]')).length
            """;
    private static final String FOCUS =
            """
            () => {
              const one = document.activeElement;
              const shown = one.closest('label.choice') ?? one;
              const style = getComputedStyle(shown);
              return [one.tagName + (one.dataset.act ?? '') + (one.value ?? '') + one.innerText,
                style.outlineStyle !== 'none' && parseFloat(style.outlineWidth) >= 3];
            }
            """;
    private static PageServer server;
    private static Chromium chromium;

    @BeforeAll
    static void open() {
        server = new PageServer();
        chromium = new Chromium();
    }

    @AfterAll
    static void close() {
        chromium.close();
        server.close();
    }

    @ParameterizedTest
    @ValueSource(strings = {"front", "post-under-way", "post-splits", "crew", "bench", "board"})
    void tab_reaches_every_control_and_shows_where_it_is(String name) {
        Scene scene = Scene.named(name);
        scene.stage(server);
        Page page =
                chromium.open(server.address(scene.path()), scene.role(), Chromium.Way.MEASURED);
        scene.settle(page);
        int controls = ((Number) page.evaluate(CONTROLS)).intValue();
        List<String> reached = new ArrayList<>();
        for (int i = 0; i < controls + 1; i++) {
            page.keyboard().press("Tab");
            List<?> focus = (List<?>) page.evaluate(FOCUS);
            if (!focus.get(0).toString().startsWith("BODY")) {
                assertThat(focus.get(1)).as("focus shows on " + focus.get(0)).isEqualTo(true);
                reached.add(focus.get(0).toString());
            }
        }
        assertThat(reached.stream().filter(one -> !one.startsWith("MAIN"))).hasSize(controls);
        page.context().close();
    }

    @Test
    void a_question_takes_the_focus_and_gives_it_back() {
        Scene scene = Scene.named("post-under-way");
        try (Tablet tablet = Tablet.show(chromium, server, scene, Chromium.Way.PLAIN)) {
            Page page = tablet.page();
            page.locator("[data-act=call]").focus();
            page.keyboard().press("Enter");
            assertThat(page.locator(".ask")).isFocused();
            page.keyboard().press("Escape");
            assertThat(page.locator(".ask")).hasCount(0);
            assertThat(page.locator("[data-act=call]")).isFocused();
        }
    }

    @Test
    void a_tablet_is_enrolled_with_keys_alone() {
        server.show("post", ScriptedFrames.of("post-free", "running"));
        Page page = chromium.open(server.address("/enrol#pr0ct0r1"), "", Chromium.Way.PLAIN);
        page.locator("[name=code]").focus();
        assertThat(page.locator("[name=code]")).hasValue("PR0CT0R1");
        page.keyboard().press("Tab");
        page.keyboard().type("Alder");
        page.keyboard().press("Enter");
        page.waitForURL("**/post*");
        assertThat(page.locator("main")).containsText("No candidate with you");
        page.context().close();
    }

    @Test
    void a_wrong_code_is_refused_in_words_and_what_was_typed_stays() {
        Page page = chromium.open(server.address("/"), "", Chromium.Way.PLAIN);
        page.fill("[name=code]", "abcd2345");
        page.fill("[name=person]", "Alder");
        page.click("[data-act=enrol]");
        assertThat(page.locator(".wrong")).containsText("This code is not known");
        assertThat(page.locator("[name=person]")).hasValue("Alder");
        page.context().close();
    }
}
