package yardclock.sim.referee;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import yardclock.core.result.Result;
import yardclock.sim.people.TruthBook;
import yardclock.sim.people.TruthBookWriter;
import yardclock.sim.tablets.Stream;
import yardclock.sim.units.UnitCounts;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.util.List;

class RefereeTest {
    private static final long SECOND = 1_000_000;
    private static final String DECK = "low-deck";

    /** Gateway time runs this far ahead of the truth's here. */
    private static final long GATEWAY_AHEAD = 50 * SECOND;

    private final TruthBook book = new TruthBook();
    private final FeedWatch feed = new FeedWatch();

    @BeforeEach
    void number_12_crawls_from_100_to_160_seconds() {
        TruthBookWriter.visit(book, 12, DECK, 100 * SECOND, 160 * SECOND);
        TruthBookWriter.visit(book, 13, DECK, 400 * SECOND, 470 * SECOND);
    }

    private void proposes(int number, String point, long seconds, String source) {
        feed.take(
                new Stream.Message(
                        "1",
                        "fact",
                        """
                        {"frame":1,"entry":1,"gatewayMicros":1,"fact":{"kind":"mark-proposed",
                        "number":%d,"station":"low-deck","point":"%s","stamp":{"micros":%d},
                        "words":"%s"}}
                        """
                                .formatted(
                                        number, point, seconds * SECOND + GATEWAY_AHEAD, source)));
    }

    private int wrong() {
        return new Assignments(book, -GATEWAY_AHEAD).wrong(feed.proposals()).size();
    }

    @Test
    void marks_near_the_truth_are_right() {
        proposes(12, "start", 100, "AUTOMATIC");
        proposes(12, "touch", 131, "AUTOMATIC");
        proposes(12, "finish", 161, "automatic");
        assertThat(wrong()).isZero();
    }

    @Test
    void a_mark_for_somebody_elses_passage_is_wrong() {
        proposes(12, "start", 400, "automatic");
        proposes(13, "finish", 160, "button");
        proposes(14, "start", 100, "automatic");
        assertThat(wrong()).isEqualTo(3);
    }

    @Test
    void a_tap_is_nobodys_automatic_proposal() {
        proposes(12, "finish", 300, "TAP");
        assertThat(wrong()).isZero();
    }

    @Test
    void split_errors_compare_the_sensors_split_with_the_truth() {
        Result twelve = result(12, 60 * SECOND + 30_000);
        Result thirteen = result(13, 70 * SECOND - 10_000);
        SplitErrors errors = SplitErrors.of(List.of(twelve, thirteen), book);
        assertThat(errors.count()).isEqualTo(2);
        assertThat(errors.p99Millis(1)).isEqualTo(30.0);
        assertThat(errors.p99Millis(10)).isEqualTo(3.0);
    }

    @Test
    void a_split_no_sensor_gave_has_no_error() {
        SplitErrors errors = SplitErrors.of(List.of(result(12, -1)), book);
        assertThat(errors.count()).isZero();
        assertThat(errors.p99Millis(1)).isNull();
    }

    private static Result result(int number, long automaticMicros) {
        Result.SplitLine line =
                new Result.SplitLine(
                        DECK, "confirmed", 0, 0, 0, 0, 0, automaticMicros, -1, "", List.of());
        return new Result(
                number,
                1,
                1,
                "passed",
                "",
                0,
                0,
                0,
                null,
                null,
                "",
                "within",
                "",
                0,
                true,
                List.of(line),
                List.of());
    }

    @Test
    void lost_edges_are_those_a_unit_stamped_and_the_journal_does_not_hold() throws IOException {
        String journal =
                """
                {"entry":1,"kind":"edge","gatewayMicros":1,"unit":"fu-01","boot":"aa","seq":0}
                {"entry":2,"kind":"edge","gatewayMicros":1,"unit":"fu-01","boot":"aa","seq":2}
                {"entry":3,"kind":"edge","gatewayMicros":1,"unit":"fu-01","boot":"aa","seq":2}
                {"entry":4,"kind":"edge","gatewayMicros":1,"unit":"fu-01","boot":"bb","seq":1}
                {"entry":5,"kind":"health","gatewayMicros":1,"unit":"fu-01","boot":"aa"}
                """;
        JournalEdges edges = JournalEdges.read(new BufferedReader(new StringReader(journal)));
        assertThat(edges.distinct()).isEqualTo(3);
        assertThat(edges.missingOf(new UnitCounts("fu-01", "aa", 3, 3, 0, 0))).isEqualTo(1);
        assertThat(edges.missingOf(new UnitCounts("fu-02", "cc", 2, 2, -1, 0))).isEqualTo(2);
    }

    @Test
    void the_line_has_the_keys_everybody_relies_on() {
        Figures figures = new Figures(6, 4, 1, 1, 900, 30.5, 1.017, 0, 0, "ab12");
        assertThat(figures.line())
                .isEqualTo(
                        "{\"candidates\":6,\"passed\":4,\"failed\":1,\"undecided\":1,"
                                + "\"edges\":900,\"splitErrorMsP99\":30.5,"
                                + "\"splitErrorRealMsP99\":1.017,\"lostEdges\":0,"
                                + "\"wrongAssignments\":0,\"digest\":\"ab12\"}");
    }
}
