package yardclock.core.run;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.course.Contact;
import yardclock.core.course.SensorRef;
import yardclock.core.passage.TimedEdge;
import yardclock.core.time.Stamp;

import java.util.ArrayList;
import java.util.List;

/** A ladder's bracket, which is closed at rest and closed at the finish. Times in seconds. */
class AwayTest {
    private static final SensorRef BRACKET = new SensorRef("ladder", 1);
    private static final Contact CLOSED = new Contact(BRACKET, 1);
    private static final double START = 10;

    private final List<TimedEdge> edges = new ArrayList<>();

    @Test
    void lifted_off_and_hung_back_it_was_away() {
        changes(10.3, 0).changes(60.0, 1);
        assertThat(isSeen()).isTrue();
    }

    @Test
    void a_bracket_whose_opening_was_missed_was_not_seen_away() {
        changes(2.0, 1);
        assertThat(isSeen()).isFalse();
    }

    @Test
    void chatter_at_the_closing_does_not_make_up_for_an_opening_that_was_missed() {
        changes(2.0, 1).changes(60.003, 0).changes(60.006, 1);
        assertThat(isSeen()).isFalse();
    }

    @Test
    void nor_does_it_when_the_bracket_was_never_heard_of_before() {
        changes(60.003, 0).changes(60.006, 1);
        assertThat(isSeen()).isFalse();
    }

    @Test
    void a_holder_that_was_empty_before_the_start_was_away() {
        changes(60.0, 1);
        assertThat(isSeen()).isTrue();
    }

    @Test
    void what_was_away_only_before_the_start_does_not_count() {
        changes(4.0, 0).changes(8.0, 1);
        assertThat(isSeen()).isFalse();
    }

    private boolean isSeen() {
        TimedEdge last = edge(61.0, new SensorRef("ladder", 2), 1);
        return Away.isSeen(CLOSED, edges, micros(START), last);
    }

    private AwayTest changes(double at, int state) {
        edges.add(edge(at, BRACKET, state));
        return this;
    }

    private TimedEdge edge(double at, SensorRef sensor, int state) {
        Stamp stamp = Stamp.exactly(micros(at));
        return new TimedEdge(
                sensor, state, stamp, 0, "b0", edges.size(), stamp.micros(), stamp.micros(), 0);
    }

    private static long micros(double seconds) {
        return Math.round(seconds * 1_000_000);
    }
}
