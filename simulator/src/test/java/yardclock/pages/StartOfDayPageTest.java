package yardclock.pages;

import static yardclock.pages.Patient.soon;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

import java.nio.file.Path;

/**
 * The start-of-day checklist on the real gateway: signed on the safety officer's page, felt on the
 * coordinator's.
 */
class StartOfDayPageTest {
    @TempDir Path folder;

    @Test
    @Timeout(120)
    void a_release_becomes_possible_with_the_last_signature_and_impossible_when_one_is_taken_back()
            throws Exception {
        try (OpenYard yard = new OpenYard(folder);
                Chromium chromium = new Chromium()) {
            enrolled(chromium, yard, "proctor", "Alder");
            Page control = enrolled(chromium, yard, "coordinator", "Oak");
            Page watch = enrolled(chromium, yard, "safety", "Spruce");
            Locator release = control.locator("[data-act=release]");
            soon(release).hasAttribute("aria-disabled", "true");
            soon(control.locator(".blockers")).containsText("medical team stands by");

            SignedList.sign(watch);
            soon(watch.locator("[data-item=medical]")).containsText("Spruce");
            soon(control.locator(".blockers")).hasCount(0);
            soon(release).hasAttribute("aria-disabled", "false");

            watch.click("[data-act=check-medical]");
            watch.fill("textarea", "at the gate");
            watch.click("[data-ask=yes]");
            soon(release).hasAttribute("aria-disabled", "true");
            soon(control.locator("[data-holds]")).containsText("Start-of-day checklist");
            soon(watch.locator("[data-item=medical]")).containsText("at the gate");

            SignedList.sign(watch, "medical");
            release.click();
            soon(control.locator("main .on-course")).containsText("released");
        }
    }

    private static Page enrolled(Chromium chromium, OpenYard yard, String role, String person)
            throws Exception {
        Page page =
                chromium.open(yard.address("/enrol#" + yard.code(role)), "", Chromium.Way.MEASURED);
        page.fill("[name=person]", person);
        page.click("[data-act=enrol]");
        page.waitForSelector("html[data-link=live] main > *");
        return page;
    }
}
