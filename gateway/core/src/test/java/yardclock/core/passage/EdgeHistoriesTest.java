package yardclock.core.passage;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import yardclock.core.ordering.Evidence;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;

/** Every edge history on the shelf gives the mark a person would give it, however it arrived. */
class EdgeHistoriesTest {
    private static final String ENDING = ".edges";
    private static final int SHUFFLES = 50;

    /** What the plan's trigger language has; of each there is a clean history and a nasty one. */
    private static final List<String> ON_THE_SHELF =
            List.of(
                    "all-of",
                    "any-of",
                    "any-of-count",
                    "armed-by",
                    "clear-for",
                    "clear-for-min-block",
                    "coincidence",
                    "direction",
                    "direction-min-block",
                    "first-lockout",
                    "judged",
                    "merge-gap",
                    "min-block",
                    "min-block-merge-gap",
                    "nth",
                    "release",
                    "release-stood-for",
                    "sequence",
                    "signal",
                    "spacing",
                    "start-of-longest",
                    "longest-block",
                    "stays-for");

    static List<EdgeHistory> histories() {
        return shelf().stream().map(EdgeHistory::read).toList();
    }

    private static List<Path> shelf() {
        try {
            Path folder = Path.of(EdgeHistoriesTest.class.getResource("/passages").toURI());
            try (Stream<Path> files = Files.walk(folder)) {
                return files.filter(Files::isRegularFile).sorted().toList();
            }
        } catch (IOException | URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    @Test
    void nothing_lies_on_the_shelf_that_nobody_reads() {
        assertThat(shelf()).allSatisfy(file -> assertThat(file.toString()).endsWith(ENDING));
    }

    @Test
    void each_guard_and_combination_has_a_clean_history_and_a_nasty_one() {
        List<String> names = shelf().stream().map(file -> file.getFileName().toString()).toList();
        for (String subject : ON_THE_SHELF) {
            assertThat(names).contains(subject + "-clean" + ENDING);
            assertThat(names).anyMatch(name -> name.matches(subject + "-nasty.*\\.edges"));
        }
        assertThat(names)
                .allMatch(name -> ON_THE_SHELF.contains(name.replaceAll("-(clean|nasty).*", "")));
    }

    @ParameterizedTest
    @MethodSource("histories")
    void the_expected_edge_stamps(EdgeHistory history) {
        compare(history, history.edges());
    }

    @ParameterizedTest
    @MethodSource("histories")
    void the_order_of_arrival_changes_nothing(EdgeHistory history) {
        for (long seed = 0; seed < SHUFFLES; seed++) {
            List<TimedEdge> arriving = new ArrayList<>(history.edges());
            Collections.shuffle(arriving, new Random(seed));
            Evidence evidence = new Evidence();
            arriving.forEach(evidence::add);
            assertThat(evidence.inOrder())
                    .as("%s, seed %d", history, seed)
                    .isEqualTo(history.edges());
            compare(history, evidence.inOrder());
        }
    }

    private static void compare(EdgeHistory history, List<TimedEdge> edges) {
        TriggerJudge judge = new TriggerJudge(history.trigger(), history.settleMicros());
        Passage mark = judge.mark(edges, history.fromMicros()).orElse(null);
        String wanted = history.expected().get("mark");
        if (wanted.equals("none")) {
            assertThat(mark).as("%s: mark", history).isNull();
        } else {
            String[] words = wanted.split("\\s+");
            assertThat(mark).as("%s: mark", history).isNotNull();
            assertThat(mark.stamp().micros())
                    .as("%s: mark", history)
                    .isEqualTo(EdgeHistory.micros(words[0]));
            assertThat(mark.edge().sensor().toString()).isEqualTo(words[1]);
            assertThat(edges).as("the stamp is an edge's own").contains(mark.edge());
        }
        compareMore(history, judge, edges, mark);
        compareParts(history, judge, edges, mark);
    }

    /** No evidence disappears: an edge is in one passage, or struck with a reason. */
    @ParameterizedTest
    @MethodSource("histories")
    void each_edge_is_in_one_passage_or_struck(EdgeHistory history) {
        TriggerJudge judge = new TriggerJudge(history.trigger(), history.settleMicros());
        List<TimedEdge> accounted = new ArrayList<>();
        judge.passages(history.edges(), history.fromMicros())
                .forEach(passage -> accounted.addAll(passage.edges()));
        judge.struck(history.edges(), history.fromMicros()).forEach(s -> accounted.add(s.edge()));
        Collections.sort(accounted);
        assertThat(accounted).as("%s", history).doesNotHaveDuplicates();
        List<TimedEdge> concerned =
                history.edges().stream()
                        .filter(e -> TriggerJudge.contactOf(e, history.trigger()) != null)
                        .filter(e -> e.stamp().micros() >= history.fromMicros())
                        .toList();
        assertThat(accounted).as("%s", history).containsAll(concerned);
    }

    private static void compareParts(
            EdgeHistory history, TriggerJudge judge, List<TimedEdge> edges, Passage mark) {
        String parts = history.expected().get("parts");
        if (parts != null) {
            assertThat(mark.blocks().stream().map(b -> b.isOver() ? b.micros() : -1L).toList())
                    .as("%s: parts", history)
                    .isEqualTo(
                            Arrays.stream(parts.split("\\s+"))
                                    .map(w -> w.equals("open") ? -1L : EdgeHistory.micros(w))
                                    .toList());
        }
        String struck = history.expected().get("struck");
        if (struck != null) {
            List<String> words = new ArrayList<>();
            for (Struck one : judge.struck(edges, history.fromMicros())) {
                words.add(one.edge().stamp().micros() + " " + one.guard().word());
            }
            assertThat(words).as("%s: struck", history).isEqualTo(struckWords(struck));
        }
    }

    private static List<String> struckWords(String struck) {
        List<String> words = new ArrayList<>();
        String[] parts = struck.equals("none") ? new String[0] : struck.split("\\s+");
        for (int i = 0; i < parts.length; i += 2) {
            words.add(EdgeHistory.micros(parts[i]) + " " + parts[i + 1]);
        }
        return words;
    }

    private static void compareMore(
            EdgeHistory history, TriggerJudge judge, List<TimedEdge> edges, Passage mark) {
        String concludes = history.expected().get("concludes");
        if (concludes != null && concludes.equals("open")) {
            assertThat(mark.concludesAtMicros()).as("%s", history).isEqualTo(Long.MAX_VALUE);
        } else if (concludes != null) {
            assertThat(mark.concludesAtMicros())
                    .as("%s: concludes", history)
                    .isEqualTo(EdgeHistory.micros(concludes));
        }
        String passages = history.expected().get("passages");
        if (passages != null) {
            assertThat(stamps(judge.passages(edges, history.fromMicros())))
                    .as("%s: passages", history)
                    .isEqualTo(times(passages.split("\\s+")));
        }
        String counted = history.expected().get("counted");
        if (counted != null) {
            String[] words = counted.split("\\s+");
            int count = Integer.parseInt(words[0]);
            assertThat(stamps(judge.counted(edges, history.fromMicros(), count)))
                    .as("%s: counted", history)
                    .isEqualTo(times(Arrays.copyOfRange(words, 1, words.length)));
        }
    }

    private static List<Long> stamps(List<Passage> passages) {
        return passages.stream().map(passage -> passage.stamp().micros()).toList();
    }

    private static List<Long> times(String[] words) {
        return Arrays.stream(words).map(EdgeHistory::micros).toList();
    }
}
