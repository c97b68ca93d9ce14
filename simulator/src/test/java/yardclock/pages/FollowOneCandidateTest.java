package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import static yardclock.pages.Patient.soon;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.journal.JournalFile;
import yardclock.app.settings.DemoPlan;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Outcome;
import yardclock.core.fact.FactKind;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Pattern;

/**
 * One candidate from release to official time, through the real gateway, its broker and simulated
 * field units, with the browser as everybody's tablet. One of two proctors loses the link at the
 * finish, rules nevertheless, and comes back when the other has ruled.
 */
class FollowOneCandidateTest {
    private static final int STATIONS = DemoPlan.plan().plan().stations().size();
    private static final Pattern A_TIME = Pattern.compile("\\d:\\d\\d\\.\\d");

    @TempDir Path folder;

    @Test
    @Timeout(360)
    void one_candidate_from_release_to_official_time_beside_two_proctors_who_conflict()
            throws Exception {
        Path journal = play();
        assertThat(rulingsOnSplits(journal))
                .as("one ruling a split, whoever pressed how often")
                .hasSize(STATIONS)
                .doesNotHaveDuplicates();
    }

    /** The whole run; where its journal is. */
    private Path play() throws Exception {
        try (OpenYard yard = new OpenYard(folder);
                Chromium chromium = new Chromium()) {
            Page board = chromium.open(yard.address("/board"), "", Chromium.Way.PLAIN);
            Page cut = enrolled(chromium, yard, "proctor", "Alder", Chromium.Way.MEASURED);
            AtomicInteger exchanges = countExchanges(cut);
            Page control = enrolled(chromium, yard, "coordinator", "Oak", Chromium.Way.PLAIN);

            Page watch = enrolled(chromium, yard, "safety", "Spruce", Chromium.Way.PLAIN);
            SignedList.sign(watch);
            watch.context().close();

            control.click("[data-act=release][aria-disabled=false]");
            soon(cut.locator(".patch.giant")).hasText("1");
            soon(numbers(board, "board.called")).hasText("1");

            Page post = enrolled(chromium, yard, "proctor", "Birch", Chromium.Way.PLAIN);

            walkTheCourse(yard, cut, board);

            soon(numbers(board, "board.course-done")).hasText("1");
            assertThat(exchanges).as("with the proctor's tablet").hasValueGreaterThan(3);
            String pressed = confirmsWithoutLink(cut);
            handOverToBirch(control);
            confirmAll(post);
            soon(post.locator("main")).containsText("Course done");
            seesBothSides(cut, pressed);
            assertThat(board.locator("main")).not().containsText(A_TIME);

            String official = officialTime(control, yard);
            post.click("[data-act=sheet]");
            soon(post.frameLocator("iframe.sheet").locator("body")).containsText(official);
            post.click("[data-ask=back]");
            post.click("[data-act=tell]");
            soon(post.locator("main")).containsText("No candidate with you");
            soon(board.locator("main")).containsText(official);
            return yard.journal();
        }
    }

    /** In the gap the tablet is even loaded anew; what was pressed is what it was pressed on. */
    private static String confirmsWithoutLink(Page cut) {
        cut.evaluate("() => navigator.serviceWorker.ready.then(() => true)");
        soon(cut.locator("ol.splits [data-act^=confirm-]")).hasCount(STATIONS);
        cut.context().setOffline(true);
        Locator first = cut.locator("ol.splits > li").first();
        String pressed = first.locator("h3").innerText();
        first.locator("[data-act^=confirm-]").click();
        soon(cut.locator("[data-waiting='1']")).hasCount(1);
        cut.reload();
        soon(cut.locator("[data-waiting='1']")).hasCount(1);
        return pressed;
    }

    private static void handOverToBirch(Page control) {
        control.click("[data-act=more-1]");
        control.click("text=Hand over to Birch");
    }

    /** Refused, with who ruled meanwhile beside it, until the person takes note by the keyboard. */
    private static void seesBothSides(Page cut, String pressed) {
        cut.context().setOffline(false);
        Locator bar = cut.locator("[data-act=not-taken]");
        soon(bar).hasCount(1);
        bar.focus();
        cut.keyboard().press("Enter");
        Locator both = cut.locator(".refusals");
        soon(both).containsText("Split confirmed, " + pressed + ", number 1");
        soon(both).containsText("Another proctor is with this candidate.");
        soon(both).containsText("Split confirmed, " + pressed + ", by Birch, proctor,");
        assertThat(Measure.axe(cut)).isEmpty();
        cut.keyboard().press("Tab");
        cut.keyboard().press("Enter");
        soon(bar).hasCount(0);
    }

    /** The split of each ruling that decided one and was taken. */
    private static List<String> rulingsOnSplits(Path day) throws Exception {
        List<String> ruled = new ArrayList<>();
        Engine engine = new Engine();
        try (JournalFile journal = JournalFile.open(day, entry -> {})) {
            journal.replay(
                    Long.MAX_VALUE,
                    entry -> {
                        Outcome outcome = engine.apply(entry);
                        outcome.facts().stream()
                                .filter(fact -> fact.kind() == FactKind.SPLIT_CONFIRMED)
                                .forEach(fact -> ruled.add(fact.station()));
                    });
        }
        return ruled;
    }

    private static Page enrolled(
            Chromium chromium, OpenYard yard, String role, String person, Chromium.Way way)
            throws Exception {
        String link = yard.address("/enrol#" + yard.code(role));
        Page page = chromium.open(link, "", way);
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
}
