package yardclock.pages;

import com.microsoft.playwright.ConsoleMessage;
import com.microsoft.playwright.Page;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

/**
 * One page under the pages' own strict policy, and everything Chromium complained about. Only
 * failed connections are no complaint: tests cut them on purpose.
 */
final class Tablet implements AutoCloseable {
    private final Page page;
    private final List<String> complaints = new CopyOnWriteArrayList<>();

    private Tablet(Page page) {
        this.page = page;
        page.onConsoleMessage(this::hear);
        page.onPageError(complaints::add);
    }

    /** Opens the scene's page on the server, in the way given, and waits until it is shown. */
    static Tablet show(Chromium chromium, PageServer server, Scene scene, Chromium.Way way) {
        scene.stage(server);
        Tablet tablet = new Tablet(chromium.open(server.address(scene.path()), scene.role(), way));
        scene.settle(tablet.page);
        return tablet;
    }

    Page page() {
        return page;
    }

    List<String> complaints() {
        return complaints;
    }

    private void hear(ConsoleMessage message) {
        boolean linkOnly =
                message.text().startsWith("Failed to load resource")
                        || message.text().contains("net::ERR");
        if (message.type().equals("error") && !linkOnly) {
            complaints.add(message.text());
        }
    }

    @Override
    public void close() {
        page.context().close();
    }
}
