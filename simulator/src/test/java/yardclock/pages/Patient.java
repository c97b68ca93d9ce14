package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import com.microsoft.playwright.Locator;
import com.microsoft.playwright.assertions.LocatorAssertions;

/** Assertions that wait longer than Playwright's five seconds: a whole gateway is behind. */
record Patient(LocatorAssertions asserting) {
    private static final double PATIENCE_MILLIS = 30_000;

    static Patient soon(Locator locator) {
        return new Patient(assertThat(locator));
    }

    void hasText(String text) {
        asserting.hasText(text, new LocatorAssertions.HasTextOptions().setTimeout(PATIENCE_MILLIS));
    }

    void hasCount(int count) {
        asserting.hasCount(
                count, new LocatorAssertions.HasCountOptions().setTimeout(PATIENCE_MILLIS));
    }

    void containsText(String text) {
        asserting.containsText(
                text, new LocatorAssertions.ContainsTextOptions().setTimeout(PATIENCE_MILLIS));
    }

    void isVisible() {
        asserting.isVisible(new LocatorAssertions.IsVisibleOptions().setTimeout(PATIENCE_MILLIS));
    }

    void hasAttribute(String name, String value) {
        asserting.hasAttribute(
                name,
                value,
                new LocatorAssertions.HasAttributeOptions().setTimeout(PATIENCE_MILLIS));
    }
}
