package yardclock.sim.referee;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.time.Stamp;
import yardclock.sim.people.TruthBook;
import yardclock.sim.people.TruthBookWriter;

import java.util.List;
import java.util.Map;

/** A tiny day by hand: what is called clean and is not right must be counted. */
class RoughFiguresTest {
    private final TruthBook book = new TruthBook();
    private final Witness witness = new Witness();

    private void says(int number, String point, long micros) {
        Stamp stamp = new Stamp(micros, micros - 2_000, micros + 2_000);
        witness.reads(
                new Fact(FactKind.MARK_PROPOSED, number, "roll-up", point, stamp, 0, "AUTOMATIC"));
    }

    private void callsClean(int number, long micros) {
        witness.reads(
                new Fact(FactKind.SPLIT_PROPOSED, number, "roll-up", "", null, micros, "clean"));
    }

    private RoughFigures figures(Map<String, Long> edgesBy, long lost) {
        long known = edgesBy.values().stream().mapToLong(Long::longValue).sum();
        long unknown = edgesBy.isEmpty() ? 0 : 10 - known;
        return new RoughReferee(book, witness, List.of())
                .figures(new RoughReferee.Counted(1, 2, 100, 7, 0, 10, edgesBy, unknown, lost, 0));
    }

    @Test
    void a_clean_split_with_a_wrong_start_is_counted_and_breaks_the_day() {
        TruthBookWriter.visit(book, 1, "roll-up", 1_000_000, 61_000_000);
        says(1, "start", 1_001_000);
        says(1, "finish", 61_000_500);
        callsClean(1, 59_999_500);
        assertThat(figures(Map.of(), 0).cleanWrong()).isZero();
        says(1, "start", 1_400_000);
        callsClean(1, 59_600_500);
        RoughFigures figures = figures(Map.of(), 0);
        assertThat(figures.cleanWrong()).isEqualTo(1);
        assertThat(figures.broken()).anyMatch(words -> words.contains("were wrong"));
    }

    @Test
    void a_clean_split_of_somebody_who_was_never_there_is_wrong() {
        says(2, "start", 1_000_000);
        says(2, "finish", 2_000_000);
        callsClean(2, 1_000_000);
        assertThat(figures(Map.of(), 0).cleanWrong()).isEqualTo(1);
    }

    @Test
    void edges_without_a_place_and_lost_edges_break_the_day() {
        RoughFigures figures = figures(Map.of("mark", 6L, "tray", 3L), 2);
        assertThat(figures.edgesUnaccounted()).isEqualTo(1);
        assertThat(figures.broken()).hasSize(2);
        assertThat(figures(Map.of("mark", 10L), 0).broken()).isEmpty();
    }

    @Test
    void too_few_clean_splits_break_the_day_and_days_add_up() {
        TruthBookWriter.visit(book, 1, "roll-up", 1_000_000, 61_000_000);
        RoughFigures day = figures(Map.of("mark", 10L), 0);
        assertThat(day.splits()).isEqualTo(1);
        assertThat(day.notProposed()).isEqualTo(1);
        assertThat(day.broken()).hasSize(2);
        RoughFigures both = day.plus(day);
        assertThat(both.splits()).isEqualTo(2);
        assertThat(both.straysPerHundred()).isEqualTo(7.0);
        assertThat(both.edgesBy()).containsEntry("mark", 20L);
    }
}
