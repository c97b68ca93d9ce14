package yardclock.tidy;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.tidy.Repository.Source;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Documents must stay true: what they name exists, and what exists they name. */
class TidyDocumentsTest {
    private static final List<String> DECISION_HEADINGS =
            List.of(
                    "## Context",
                    "## Options",
                    "## Decision",
                    "## Consequences",
                    "## How we would notice it was wrong");
    private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)(#[^)]*)?\\)");
    private static final Pattern LAUNCHED = Pattern.compile("\\./yardclock ([a-z][a-z-]*)");
    private static final Pattern VERSION =
            Pattern.compile("<artifactId>yardclock-parent</artifactId>\\s*<version>([^<]+)<");

    private final Repository repository = Repository.here();

    @Test
    void decision_records_have_their_five_headings_in_order() {
        List<Source> records = documents("gateway/decisions/");
        assertThat(records).isNotEmpty();
        for (Source record : records) {
            assertThat(record.lines().stream().filter(line -> line.startsWith("## ")).toList())
                    .as(record.name())
                    .isEqualTo(DECISION_HEADINGS);
        }
    }

    @Test
    void decision_records_are_numbered_without_holes() {
        List<String> numbers =
                documents("gateway/decisions/").stream()
                        .map(record -> record.name().replaceAll(".*/(\\d{4})-.*", "$1"))
                        .toList();
        for (int i = 0; i < numbers.size(); i++) {
            assertThat(numbers.get(i)).isEqualTo("%04d".formatted(i + 1));
        }
    }

    @Test
    void the_change_log_knows_the_version_we_build() {
        Matcher version = VERSION.matcher(repository.text("pom.xml").text());
        assertThat(version.find()).isTrue();
        assertThat(repository.text("CHANGELOG.md").text()).contains("## " + version.group(1));
    }

    @Test
    void commands_in_documents_are_commands_of_the_launcher() {
        String launcher = repository.text("yardclock").text();
        for (Source document : documents("")) {
            Matcher launched = LAUNCHED.matcher(document.text());
            while (launched.find()) {
                assertThat(launcher)
                        .as("%s names ./yardclock %s", document.name(), launched.group(1))
                        .containsPattern("(?m)^  " + launched.group(1) + "  +\\S");
            }
        }
    }

    @Test
    void links_in_documents_lead_somewhere() {
        List<String> broken = new ArrayList<>();
        for (Source document : documents("")) {
            Matcher link = LINK.matcher(document.text());
            while (link.find()) {
                String target = link.group(1).strip();
                if (!target.matches("[a-z]+:.*") && !repository.exists(beside(document, target))) {
                    broken.add(document.name() + " -> " + target);
                }
            }
        }
        assertThat(broken).isEmpty();
    }

    @Test
    void the_code_map_names_every_package_of_the_gateway() {
        String map = repository.text("DEVELOPERS.md").text();
        TreeSet<String> packages = new TreeSet<>();
        Pattern home = Pattern.compile("src/main/java/yardclock/(?:core|app|sim)/([a-z]+)/");
        for (Source source : repository.java()) {
            Matcher found = home.matcher(source.name());
            if (found.find()) {
                packages.add(found.group(1));
            }
        }
        assertThat(packages).allSatisfy(name -> assertThat(map).contains("| `" + name + "` |"));
    }

    private List<Source> documents(String under) {
        return repository.texts().stream()
                .filter(source -> source.name().startsWith(under) && source.endsWith(".md"))
                .toList();
    }

    private static String beside(Source document, String target) {
        int slash = document.name().lastIndexOf('/');
        return slash < 0 ? target : document.name().substring(0, slash + 1) + target;
    }
}
