package yardclock.sim.twin;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.result.Result;
import yardclock.sim.people.TruthBook;

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
}
