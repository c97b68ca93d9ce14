package yardclock.app.settings;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.course.Combination;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The document for training officers says what the reader does: each key, each range, each rule.
 */
class ExamPlanDocumentTest {
    private static final Path DOCUMENT = Path.of("../../deploy/exam-plan.md");
    private static final Pattern HEADING = Pattern.compile("## .*: `(\\w+)`");
    private static final Pattern ROW = Pattern.compile("\\| `(\\w+)` \\| (.+) \\| (.+) \\|");

    private final List<String> lines;

    ExamPlanDocumentTest() throws IOException {
        lines = Files.readAllLines(DOCUMENT);
    }

    @Test
    void everyKeyTheReaderKnowsStandsThereWithItsRangeAndNoOther() {
        Findings findings = new Findings("plan.yaml");
        ExamPlanFile.read(DemoPlan.planBytes(), findings);
        Map<String, String> known = new TreeMap<>(findings.known());
        known.keySet().removeIf(key -> key.startsWith("text."));
        assertThat(documented()).containsExactlyInAnyOrderEntriesOf(known);
    }

    private Map<String, String> documented() {
        Map<String, String> documented = new TreeMap<>();
        String kind = "";
        for (String line : lines) {
            Matcher heading = HEADING.matcher(line);
            if (line.startsWith("## ")) {
                kind = heading.matches() ? heading.group(1) : "";
            }
            Matcher row = ROW.matcher(line);
            if (row.matches() && !kind.isEmpty() && !isRule(row.group(1))) {
                documented.put(kind + "." + row.group(1), row.group(3));
            }
        }
        return documented;
    }

    private static boolean isRule(String word) {
        return Arrays.stream(Combination.values()).anyMatch(rule -> Value.word(rule).equals(word));
    }

    @Test
    void everyRuleStandsThereWithItsContactsAndGuards() {
        for (Combination rule : Combination.values()) {
            TriggerShape shape = TriggerShape.of(rule);
            assertThat(lines)
                    .as(Value.word(rule))
                    .anyMatch(
                            line ->
                                    line.startsWith("| `" + Value.word(rule) + "` |")
                                            && line.endsWith(
                                                    " | %s | %s |"
                                                            .formatted(
                                                                    shape.contactsAllowed(),
                                                                    shape.guardsAllowed())));
        }
    }

    @Test
    void everyLimitStandsThereWithItsReason() {
        List<String> rows = new ArrayList<>();
        for (PlanLimits limit : PlanLimits.values()) {
            String cells = limit.words() + " | " + limit.allowed() + " | " + limit.reason();
            rows.add("| " + cells + " |");
        }
        assertThat(lines).containsSubsequence(rows);
    }

    @Test
    void theRefusalShownThereIsOneTheReaderGives() throws IOException {
        Path several = Path.of("src/test/resources/plans/refused/several-at-once.yaml");
        Reading<LoadedPlan> reading = ExamPlanFile.read(Files.readAllBytes(several), "plan.yaml");
        List<String> given = reading.problems().text().lines().toList();
        List<String> shown = lines.stream().filter(line -> line.startsWith("plan.yaml:")).toList();
        assertThat(shown).hasSize(2);
        assertThat(given).containsAll(shown);
    }
}
