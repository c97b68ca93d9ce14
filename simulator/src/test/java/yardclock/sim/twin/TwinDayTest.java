package yardclock.sim.twin;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.result.Result;
import yardclock.sim.people.TruthBook;
import yardclock.sim.referee.RoughFigures;

class TwinDayTest {
    private static final long SEED = 7;

    @Test
    void a_day_ends_and_its_intervals_hold_the_truth() {
        TwinDay day = new TwinDay(SEED, 6);
        assertThat(day.play()).as("seed %d", SEED).isTrue();
        TwinFigures figures = day.figures();
        assertThat(figures.agrees()).as("%s", figures).isTrue();
        assertThat(figures.passed() + figures.failed()).as("%s", figures).isEqualTo(6);
        assertThat(figures.confirmed()).as("%s", figures).isGreaterThan(40);
        int compared = 0;
        for (Result result : day.results()) {
            for (Result.SplitLine split : result.splits()) {
                TruthBook.Instants truth = day.book().at(result.number(), split.station());
                if (truth != null && truth.split().isPresent() && split.splitMicros() >= 0) {
                    compared++;
                    assertThat(truth.split().getAsLong())
                            .as("%s of %d, seed %d", split, result.number(), SEED)
                            .isBetween(split.lowerMicros(), split.upperMicros());
                }
            }
        }
        assertThat(compared).isGreaterThan(40);
    }

    @Test
    void a_seed_gives_one_day() {
        TwinDay first = new TwinDay(SEED, 2);
        TwinDay second = new TwinDay(SEED, 2);
        first.play();
        second.play();
        assertThat(first.journal()).isEqualTo(second.journal());
    }

    @Test
    void a_rough_day_is_one_day_a_seed_and_nothing_of_it_is_lost() {
        TwinDay first = new TwinDay(SEED, 3, Scenario.ROUGH);
        TwinDay second = new TwinDay(SEED, 3, Scenario.ROUGH);
        assertThat(first.play()).as("seed %d", SEED).isTrue();
        second.play();
        assertThat(first.journal()).isEqualTo(second.journal());
        RoughFigures figures = first.roughFigures(0);
        assertThat(figures.lostEdges()).as("%s", figures).isZero();
        assertThat(figures.splits()).as("%s", figures).isGreaterThan(20);
        // Three come within the hour: too few for a rate, enough to see that some came.
        assertThat(figures.strays()).as("%s", figures).isPositive();
        int shown = figures.proposedClean() + figures.ambiguousTruthFirst();
        assertThat(shown + figures.ambiguousTruthNotFirst() + figures.notProposed())
                .isEqualTo(figures.splits());
    }
}
