package yardclock.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.GZIPOutputStream;

/**
 * Pages stay light: little script, all of it ours or pinned, and nothing found late. How long that
 * takes is measured by {@link LoadingMeasure}.
 */
class WeightTest {
    /** Of all pages together; it grows with their number, and no page loads all of it. */
    private static final int SCRIPT_MAX_BYTES = 136_000;

    /** Fetched once: after that the page opens from the tablet. */
    private static final int POST_MAX_BYTES = 82_000;

    private static final Pattern MAPPED = Pattern.compile("\": \"(/webjars/[^\"]+)\"");
    private static final Pattern PRELOADED =
            Pattern.compile("rel=\"modulepreload\" href=\"([^\"]+)\"");

    @Test
    void all_script_together_stays_small_when_compressed() {
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

    @Test
    void the_proctors_page_loads_what_it_needs_and_asks_for_it_at_once() {
        try (PageServer server = new PageServer();
                Chromium chromium = new Chromium()) {
            Scene scene = Scene.named("post-under-way");
            scene.stage(server);
            Page page =
                    chromium.open(
                            server.address(scene.path()), scene.role(), Chromium.Way.MEASURED);
            scene.settle(page);
            List<String> loaded = loaded(page);
            int bytes = loaded.stream().mapToInt(WeightTest::compressedFile).sum();
            assertThat(bytes).as("of %s", loaded).isBetween(1, POST_MAX_BYTES);
            // A module that nothing announced is found only when another one has been read.
            assertThat(loaded)
                    .filteredOn(address -> address.endsWith(".js"))
                    .hasSizeGreaterThan(20)
                    .allSatisfy(address -> assertThat(isAnnounced(address)).as(address).isTrue());
        }
    }

    @SuppressWarnings("unchecked")
    private static List<String> loaded(Page page) {
        return (List<String>)
                page.evaluate(
                        "() => performance.getEntriesByType('resource')"
                                + ".map((entry) => new URL(entry.name).pathname)"
                                + ".filter((path) => /^\\/(ui|webjars)\\//.test(path))");
    }

    private static boolean isAnnounced(String address) {
        String module = address.replaceFirst("^/ui/", "").replaceFirst("\\.js$", "");
        boolean byMain = StaticFiles.text("dashboard/main.js").contains('"' + module + '"');
        boolean isTheJob = module.equals("jobs/post") || module.equals("main");
        return byMain || isTheJob || addresses(PRELOADED).contains(address);
    }

    private static int compressedFile(String address) {
        return compressed(
                StaticFiles.text(
                        address.startsWith("/ui/")
                                ? address.replaceFirst("^/ui/", "dashboard/")
                                : "META-INF/resources" + address));
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
