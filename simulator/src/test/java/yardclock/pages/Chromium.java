package yardclock.pages;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The machine's own Chromium, without a window. One for a test class; a fresh context per page. */
final class Chromium implements AutoCloseable {
    /** A tablet on its side and a phone upright, CSS pixels. */
    record Glass(String name, int width, int height) {
        static final Glass TABLET = new Glass("1024x768", 1024, 768);
        static final Glass PHONE = new Glass("412x915", 412, 915);
    }

    private static final List<String> ARGUMENTS =
            List.of(
                    "--no-sandbox",
                    "--disable-gpu",
                    "--disable-quic",
                    "--no-first-run",
                    "--disable-background-networking",
                    "--disable-component-update",
                    "--disable-sync");

    private final Playwright playwright =
            Playwright.create(
                    new Playwright.CreateOptions()
                            .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    private final Browser browser;

    Chromium() {
        this(List.of());
    }

    /** A browser that was told more; each argument as on its command line. */
    Chromium(List<String> more) {
        List<String> arguments = new ArrayList<>(ARGUMENTS);
        arguments.addAll(more);
        browser =
                playwright
                        .chromium()
                        .launch(
                                new BrowserType.LaunchOptions()
                                        .setExecutablePath(Path.of("/usr/bin/chromium"))
                                        .setArgs(arguments));
    }

    /**
     * How a page is opened.
     *
     * @param measured whether the test runs script inside the page, which its own policy forbids
     */
    record Way(Glass glass, String language, String look, boolean measured) {
        static final Way PLAIN = new Way(Glass.TABLET, "en", "light", false);
        static final Way MEASURED = new Way(Glass.TABLET, "en", "light", true);
    }

    /** A page that already carries this role's badge, or none when the role is empty. */
    Page open(String address, String role, Way way) {
        BrowserContext context =
                browser.newContext(
                        new Browser.NewContextOptions()
                                .setBypassCSP(way.measured())
                                .setViewportSize(way.glass().width(), way.glass().height()));
        context.addInitScript(memory(role, way));
        Page page = context.newPage();
        page.navigate(address);
        return page;
    }

    /** What the tablet remembers; a page that was chosen otherwise since keeps its choice. */
    private static String memory(String role, Way way) {
        Map<String, String> kept = new LinkedHashMap<>();
        kept.put("yc-language", way.language());
        kept.put("yc-look", way.look());
        if (!role.isEmpty()) {
            kept.put("yc-token-" + role, "test-token");
            kept.put("yc-who-" + role, "{\"person\":\"Alder\"}");
        }
        StringBuilder script = new StringBuilder();
        kept.forEach(
                (name, value) ->
                        script.append("localStorage.getItem('%1$s') ?? ".formatted(name))
                                .append(
                                        "localStorage.setItem('%s', '%s');"
                                                .formatted(name, value)));
        return script.toString();
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
