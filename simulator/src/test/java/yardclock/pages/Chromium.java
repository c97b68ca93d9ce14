package yardclock.pages;

import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** The machine's own Chromium, without a window. One for a test class; a fresh context per page. */
final class Chromium implements AutoCloseable {
    /** A tablet on its side and a phone upright, CSS pixels. */
    record Glass(String name, int width, int height) {
        static final Glass TABLET = new Glass("1024x768", 1024, 768);
        static final Glass PHONE = new Glass("412x915", 412, 915);
    }

    private final Playwright playwright =
            Playwright.create(
                    new Playwright.CreateOptions()
                            .setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
    private final Browser browser =
            playwright
                    .chromium()
                    .launch(
                            new BrowserType.LaunchOptions()
                                    .setExecutablePath(Path.of("/usr/bin/chromium"))
                                    .setArgs(
                                            List.of(
                                                    "--no-sandbox",
                                                    "--disable-gpu",
                                                    "--disable-quic",
                                                    "--no-first-run",
                                                    "--disable-background-networking",
                                                    "--disable-component-update",
                                                    "--disable-sync")));

    /** A page that already carries this role's badge, in this language and look. */
    Page open(String address, String role, Glass glass, String language, String look) {
        BrowserContext context =
                browser.newContext(
                        new Browser.NewContextOptions()
                                .setViewportSize(glass.width(), glass.height()));
        List<String> script = new ArrayList<>();
        script.add("localStorage.setItem('yc-language','" + language + "')");
        script.add("localStorage.setItem('yc-look','" + look + "')");
        if (!role.isEmpty()) {
            script.add("localStorage.setItem('yc-token-" + role + "','test-token')");
            script.add("localStorage.setItem('yc-who-" + role + "','{\"person\":\"Alder\"}')");
        }
        context.addInitScript(String.join(";", script));
        Page page = context.newPage();
        page.navigate(address);
        return page;
    }

    @Override
    public void close() {
        browser.close();
        playwright.close();
    }
}
