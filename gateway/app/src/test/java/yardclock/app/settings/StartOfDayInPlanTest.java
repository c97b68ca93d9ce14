package yardclock.app.settings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.course.CheckItem;
import yardclock.core.course.Text;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** The start-of-day checklist as a plan has it. */
class StartOfDayInPlanTest {
    private static final Path SMALL = Path.of("src/test/resources/plans/good/small.yaml");

    @Test
    void the_items_keep_the_plans_order_and_both_languages() throws IOException {
        Reading<LoadedPlan> reading = reading(item("tub") + item("shade"));
        assertThat(reading.value().plan().startOfDay())
                .containsExactly(
                        new CheckItem("tub", new Text("A tub", "Una cosa")),
                        new CheckItem("shade", new Text("A shade", "Una cosa")));
    }

    @Test
    void a_plan_may_have_no_checklist_but_not_an_empty_one() throws IOException {
        Reading<LoadedPlan> plain =
                ExamPlanFile.read(Files.readAllBytes(SMALL), SMALL.getFileName().toString());
        assertThat(plain.value().plan().startOfDay()).isEmpty();
        assertThat(problems("startOfDay: []\n")).contains("this list has 0 entries", "1 to 12");
    }

    @Test
    void twelve_items_are_taken_and_thirteen_refused() throws IOException {
        assertThat(reading(items(12)).value().plan().startOfDay()).hasSize(12);
        assertThat(reading(items(13)).problems().text())
                .contains("this list has 13 entries", "answer for before the day");
    }

    @Test
    void an_id_stands_once_and_is_no_sentence() throws IOException {
        assertThat(reading(item("tub") + item("tub")).problems().text())
                .contains("stands on line", "each id once in its list");
        assertThat(reading("  - {id: A Tub, words: {en: a, es: b}}\n").problems().text())
                .contains("startOfDay[1].id", "a-z, 0-9 and hyphen");
        assertThat(reading("  - {words: {en: a, es: b}}\n").problems().text())
                .contains("startOfDay[1].id: this is missing");
    }

    @Test
    void each_item_stands_in_both_languages_and_has_nothing_else() throws IOException {
        assertThat(reading("  - {id: tub, words: {en: A tub}}\n").problems().text())
                .contains("startOfDay[tub].words.es: this is missing");
        assertThat(reading("  - {id: tub, words: {en: A tub, es: Una}, by: x}\n").problems().text())
                .contains("there is no such key");
    }

    private static String items(int count) {
        return IntStream.rangeClosed(1, count)
                .mapToObj(i -> item("item-" + i))
                .collect(Collectors.joining());
    }

    private static String item(String id) {
        return "  - {id: " + id + ", words: {en: A " + id + ", es: Una cosa}}\n";
    }

    private static String problems(String block) throws IOException {
        return read(block).problems().text();
    }

    private static Reading<LoadedPlan> reading(String items) throws IOException {
        return read("startOfDay:\n" + items);
    }

    private static Reading<LoadedPlan> read(String block) throws IOException {
        String plan = Files.readString(SMALL);
        return ExamPlanFile.read((plan + block).getBytes(StandardCharsets.UTF_8), "plan.yaml");
    }
}
