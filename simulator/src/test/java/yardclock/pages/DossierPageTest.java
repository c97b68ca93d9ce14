package yardclock.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;
import com.microsoft.playwright.options.Media;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.boot.DossierPages;
import yardclock.app.records.paper.Language;
import yardclock.sim.twin.DayJournals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** A dossier's page of a rough day's number, as a browser and a printer take it. */
class DossierPageTest {
    private static final long SEED = 3;

    /** What a sheet leaves between the page's margins, in CSS pixels of 1/96 inch. */
    private static final int A4_WIDTH = (210 - 26) * 96 * 10 / 254;

    private static final int LETTER_WIDTH = (2_159 - 260) * 96 / 254;

    @TempDir static Path directory;
    private static Chromium chromium;
    private static Path journal;

    @BeforeAll
    static void play() throws Exception {
        journal = DayJournals.writeRough(SEED, 4, directory);
        chromium = new Chromium();
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    private static Page open(Language language, List<String> asked) throws Exception {
        Path file = directory.resolve("dossier-" + language.code() + ".html");
        Files.writeString(file, DossierPages.html(journal, 4, language));
        Page page = chromium.open("about:blank", "", Chromium.Way.MEASURED);
        page.onRequest(request -> asked.add(request.url()));
        page.navigate(file.toUri().toString());
        return page;
    }

    private static int wider(Page page) {
        Object by = page.evaluate("document.scrollingElement.scrollWidth - innerWidth");
        return ((Number) by).intValue();
    }

    @Test
    void everybody_can_read_it_on_a_tablet_and_a_phone() throws Exception {
        for (Language language : Language.values()) {
            Page page = open(language, new ArrayList<>());
            for (Chromium.Glass glass : List.of(Chromium.Glass.TABLET, Chromium.Glass.PHONE)) {
                page.setViewportSize(glass.width(), glass.height());
                assertThat(Measure.axe(page)).as("%s %s", language, glass).isEmpty();
                assertThat(Measure.smallTexts(page)).as("%s %s", language, glass).isEmpty();
                assertThat(wider(page)).as("%s %s", language, glass).isNotPositive();
            }
            page.context().close();
        }
    }

    @Test
    void it_fits_both_sizes_of_paper_and_loads_nothing_but_itself() throws Exception {
        for (Language language : Language.values()) {
            List<String> asked = new ArrayList<>();
            Page page = open(language, asked);
            page.emulateMedia(new Page.EmulateMediaOptions().setMedia(Media.PRINT));
            for (int width : new int[] {A4_WIDTH, LETTER_WIDTH}) {
                page.setViewportSize(width, 900);
                assertThat(wider(page)).as("%s %d", language, width).isNotPositive();
            }
            assertThat(asked).hasSize(1);
            page.context().close();
        }
    }
}
