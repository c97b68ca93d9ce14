package yardclock.pages;

import static com.microsoft.playwright.assertions.PlaywrightAssertions.assertThat;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.microsoft.playwright.Page;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.boot.RefusedException;
import yardclock.app.boot.TlsFiles;

import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;

/** The real gateway over HTTPS, with an authority of the department's own. */
class EncryptedPagesTest {
    private static final String FRAME_IS_KEPT =
            """
            async () => {
              const { store } = await import("/ui/lib/outbox-store.js");
              while (!(await store.lastFrame())) await new Promise((next) => setTimeout(next, 50));
            }
            """;

    @TempDir private Path folder;

    @Test
    void the_proctors_page_opens_without_the_gateway_once_it_came_over_https() throws Exception {
        TestAuthority authority = new TestAuthority(Files.createDirectory(folder.resolve("ca")));
        try (OpenYard yard = new OpenYard(folder, authority.files());
                Chromium chromium = new Chromium(List.of(authority.chromiumArgument()))) {
            String front = yard.address("/enrol#" + yard.code("proctor"));
            Page page = chromium.open(front, "", Chromium.Way.MEASURED);
            page.fill("[name=person]", "Alder");
            page.click("[data-act=enrol]");
            page.waitForURL("**/post*");
            page.waitForSelector("html[data-link=live]");
            assertThat(page.locator("[data-installed=ready]")).hasCount(1);
            assertThat(page.evaluate("() => isSecureContext")).isEqualTo(true);
            page.evaluate(FRAME_IS_KEPT);
            page.context().setOffline(true);
            page.reload();
            assertThat(page.locator("html")).hasAttribute("data-stale", "true");
            assertThat(page.locator("main")).containsText("Alder");
            assertThat(page.locator("[data-waiting]")).hasAttribute("data-waiting", "0");
            page.context().setOffline(false);
            page.waitForSelector("html[data-link=live][data-stale=false]");
            page.context().close();
        }
    }

    @Test
    void a_key_store_that_cannot_be_used_is_a_reason_not_to_start() throws Exception {
        TestAuthority authority = new TestAuthority(Files.createDirectory(folder.resolve("ca")));
        TlsFiles good = authority.files();
        Path wrong = Files.writeString(folder.resolve("wrong"), "another one");
        Files.setPosixFilePermissions(wrong, PosixFilePermissions.fromString("rw-------"));
        refuses(new TlsFiles(good.keystore(), wrong), "cannot be opened with the password");
        refuses(new TlsFiles(folder.resolve("none.p12"), good.password()), "no such file");
        refuses(new TlsFiles(wrong, good.password()), "cannot be opened with the password");
        Files.setPosixFilePermissions(
                good.keystore(), PosixFilePermissions.fromString("rw-r--r--"));
        refuses(good, "chmod 600");
    }

    private void refuses(TlsFiles files, String why) {
        assertThatThrownBy(() -> new OpenYard(folder, files).close())
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining(why);
    }
}
