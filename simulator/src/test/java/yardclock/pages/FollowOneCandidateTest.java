package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.assertions.LocatorAssertions;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.settings.DemoPlan;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;

/**
 * One candidate from release to official time, through the real gateway, its broker and simulated
 * field units, with the browser as everybody's tablet.
 */
class FollowOneCandidateTest {
    private static final int STATIONS = DemoPlan.plan().plan().stations().size();
    private static final Pattern A_TIME = Pattern.compile("\\d:\\d\\d\\.\\d");
    private static final double PATIENCE_MILLIS = 30_000;

    @TempDir Path folder;

    @Test
    @Timeout(360)
    void post_and_board_show_one_candidate_from_release_to_official_time() throws Exception {
        try (OpenYard yard = new OpenYard(folder);
                Chromium chromium = new Chromium()) {
            Page board = chromium.open(yard.address("/board"), "", Chromium.Way.PLAIN);
            Page post = enrolled(chromium, yard, "proctor", "Alder");
            AtomicInteger exchanges = countExchanges(post);
            Page control = enrolled(chromium, yard, "coordinator", "Oak");

            control.click("[data-act=release][aria-disabled=false]");
            soon(post.locator(".patch.giant")).hasText("1");
            soon(numbers(board, "board.called")).hasText("1");

            walkTheCourse(yard, post, board);

            soon(numbers(board, "board.course-done")).hasText("1");
            assertThat(exchanges).as("with the proctor's tablet").hasValueGreaterThan(3);
            confirmAll(post);
            soon(post.locator("main")).containsText("Course done");
            assertThat(board.locator("main")).not().containsText(A_TIME);

            String official = officialTime(control, yard);
            post.click("[data-act=sheet]");
            soon(post.frameLocator("iframe.sheet").locator("body")).containsText(official);
            post.click("[data-ask=back]");
            post.click("[data-act=tell]");
            soon(post.locator("main")).containsText("No candidate with you");
            soon(board.locator("main")).containsText(official);
        }
    }

    private static Page enrolled(Chromium chromium, OpenYard yard, String role, String person)
            throws Exception {
        String link = yard.address("/enrol#" + yard.code(role));
        Page page = chromium.open(link, "", Chromium.Way.PLAIN);
        page.fill("[name=person]", person);
        page.click("[data-act=enrol]");
        page.waitForSelector("html[data-link=live] main > *");
        return page;
    }

    private static AtomicInteger countExchanges(Page page) {
        AtomicInteger exchanges = new AtomicInteger();
        page.onResponse(
                answer -> {
                    if (answer.url().endsWith("/api/clock") && answer.status() == 200) {
                        exchanges.incrementAndGet();
                    }
                });
        return exchanges;
    }

    /** Presses what the proctor sees; while the candidate runs, the post shows no time at all. */
    private static void walkTheCourse(OpenYard yard, Page post, Page board) throws Exception {
        WalkingProctor proctor = new WalkingProctor(STATIONS);
        yard.send(proctor);
        for (Optional<String> press = proctor.nextPress();
                press.isPresent();
                press = proctor.nextPress()) {
            post.click(press.get());
            assertThat(post.locator("main").innerText()).doesNotContainPattern(A_TIME);
        }
        soon(post.locator("main")).containsText("Splits to rule on");
        assertThat(board.locator("main")).not().containsText(A_TIME);
    }

    /**
     * All clean ones with one press, then one by one what the gateway would not call clean: others
     * cross some finishes too, and this proctor taps none of them; and on a busy machine an
     * interval may be too wide.
     */
    private static void confirmAll(Page post) {
        Locator splits = post.locator("ol.splits > li");
        Locator open = post.locator("ol.splits [data-act^=confirm-]");
        soon(splits).hasCount(STATIONS);
        soon(open).hasCount(STATIONS);
        String shown = String.join("\n", splits.allInnerTexts());
        Locator clean = post.locator("[data-act=confirm-all]");
        assertThat(clean.innerText()).as(shown).matches("Confirm all \\d clean");
        int left = STATIONS - Integer.parseInt(clean.innerText().replaceAll("\\D", ""));
        clean.click();
        for (; left > 0; left--) {
            soon(open).hasCount(left);
            open.first().click();
        }
    }

    /** As the leaderboard shows it; within a second of the truth, for exam time runs fast here. */
    private static String officialTime(Page control, OpenYard yard) {
        control.navigate(yard.address("/leaderboard"));
        String official = control.locator(".ranking .time").first().innerText();
        String[] parts = official.split("[:.]", -1);
        long tenths = Long.parseLong(parts[0]) * 600 + Long.parseLong(parts[1] + parts[2]);
        assertThat(tenths * 100_000).isCloseTo(yard.trueMicros(), within(1_000_000L));
        return official;
    }

    private static Locator numbers(Page board, String section) {
        return board.locator("section[aria-labelledby='" + section + "'] .patch");
    }

    private static Patient soon(Locator locator) {
        return new Patient(assertThat(locator));
    }

    /** Assertions that wait longer than Playwright's five seconds: a whole gateway is behind. */
    private record Patient(LocatorAssertions asserting) {
        void hasText(String text) {
            asserting.hasText(
                    text, new LocatorAssertions.HasTextOptions().setTimeout(PATIENCE_MILLIS));
        }

        void hasCount(int count) {
            asserting.hasCount(
                    count, new LocatorAssertions.HasCountOptions().setTimeout(PATIENCE_MILLIS));
        }

        void containsText(String text) {
            asserting.containsText(
                    text, new LocatorAssertions.ContainsTextOptions().setTimeout(PATIENCE_MILLIS));
        }
    }
}
