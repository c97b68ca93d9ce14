package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;

import java.util.List;

/**
 * The proctor's page without its link: it goes on by what it knows, keeps each press over a reload,
 * and sends them in order, each once.
 */
class GapTest extends WithPages {
    private static final String KEPT =
            """
            async () => {
              const { store } = await import("/ui/lib/outbox-store.js");
              const all = [await store.waiting(), await store.answered(), await store.lastFrame()];
              return all.flat().filter(Boolean).length;
            }
            """;
    private static final String CACHED =
            """
            async () => {
              const [name] = await caches.keys();
              const kept = await (await caches.open(name)).keys();
              return kept.map((request) => new URL(request.url).pathname);
            }
            """;
    private static final String LOADED =
            """
            () => performance.getEntriesByType("resource")
              .map((entry) => new URL(entry.name).pathname)
              .filter((path) => /^\\/(ui|webjars)\\//.test(path))
            """;

    /** How many corners of zones are not where a finger would meet them. */
    private static final String COVERED =
            """
            () => [...document.querySelectorAll(".zones .zone")].flatMap((zone) => {
              const { left, right, top, bottom } = zone.getBoundingClientRect();
              const inset = 24;
              return [[left + inset, top + inset], [right - inset, bottom - inset]]
                .filter(([x, y]) => !zone.contains(document.elementFromPoint(x, y)));
            }).length
            """;

    @Test
    void presses_of_a_gap_survive_a_reload_in_the_gap_and_arrive_once_in_order() {
        try (Tablet tablet = show("post-under-way")) {
            Page page = tablet.page();
            becomeInstalled(page);
            cut(page);
            press(page, "mark");
            press(page, "finish");
            assertThat(page.locator("[data-waiting]")).hasAttribute("data-waiting", "2");
            assertThat(page.locator("main h3").first()).hasText("Pike poles");
            page.reload();
            assertThat(page.locator("[data-waiting]")).hasAttribute("data-waiting", "2");
            assertThat(page.locator("main h3").first()).hasText("Pike poles");
            assertThat(page.locator("html")).hasAttribute("data-stale", "true");
            press(page, "mark");
            assertThat(page.locator("[data-waiting]")).hasAttribute("data-waiting", "3");
            assertThat(server.rulings()).isEmpty();
            page.context().setOffline(false);
            await().until(() -> server.rulings().size() >= 3);
            page.waitForSelector("html[data-link=live][data-stale=false]");
            assertThat(points()).containsExactly("turned-post", "finish", "start");
            assertThat(server.rulings())
                    .extracting(one -> one.path("key").asText())
                    .doesNotHaveDuplicates();
            assertThat(page.locator("[data-waiting]")).hasCount(0);
            assertThat(server.rulings().get(0).path("boot"))
                    .isEqualTo(server.rulings().get(1).path("boot"))
                    .isNotEqualTo(server.rulings().get(2).path("boot"));
            assertThat(tablet.complaints()).isEmpty();
        }
    }

    @Test
    void a_ruling_that_comes_too_late_is_shown_with_both_sides_until_it_is_noted() {
        try (Tablet tablet = show("post-splits")) {
            Page page = tablet.page();
            cut(page);
            page.click("[data-act=confirm-mannequin-drag]");
            assertThat(page.locator("[data-waiting]")).hasAttribute("data-waiting", "1");
            server.answerWith(409, "{\"refused\":\"already-ruled\",\"words\":\"Someone did.\"}");
            page.context().setOffline(false);
            page.click("[data-act=not-taken]");
            for (String look : List.of("light", "dark")) {
                for (String language : List.of("en", "es")) {
                    wear(page, language, look);
                    assertThat(Measure.axe(page)).as(language + " " + look).isEmpty();
                    assertThat(Measure.smallControls(page)).isEmpty();
                    assertThat(Measure.smallTexts(page)).isEmpty();
                }
            }
            wear(page, "en", "light");
            assertThat(page.locator(".refusals"))
                    .containsText("Split confirmed, Mannequin drag, number 17");
            assertThat(page.locator(".refusals")).containsText("Someone has ruled on this already");
            page.keyboard().press("Escape");
            assertThat(page.locator("[data-act=not-taken]")).isFocused();
            page.reload();
            page.locator("[data-act=not-taken]").focus();
            page.keyboard().press("Enter");
            page.keyboard().press("Tab");
            page.keyboard().press("Enter");
            assertThat(page.locator(".ask")).hasCount(0);
            assertThat(page.locator("[data-act=not-taken]")).hasCount(0);
            assertThat(server.rulings()).hasSize(1);
        }
    }

    @Test
    void of_two_tablets_that_rule_on_one_split_the_second_sees_what_stands() {
        try (Tablet late = show("post-splits");
                Tablet first = show("post-splits")) {
            cut(late.page());
            first.page().waitForSelector("html[data-link=live]");
            late.page().click("[data-act=confirm-mannequin-drag]");
            first.page().click("[data-act=confirm-mannequin-drag]");
            await().until(() -> server.rulings().size() == 1);
            server.answerWith(
                    409,
                    "{\"refused\":\"already-ruled\",\"words\":\"Someone did.\",\"standing\":{"
                        + "\"act\":\"void-split\",\"reason\":\"sensor-failed\",\"words\":\"wet\","
                        + "\"person\":\"Birch\",\"role\":\"coordinator\",\"atMicros\":1}}");
            late.page().context().setOffline(false);
            assertThat(late.page().locator("[data-act=not-taken]")).containsText("not taken");
            late.page().click("[data-act=not-taken]");
            assertThat(late.page().locator(".refusals"))
                    .containsText("Split made void, Mannequin drag, by Birch, coordinator,");
            assertThat(late.page().locator(".refusals")).containsText("(sensor failed: wet).");
            assertThat(first.page().locator("[data-act=not-taken]")).hasCount(0);
            assertThat(server.rulings()).hasSize(2);
        }
    }

    @Test
    void stop_in_a_gap_is_not_kept_for_later_and_becomes_a_note() {
        try (Tablet tablet = show("post-under-way")) {
            Page page = tablet.page();
            cut(page);
            page.click("[data-act=stop]", new Page.ClickOptions().setDelay(800));
            assertThat(page.locator(".not-sent")).containsText("whistle, voice, radio");
            page.click("[data-act=did-that]");
            page.context().setOffline(false);
            await().until(() -> !server.rulings().isEmpty());
            assertThat(server.rulings())
                    .extracting(one -> one.path("act").path("act").asText())
                    .containsOnly("note");
        }
    }

    @Test
    void alone_the_page_can_be_read_and_pressed_in_both_looks_and_languages() {
        try (Tablet tablet = show("post-start")) {
            Page page = tablet.page();
            cut(page);
            assertThat(page.locator("[data-act=start]")).hasCount(0);
            press(page, "mark");
            for (String look : List.of("light", "dark")) {
                for (String language : List.of("en", "es")) {
                    wear(page, language, look);
                    for (Chromium.Glass glass :
                            List.of(Chromium.Glass.TABLET, Chromium.Glass.PHONE)) {
                        page.setViewportSize(glass.width(), glass.height());
                        String where = language + " " + look + " " + glass.name();
                        assertThat(Measure.axe(page)).as(where).isEmpty();
                        assertThat(Measure.smallControls(page)).as(where).isEmpty();
                        assertThat(Measure.smallTexts(page)).as(where).isEmpty();
                        assertThat(Measure.overflows(page)).as(where).isEmpty();
                    }
                }
            }
        }
    }

    @Test
    void alone_with_presses_that_wait_both_zones_stay_in_view_and_under_the_finger() {
        try (Tablet tablet = show("post-under-way")) {
            Page page = tablet.page();
            cut(page);
            press(page, "mark");
            press(page, "finish");
            press(page, "mark");
            assertThat(page.locator("[data-waiting]")).hasAttribute("data-waiting", "3");
            for (String language : List.of("en", "es")) {
                wear(page, language, "light");
                for (Chromium.Glass glass : List.of(Chromium.Glass.TABLET, Chromium.Glass.PHONE)) {
                    page.setViewportSize(glass.width(), glass.height());
                    page.evaluate("() => document.querySelector('main').scrollTo(0, 0)");
                    assertThat(page.evaluate(COVERED)).as(language + " " + glass).isEqualTo(0);
                }
            }
        }
    }

    @Test
    void giving_the_badge_back_erases_what_was_kept_after_a_question() {
        try (Tablet tablet = show("post-under-way")) {
            Page page = tablet.page();
            server.answerWith(503, "{\"refused\":\"busy\",\"words\":\"-\"}");
            page.click("[data-act=finish]");
            await().until(() -> !server.rulings().isEmpty());
            page.navigate(server.address("/"));
            page.click(".worn button");
            assertThat(page.locator(".ask")).containsText("never sent");
            page.click("[data-ask=yes]");
            assertThat(page.locator(".worn")).hasCount(0);
            assertThat(page.evaluate(KEPT)).isEqualTo(0);
        }
    }

    @Test
    void the_worker_keeps_the_pages_own_files_and_nothing_of_the_gateways() {
        try (Tablet tablet = show("post-under-way")) {
            Page page = tablet.page();
            becomeInstalled(page);
            page.reload();
            page.waitForSelector("html[data-link=live]");
            List<?> kept = (List<?>) page.evaluate(CACHED);
            assertThat(kept).asString().contains("/post,").doesNotContain("/api/");
            List<?> loaded = (List<?>) page.evaluate(LOADED);
            assertThat(loaded).hasSizeGreaterThan(40);
            assertThat(kept.containsAll(loaded)).as("%s of %s", loaded, kept).isTrue();
        }
    }

    private static void wear(Page page, String language, String look) {
        page.evaluate(
                "([language, look]) => import('/ui/lib/look.js').then((on) => {"
                        + " on.chooseLanguage(language); on.chooseLook(look); })",
                List.of(language, look));
    }

    /** The page's files are on the tablet from then on. */
    private static void becomeInstalled(Page page) {
        page.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
    }

    private static void press(Page page, String zone) {
        page.click("[data-act=" + zone + "][data-settled=true][aria-disabled=false]");
        page.waitForSelector("[data-act=" + zone + "][aria-busy=false]");
    }

    private List<String> points() {
        return server.rulings().stream()
                .map(one -> one.path("act").path("point").asText())
                .toList();
    }

    private Tablet show(String scene) {
        return Tablet.show(chromium, server, Scene.named(scene), Chromium.Way.MEASURED);
    }
}
