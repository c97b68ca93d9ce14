package yardclock.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.microsoft.playwright.CDPSession;
import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;

/** Pages stay light: little script, all of it ours or pinned, and there within a second. */
class WeightTest {
    private static final int SCRIPT_MAX_BYTES = 100_000;
    private static final double LOAD_MAX_MILLIS = 1000.0;
    private static final int LOADS_MAX = 5;
    private static final Pattern MAPPED = Pattern.compile("\": \"(/webjars/[^\"]+)\"");
    private static final Pattern PRELOADED =
            Pattern.compile("rel=\"modulepreload\" href=\"([^\"]+)\"");

    @Test
    void all_script_together_is_under_a_hundred_kilobytes_compressed() {
        int bytes = 0;
        for (String source : Dashboard.modules().values()) {
            bytes += compressed(source);
        }
        for (String address : libraries()) {
            bytes += compressed(StaticFiles.text("META-INF/resources" + address));
        }
        assertThat(bytes).isBetween(1, SCRIPT_MAX_BYTES);
    }

    @Test
    void every_address_of_the_shell_leads_to_a_file() {
        assertThat(libraries()).hasSize(5);
        assertThat(addresses(PRELOADED))
                .hasSizeGreaterThan(20)
                .allSatisfy(address -> assertThat(status(address)).isEqualTo(200))
                .containsAll(libraries());
    }

    private static int status(String address) {
        return new StaticFiles().find(address).status();
    }

    /**
     * The processor four times slower, 20 Mbit/s and 20 ms, as a cheap tablet on a full channel.
     * The best of a few loads counts: whatever else the machine does only makes one slower.
     */
    @Test
    void the_proctors_page_shows_its_frame_within_a_second_on_a_slow_tablet() {
        try (PageServer server = new PageServer();
                Chromium chromium = new Chromium()) {
            double best = Double.MAX_VALUE;
            for (int load = 0; load < LOADS_MAX && best > LOAD_MAX_MILLIS; load++) {
                best = Math.min(best, firstFrameMillis(chromium, server));
            }
            assertThat(best).isBetween(1.0, LOAD_MAX_MILLIS);
        }
    }

    private static double firstFrameMillis(Chromium chromium, PageServer server) {
        Scene scene = Scene.named("post-under-way");
        scene.stage(server);
        Page page = chromium.open("about:blank", scene.role(), Chromium.Way.MEASURED);
        slowDown(page);
        page.navigate(server.address(scene.path()));
        scene.settle(page);
        Object millis =
                page.evaluate("() => performance.getEntriesByName('yc-first-frame')[0].startTime");
        page.context().close();
        return ((Number) millis).doubleValue();
    }

    private static void slowDown(Page page) {
        CDPSession session = page.context().newCDPSession(page);
        JsonObject slowness = new JsonObject();
        slowness.addProperty("rate", 4);
        session.send("Emulation.setCPUThrottlingRate", slowness);
        JsonObject network = new JsonObject();
        network.addProperty("offline", false);
        network.addProperty("latency", 20);
        network.addProperty("downloadThroughput", 20_000_000 / 8);
        network.addProperty("uploadThroughput", 20_000_000 / 8);
        session.send("Network.emulateNetworkConditions", network);
    }

    private static Set<String> libraries() {
        return addresses(MAPPED);
    }

    private static Set<String> addresses(Pattern pattern) {
        Set<String> addresses = new LinkedHashSet<>();
        Matcher found = pattern.matcher(StaticFiles.text("dashboard/index.html"));
        while (found.find()) {
            addresses.add(found.group(1));
        }
        return addresses;
    }

    private static int compressed(String text) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(bytes)) {
            zip.write(text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return bytes.size();
    }
}
