package yardclock.tidy;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.tidy.Repository.Source;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Pattern;

/** What holds for every text file, whatever its language. */
class TidyTextTest {
    private static final int LINES_MAX = 400;
    private static final int COLUMNS_MAX = 100;

    /** Markup inside a module's templates does not break as freely as a statement. */
    private static final int PAGE_COLUMNS_MAX = 120;

    // Written in halves, so that this file does not find itself.
    private static final Pattern UNFINISHED =
            Pattern.compile("\\b(TO" + "DO|FIX" + "ME|XX" + "X)\\b");
    private static final Pattern MACHINE_PATH =
            Pattern.compile(
                    "(?<![\\w.~])/(home|root|work|Users)/|(?<!\\w)/tm" + "p/\\w|\\b[A-Z]:\\\\\\w");
    private static final Pattern REGISTRY =
            Pattern.compile("repo1?\\.maven\\.|registry\\.np" + "mjs|deb\\.deb" + "ian\\.org");

    private final List<Source> texts = Repository.here().texts();

    @Test
    void files_of_code_fit_in_one_reading() {
        assertThat(texts)
                .filteredOn(source -> isCode(source) && source.lines().size() > LINES_MAX)
                .extracting(source -> source.name() + ": " + source.lines().size() + " lines")
                .isEmpty();
    }

    @Test
    void lines_of_code_fit_in_a_window() {
        assertThat(linesThat(this::isCode, line -> columns(line) > PAGE_COLUMNS_MAX)).isEmpty();
        assertThat(
                        linesThat(
                                source -> source.endsWith(".java", "yardclock"),
                                line -> columns(line) > COLUMNS_MAX))
                .isEmpty();
    }

    @Test
    void files_end_with_a_newline_and_use_no_other_line_ends() {
        assertThat(texts)
                .filteredOn(
                        source ->
                                !source.text().isEmpty()
                                        && (!source.text().endsWith("\n")
                                                || source.text().contains("\r")))
                .extracting(Source::name)
                .isEmpty();
    }

    @Test
    void nothing_is_indented_with_tabs() {
        assertThat(linesThat(source -> true, line -> line.indexOf('\t') >= 0)).isEmpty();
    }

    @Test
    void no_line_ends_in_blanks() {
        assertThat(
                        linesThat(
                                source -> !source.endsWith(".md", "LICENSE"),
                                line -> !line.equals(line.stripTrailing())))
                .isEmpty();
    }

    @Test
    void nothing_is_left_for_later() {
        assertThat(linesThat(source -> true, line -> UNFINISHED.matcher(line).find())).isEmpty();
    }

    @Test
    void nothing_names_a_path_of_one_machine() {
        assertThat(linesThat(source -> true, line -> MACHINE_PATH.matcher(line).find())).isEmpty();
    }

    @Test
    void nothing_names_a_package_registry() {
        assertThat(linesThat(source -> true, line -> REGISTRY.matcher(line).find())).isEmpty();
    }

    private boolean isCode(Source source) {
        return source.endsWith(
                ".java", ".js", ".mjs", ".css", ".html", ".sh", ".py", "yardclock", "/run");
    }

    private static int columns(String line) {
        return line.codePointCount(0, line.length());
    }

    private List<String> linesThat(Predicate<Source> where, Predicate<String> breach) {
        List<String> found = new ArrayList<>();
        for (Source source : texts) {
            if (where.test(source)) {
                List<String> lines = source.lines();
                for (int i = 0; i < lines.size(); i++) {
                    if (breach.test(lines.get(i))) {
                        found.add(source.name() + ":" + (i + 1) + ": " + lines.get(i).strip());
                    }
                }
            }
        }
        return found;
    }
}
