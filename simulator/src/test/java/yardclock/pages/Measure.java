package yardclock.pages;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.microsoft.playwright.Page;

import java.util.List;

/**
 * A ruler for pages: the limits of this project's screens, taken from what Chromium really laid
 * out. Each method returns the breaches in words; an empty list is good.
 */
final class Measure {
    static final int TAP_MIN_PX = 56;
    static final int TEXT_MIN_PX = 18;

    /** 20 mm on a tablet of about 150 CSS px to the inch would be 118; one step more. */
    static final int ZONE_MIN_PX = 120;

    private static final String CONTROLS =
            """
            ([tap, zone]) => [...document.querySelectorAll(
                'button, a[href], input, textarea, select, summary, label.choice')]
              .filter((one) => one.checkVisibility())
              .map((one) => [one, one.getBoundingClientRect(), one.matches('.zone') ? zone : tap])
              .filter(([, box, least]) => box.width < least - 0.5 || box.height < least - 0.5)
              .map(([one, box]) => `${one.outerHTML.slice(0, 90)} ${box.width}x${box.height}`)
            """;
    private static final String TEXTS =
            """
            (least) => {
              const small = [];
              const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
              while (walk.nextNode()) {
                const one = walk.currentNode.parentElement;
                const size = parseFloat(getComputedStyle(one).fontSize);
                if (walk.currentNode.data.trim() && one.checkVisibility() && size < least - 0.01)
                  small.push(`${walk.currentNode.data.trim().slice(0, 60)}: ${size}px`);
              }
              return small;
            }
            """;
    private static final String OVERFLOWS =
            """
            () => [...document.querySelectorAll('body *')]
              .filter((one) => one.checkVisibility() && !one.closest('.aside, svg, .wide-only'))
              .filter((one) => one.scrollWidth > one.clientWidth + 1 && one.clientWidth > 0
                  && getComputedStyle(one).display !== 'inline')
              .map((one) => `${one.outerHTML.slice(0, 90)} ${one.scrollWidth}>${one.clientWidth}`)
            """;
    private static final String AXE =
            """
            () => axe.run(document, {
              runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'],
              rules: {
                'color-contrast-enhanced': { enabled: true },
                'target-size': { enabled: true },
              },
              resultTypes: ['violations'],
            }).then(({ violations }) => violations.flatMap((rule) => rule.nodes.map(
              (node) => `${rule.id}: ${node.html.slice(0, 120)} ${node.failureSummary}`)))
            """;

    private Measure() {}

    static List<String> smallControls(Page page) {
        return words(page.evaluate(CONTROLS, List.of(TAP_MIN_PX, ZONE_MIN_PX)));
    }

    static List<String> smallTexts(Page page) {
        return words(page.evaluate(TEXTS, TEXT_MIN_PX));
    }

    /** Anything wider than its place: on a tablet nobody scrolls sideways. */
    static List<String> overflows(Page page) {
        return words(page.evaluate(OVERFLOWS));
    }

    /** WCAG 2.2 AA, with contrast of 7:1 on top of 4.5:1, as axe-core judges it. */
    static List<String> axe(Page page) {
        page.evaluate(AxeBuilder.getAxeScript());
        return words(page.evaluate(AXE));
    }

    private static List<String> words(Object found) {
        return ((List<?>) found).stream().map(String::valueOf).toList();
    }
}
