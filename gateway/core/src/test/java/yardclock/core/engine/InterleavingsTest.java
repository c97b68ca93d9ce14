package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.Random;

/**
 * Three tablets rule at once, with lost links and answers ({@link TabletsAtOnce}). Whatever the
 * order, the day ends as a plain model says, and each ruling was applied once.
 */
class InterleavingsTest {
    private static final int SEEDS = 200;

    private int refused;
    private int repeated;

    @Test
    void whatever_the_order_each_ruling_counts_once_and_the_second_of_two_is_refused() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            playFinished(seed);
        }
        assertThat(refused).as("conflicts were met at all").isGreaterThan(SEEDS);
        assertThat(repeated).as("answers were lost at all").isGreaterThan(SEEDS);
    }

    private void playFinished(long seed) {
        Yard yard = Yard.open(new TestPlan().make());
        new Walk(yard, 101, "proctor1").at(10).wholeCourse();
        Random random = new Random(seed);
        RulingScene scene = new RulingScene(101, TestPlan.stations(), random);
        TabletsAtOnce tablets =
                play(yard, scene, random, seed, "proctor1", "coordinator1", "coordinator2");
        RulingModel model = scene.model();
        compareSplits(yard, model, TestPlan.stations(), seed);
        assertThat(tablets.applied()).as("seed %d: once each", seed).isEqualTo(model.applied());
        assertThat(!yard.result(101).outcome().isEmpty())
                .as("seed %d: over", seed)
                .isEqualTo(model.isOver());
    }

    @Test
    void holds_stops_and_hand_overs_between_rulings_count_once_each_too() {
        for (long seed = 1; seed <= SEEDS; seed++) {
            playOnCourse(seed);
        }
        assertThat(refused).as("conflicts were met at all").isGreaterThan(SEEDS);
        assertThat(repeated).as("answers were lost at all").isGreaterThan(SEEDS);
    }

    private void playOnCourse(long seed) {
        Yard yard = Yard.open(new TestPlan().make());
        new Walk(yard, 101, "proctor1").at(10).release().station("walk").stations(1, 3);
        Random random = new Random(seed);
        List<String> done = TestPlan.stations().subList(0, 3);
        CourseScene scene =
                new CourseScene(101, "proctor1", new RulingScene(101, done, random), random);
        TabletsAtOnce tablets =
                play(yard, scene, random, seed, "proctor1", "proctor2", "coordinator1", "safety1");
        compareSplits(yard, scene.splits().model(), done, seed);
        assertThat(tablets.applied()).as("seed %d: once each", seed).isEqualTo(scene.applied());
        assertThat(scene.seen(yard)).as("seed %d", seed).isEqualTo(scene.meant());
    }

    private TabletsAtOnce play(
            Yard yard, TabletsAtOnce.Scene scene, Random random, long seed, String... devices) {
        TabletsAtOnce tablets =
                new TabletsAtOnce(yard, scene, random, seed, List.of(devices)).play(0.05);
        refused += tablets.conflicts();
        repeated += tablets.repeats();
        return tablets;
    }

    private static void compareSplits(
            Yard yard, RulingModel model, List<String> stations, long seed) {
        for (String station : stations) {
            assertThat(yard.split(101, station).state())
                    .as("seed %d, %s", seed, station)
                    .isEqualTo(model.state(station));
        }
    }
}
