package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import static yardclock.pages.Patient.soon;

import com.fasterxml.jackson.core.type.TypeReference;
import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.boot.Gateway;
import yardclock.app.boot.HostPort;
import yardclock.app.boot.ServeSettings;
import yardclock.app.json.Json;
import yardclock.app.pins.BoardWiring;

import java.io.IOException;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

/**
 * Stop, pressed on a proctor's tablet, on everybody's screen: through a real gateway and a real
 * mosquitto, and again when that broker is dead. All pages are of one browser, so their times are
 * of one clock. The second is the requirement's own.
 */
class StopEverywhereTest {
    private static final long SEEN_WITHIN_MILLIS = 1_000;

    /** Keeps the first instant at which what is looked for is on the page. */
    private static final String WATCH =
            """
            selector => {
              window.seenAt = null;
              const look = () => {
                if (window.seenAt === null && document.querySelector(selector)) {
                  window.seenAt = Date.now();
                }
              };
              new MutationObserver(look).observe(document,
                {subtree: true, childList: true, attributes: true});
              look();
            }\
            """;

    private static final String RELEASE =
            """
            proctor => import('/ui/lib/ask-gateway.js').then(({rule}) =>
              rule(localStorage.getItem('yc-token-coordinator'),
                {act: 'release', number: 1, proctorDevice: proctor}, {}))
              .then(answer => answer.kind + ' ' + (answer.code ?? ''))\
            """;

    @TempDir Path folder;

    @Test
    @Timeout(180)
    void everybody_sees_it_within_a_second_with_the_broker_and_without() throws Exception {
        int port = freePort();
        Process broker = broker(port);
        try (RunningGateway gateway = new RunningGateway(port);
                Chromium chromium = new Chromium()) {
            Page post = enrolled(chromium, gateway, "proctor", "Alder");
            Page control = enrolled(chromium, gateway, "coordinator", "Oak");
            Page watch = enrolled(chromium, gateway, "safety", "Spruce");
            Page board = chromium.open(gateway.address("/board"), "", Chromium.Way.MEASURED);
            board.waitForSelector("html[data-link=live] main > *");
            List<Page> others = List.of(control, watch, board);

            stopAndLook(post, others);
            assertThat(control.locator("[data-act=restart]")).hasCount(0);
            restart(watch, control);

            broker.destroyForcibly().waitFor();
            soon(control.locator(".banner.trouble")).containsText("broker");
            stopAndLook(post, others);
        } finally {
            broker.destroyForcibly().waitFor();
        }
    }

    private static void stopAndLook(Page post, List<Page> others) {
        Page control = others.get(0);
        others.forEach(page -> page.evaluate(WATCH, ".banner.stopped"));
        post.evaluate(WATCH, "[data-act=stop][data-state=sending]");
        post.locator("[data-act=stop]").hover();
        post.mouse().down();
        post.waitForFunction("() => window.seenAt !== null");
        post.mouse().up();
        long held = seenAt(post);
        for (Page page : others) {
            page.waitForFunction("() => window.seenAt !== null");
            assertThat(seenAt(page) - held)
                    .as("ms from the end of the hold, on %s", page.url())
                    .isBetween(0L, SEEN_WITHIN_MILLIS);
        }
        soon(post.locator(".banner.stopped")).isVisible();
        soon(control.locator("[data-act=release]")).hasAttribute("aria-disabled", "true");
        String proctor =
                (String)
                        post.evaluate(
                                "() => JSON.parse(localStorage.getItem('yc-who-proctor')).device");
        assertThat(control.evaluate(RELEASE, proctor)).isEqualTo("refused stopped");
    }

    private static long seenAt(Page page) {
        return ((Number) page.evaluate("() => window.seenAt")).longValue();
    }

    /** Only the safety officer restarts; then the coordinator lets releases go on. */
    private static void restart(Page watch, Page control) {
        watch.click("[data-act=restart]");
        watch.click("[data-ask=yes]");
        control.click("[data-act=resume-course]");
        soon(watch.locator("[data-status=course]")).containsText("running");
    }

    private static Page enrolled(
            Chromium chromium, RunningGateway gateway, String role, String person)
            throws IOException {
        String link = gateway.address("/enrol#" + gateway.code(role));
        Page page = chromium.open(link, "", Chromium.Way.MEASURED);
        page.fill("[name=person]", person);
        page.click("[data-act=enrol]");
        page.waitForSelector("html[data-link=live] main > *");
        return page;
    }

    /** A gateway of the demonstration's plan with nobody in the yard. */
    private final class RunningGateway implements AutoCloseable {
        private final Path data = folder.resolve("day");
        private final Gateway gateway;

        RunningGateway(int brokerPort) throws Exception {
            gateway =
                    Gateway.start(
                            new ServeSettings(
                                    data,
                                    new HostPort("127.0.0.1", 0),
                                    new HostPort("127.0.0.1", freePort()),
                                    "tcp://127.0.0.1:" + brokerPort,
                                    null,
                                    false,
                                    null,
                                    null,
                                    1,
                                    BoardWiring.NONE),
                            cause -> {});
        }

        String address(String path) {
            return "http://127.0.0.1:" + gateway.httpPort() + path;
        }

        String code(String role) throws IOException {
            Map<String, List<String>> codes =
                    Json.mapper()
                            .readValue(
                                    data.resolve("first-codes.json").toFile(),
                                    new TypeReference<>() {});
            return codes.get(role).get(0);
        }

        @Override
        public void close() {
            gateway.close();
        }
    }

    private Process broker(int port) throws IOException {
        Path config = folder.resolve("mosquitto.conf");
        Files.writeString(config, "listener " + port + " 127.0.0.1\nallow_anonymous true\n");
        Process process =
                new ProcessBuilder("/usr/sbin/mosquitto", "-c", config.toString())
                        .redirectErrorStream(true)
                        .redirectOutput(folder.resolve("mosquitto.out").toFile())
                        .start();
        await().until(() -> isListening(port));
        return process;
    }

    private static boolean isListening(int port) {
        try (Socket socket = new Socket()) {
            socket.connect(new InetSocketAddress("127.0.0.1", port), 200);
            return true;
        } catch (IOException e) {
            return false;
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            return socket.getLocalPort();
        }
    }
}
