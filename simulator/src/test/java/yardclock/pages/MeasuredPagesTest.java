package yardclock.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import java.util.List;

/** Gloves, sun, rain: every state of every page is measured, in both languages and both looks. */
class MeasuredPagesTest {
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

    static List<Scene> scenes() {
        return Scene.all();
    }

    @ParameterizedTest
    @MethodSource("scenes")
    void every_control_text_and_contrast_is_large_enough(Scene scene) {
        scene.stage(server);
        Page page =
                chromium.open(server.address(scene.path()), scene.role(), Chromium.Way.MEASURED);
        scene.settle(page);
        for (String language : List.of("en", "es")) {
            for (String look : List.of("light", "dark")) {
                String where = scene + " " + language + " " + look;
                page.evaluate(
                        "([language, look]) => import('/ui/lib/look.js').then((on) => {"
                                + " on.chooseLanguage(language); on.chooseLook(look); })",
                        List.of(language, look));
                measure(page, where, Chromium.Glass.PHONE);
                measure(page, where, Chromium.Glass.TABLET);
                assertThat(Measure.axe(page)).as(where).isEmpty();
            }
        }
        page.context().close();
    }

    private static void measure(Page page, String where, Chromium.Glass glass) {
        page.setViewportSize(glass.width(), glass.height());
        String here = where + " " + glass.name();
        assertThat(Measure.smallControls(page)).as(here).isEmpty();
        assertThat(Measure.smallTexts(page)).as(here).isEmpty();
        assertThat(Measure.overflows(page)).as(here).isEmpty();
    }
}
