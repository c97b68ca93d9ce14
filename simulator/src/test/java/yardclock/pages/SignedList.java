package yardclock.pages;

import static yardclock.pages.Patient.soon;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.Page;

import yardclock.app.settings.DemoPlan;
import yardclock.core.course.CheckItem;

/** The demonstration's start-of-day checklist, signed on the safety officer's page. */
final class SignedList {
    private SignedList() {}

    static void sign(Page watch) {
        for (CheckItem item : DemoPlan.plan().plan().startOfDay()) {
            sign(watch, item.id());
        }
    }

    /** Signs one item, and waits until the page's own frame says so. */
    static void sign(Page watch, String item) {
        watch.click("[data-act=check-" + item + "]");
        // As slowly as a hand: two presses at once are one finger bouncing.
        watch.click("[data-ask=yes]", new Page.ClickOptions().setDelay(500));
        Locator line = watch.locator("[data-item=" + item + "]");
        soon(line).containsText("Take back");
    }
}
