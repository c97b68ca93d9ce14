package yardclock.pages;

import com.microsoft.playwright.Page;

import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;

/** One browser for a class of tests, and a fresh server of scripted frames for each of them. */
class WithPages {
    static Chromium chromium;
    PageServer server;

    @BeforeAll
    static void open() {
        chromium = new Chromium();
    }

    @AfterAll
    static void close() {
        chromium.close();
    }

    @BeforeEach
    void serve() {
        server = new PageServer();
    }

    @AfterEach
    void unserve() {
        server.close();
    }

    /** Takes a proctor's tablet off the network, and waits until its page says so. */
    final void cut(Page page) {
        page.context().setOffline(true);
        server.dropLinks();
        page.waitForSelector("[data-waiting]");
    }
}
