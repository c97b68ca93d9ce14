package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.result.Result;
import yardclock.core.ruling.Act;

import java.util.List;

/** One candidate alone on the course: every combination makes its mark, and the clock is one. */
class WholeCourseTest {
    private static final long SECOND = 1_000_000;
    private final Yard yard = Yard.open(new TestPlan().make());

    @Test
    void every_station_gives_a_clean_split_by_its_own_edges() {
        new Walk(yard, 101, "proctor1").at(10).wholeCourse();
        assertThat(yard.result(101).splits()).hasSize(6);
        assertThat(yard.result(101).splits())
                .extracting(Result.SplitLine::station)
                .isEqualTo(TestPlan.stations());
        assertThat(yard.result(101).splits())
                .extracting(Result.SplitLine::state)
                .containsOnly("proposed");
        assertThat(yard.facts(FactKind.SPLIT_PROPOSED))
                .extracting(Fact::words)
                .containsExactly("clean", "clean", "clean", "clean", "clean", "clean");
        assertMarks("walk", 10.2, 19.2);
        assertMarks("drag", 25.3, 35.3);
        assertMarks("poles", 43.3, 53.3);
        assertMarks("bag", 59.8, 69.8);
        assertMarks("fan", 75.3, 85.3);
        assertMarks("laps", 90.8, 100.4);
    }

    private void assertMarks(String station, double start, double finish) {
        Result.SplitLine line = yard.split(101, station);
        assertThat(line.startMicros()).as(station).isEqualTo(Math.round(start * SECOND));
        assertThat(line.finishMicros()).as(station).isEqualTo(Math.round(finish * SECOND));
    }

    @Test
    void the_official_time_is_the_last_finish_less_the_first_start() {
        new Walk(yard, 101, "proctor1").at(10).wholeCourse();
        Result result = yard.result(101);
        assertThat(result.officialMicros()).isEqualTo(Math.round((100.4 - 10.2) * SECOND));
        long sum = result.splits().stream().mapToLong(Result.SplitLine::splitMicros).sum();
        assertThat(result.officialMicros()).isGreaterThan(sum + 20 * SECOND);
        assertThat(result.outcome()).as("open while splits are not ruled on").isEmpty();
        assertThat(yard.facts(FactKind.OFFICIAL_TIME)).hasSize(1);
    }

    @Test
    void the_interval_is_that_of_two_edges_and_not_of_twelve() {
        new Walk(yard, 101, "proctor1").at(10).wholeCourse();
        Result result = yard.result(101);
        long width = result.upperMicros() - result.lowerMicros();
        // Two stamps of 8 ms round trips and two sensors of 2 ms. With so few exchanges nothing is
        // known of the crystal, so the stamps widen by up to 500 ppm of their distance.
        assertThat(width).isBetween(16_000L, 130_000L);
    }

    @Test
    void confirming_every_split_ends_the_attempt_and_telling_it_is_the_last_word() {
        Walk walk = new Walk(yard, 101, "proctor1").at(10).wholeCourse();
        assertThat(yard.facts(FactKind.OUTCOME)).isEmpty();
        walk.confirmAll();
        assertThat(yard.result(101).outcome()).isEqualTo("passed");
        assertThat(yard.result(101).decision()).isEqualTo("within");
        assertThat(yard.result(101).display()).isEqualTo("1:30.2");
        assertThat(yard.facts(FactKind.OUTCOME)).extracting(Fact::words).containsExactly("passed");
        yard.ok("proctor1", new Act.Tell(101));
        assertThat(yard.result(101).told()).isTrue();
    }

    @Test
    void stations_go_round_from_ready_to_in_use_to_be_reset_and_ready() {
        new Walk(yard, 101, "proctor1").at(10).wholeCourse();
        List<FactKind> round =
                yard.facts().stream()
                        .filter(f -> f.station().equals("poles"))
                        .map(Fact::kind)
                        .filter(k -> k.name().startsWith("STATION"))
                        .toList();
        assertThat(round).containsExactly(FactKind.STATION_IN_USE, FactKind.STATION_TO_BE_RESET);
        new Walk(yard, 101, "proctor1").reset("poles");
        assertThat(yard.facts(FactKind.STATION_READY))
                .extracting(Fact::station)
                .containsExactly("poles");
    }

    @Test
    void a_time_over_the_cut_off_fails_and_one_within_the_uncertainty_goes_by_the_plans_rule() {
        assertThat(outcomeAfter(new TestPlan(), 0)).isEqualTo("passed");
        assertThat(outcomeAfter(new TestPlan(), 115)).isEqualTo("failed-time");
        double onTheCutOff = TestPlan.CUT_OFF / 1e6 - 90.2;
        assertThat(outcomeAfter(new TestPlan(), onTheCutOff)).isEqualTo("undecided");
        assertThat(outcomeAfter(new TestPlan().benefit(), onTheCutOff)).isEqualTo("passed");
    }

    private static String outcomeAfter(TestPlan plan, double rest) {
        Yard yard = Yard.open(plan.make());
        Walk walk = new Walk(yard, 101, "proctor1").at(10).release().station("walk");
        yard.after(rest);
        walk.stations(1, 6);
        walk.confirmAll();
        return yard.result(101).outcome();
    }
}
