package yardclock.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;

import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The pages' pure modules, checked in the browser they run in; the checks are modules too. */
class ModulesTest {
    private static final List<String> FILES =
            List.of(
                    "times.test.js",
                    "link.test.js",
                    "tablet-clock.test.js",
                    "jobs.test.js",
                    "gap.test.js",
                    "trace.test.js",
                    "calibration.test.js",
                    "clock.test.js",
                    "triggers.test.js",
                    "proof.test.js");

    @TestFactory
    Stream<DynamicTest> modules() {
        try (PageServer server = new PageServer();
                Chromium chromium = new Chromium()) {
            Page page = chromium.open(server.address("/"), "", Chromium.Way.MEASURED);
            List<?> results =
                    (List<?>)
                            page.evaluate(
                                    "(files) => import('/modules/check.js')"
                                            + ".then((check) => check.run(files))",
                                    FILES);
            return results.stream().map(Map.class::cast).map(ModulesTest::named).toList().stream();
        }
    }

    private static DynamicTest named(Map<?, ?> result) {
        return DynamicTest.dynamicTest(
                result.get("name").toString(),
                () -> assertThat(result.get("problem").toString()).isEmpty());
    }
}
