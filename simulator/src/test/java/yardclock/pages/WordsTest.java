package yardclock.pages;

import static org.assertj.core.api.Assertions.assertThat;

import com.microsoft.playwright.Page;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import yardclock.core.board.Head;
import yardclock.core.board.StationView;
import yardclock.core.course.CriterionKind;
import yardclock.core.course.SensorKind;
import yardclock.core.health.ClockTrouble;
import yardclock.core.result.OutcomeKind;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Role;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The dictionary: every word in both languages, every code of the gateway's lists in words. */
class WordsTest {
    private static final Pattern USED = Pattern.compile("say\\(\\s*\"([^\"]+)\"");
    private static final Pattern FILLED = Pattern.compile("\\{(\\w+)}");
    private static final String ALL_WORDS =
            "() => Promise.all([import('/ui/words.js'), import('/ui/words/of-bench.js'),"
                    + " import('/ui/words/of-post.js'),"
                    + " import('/ui/words/of-control.js'),"
                    + " import('/ui/words/of-watch.js')])"
                    + ".then(([dictionary]) => dictionary.words)";
    private static Map<String, List<String>> words;

    @BeforeAll
    @SuppressWarnings("unchecked")
    static void read() {
        try (PageServer server = new PageServer();
                Chromium chromium = new Chromium()) {
            Page page = chromium.open(server.address("/"), "", Chromium.Way.MEASURED);
            words = (Map<String, List<String>>) page.evaluate(ALL_WORDS);
        }
    }

    @Test
    void every_key_has_words_in_both_languages() {
        assertThat(words).isNotEmpty();
        words.forEach(
                (key, pair) ->
                        assertThat(pair)
                                .as(key)
                                .hasSize(2)
                                .doesNotContain("")
                                .doesNotContainNull());
    }

    @Test
    void both_languages_fill_in_the_same_values() {
        words.forEach(
                (key, pair) ->
                        assertThat(filled(pair.get(1))).as(key).isEqualTo(filled(pair.get(0))));
    }

    @Test
    void every_word_a_page_asks_for_is_there() {
        List<String> asked = new ArrayList<>();
        for (String source : Dashboard.modules().values()) {
            USED.matcher(source).results().map(use -> use.group(1)).forEach(asked::add);
        }
        assertThat(asked).hasSizeGreaterThan(100);
        assertThat(words.keySet()).containsAll(asked);
    }

    @Test
    void every_refusal_reason_outcome_and_state_has_words() throws ClassNotFoundException {
        assertHas("refusal", Refusal.values());
        assertHas("refusal", ofTheWeb("yardclock.app.web.WebRefusal"));
        assertHas("reason", Reason.values());
        assertHas("outcome", OutcomeKind.values());
        assertHas("station", StationView.State.values());
        assertHas("course", Head.CourseStatus.values());
        assertHas("criterion", CriterionKind.values());
        assertHas("role", Role.values());
        assertHas("clock-trouble", ClockTrouble.values());
        for (SensorKind kind : SensorKind.values()) {
            assertThat(words.keySet())
                    .contains(key("state", kind) + ".0", key("state", kind) + ".1");
        }
    }

    /** The web's own list is nobody else's business in the gateway, so it is no public type. */
    private static Enum<?>[] ofTheWeb(String name) throws ClassNotFoundException {
        return (Enum<?>[]) Class.forName(name).getEnumConstants();
    }

    private static void assertHas(String list, Enum<?>[] values) {
        for (Enum<?> value : values) {
            assertThat(words.keySet()).contains(key(list, value));
        }
    }

    private static String key(String list, Enum<?> value) {
        return list + "." + value.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Set<String> filled(String text) {
        Set<String> names = new TreeSet<>();
        Matcher matcher = FILLED.matcher(text);
        while (matcher.find()) {
            names.add(matcher.group(1));
        }
        return names;
    }
}
