package yardclock.sim.rough;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.app.settings.DemoPlan;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.SensorRef;
import yardclock.sim.people.CandidateRun;
import yardclock.sim.yard.Cause;
import yardclock.sim.yard.Move;
import yardclock.sim.yard.Press;
import yardclock.sim.yard.Script;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/** Whether each nastiness is there, at its rate, and leaves the truth alone. */
class RoughRunTest {
    private static final ExamPlan PLAN = DemoPlan.plan().plan();
    private static final long SEED = 7;
    private static final int RUNS = 200;

    private static List<Script> scripts() {
        List<Script> scripts = new ArrayList<>();
        for (int number = 1; number <= RUNS; number++) {
            scripts.addAll(RoughRun.draw(SEED, number, PLAN).scripts());
        }
        return scripts;
    }

    private static long count(Predicate<Move> which) {
        return scripts().stream().flatMap(s -> s.moves().stream()).filter(which).count();
    }

    @Test
    void a_rough_run_lasts_as_long_as_the_kind_one_of_its_pace() {
        for (int number = 1; number <= 20; number++) {
            double pace = RoughRun.pace(SEED, number);
            CandidateRun kind = CandidateRun.draw(SEED, number, PLAN.stations(), pace);
            CandidateRun rough = RoughRun.draw(SEED, number, PLAN);
            assertThat(rough.courseMicros()).as("seed %d", SEED).isEqualTo(kind.courseMicros());
            for (int i = 0; i < kind.scripts().size(); i++) {
                List<Long> own =
                        rough.scripts().get(i).moves().stream()
                                .filter(move -> move.cause() == Cause.OWN)
                                .map(Move::offsetMicros)
                                .toList();
                List<Long> before =
                        kind.scripts().get(i).moves().stream().map(Move::offsetMicros).toList();
                assertThat(own).as("number %d, seed %d", number, SEED).containsAll(before);
            }
        }
    }

    @Test
    void about_one_edge_in_a_hundred_is_missed() {
        double share = (double) count(Move::missed) / count(move -> true);
        assertThat(share).as("seed %d", SEED).isBetween(0.008, 0.012);
    }

    @Test
    void about_one_tap_in_twenty_is_missing_and_the_others_are_late_as_hands_are() {
        List<Long> late = new ArrayList<>();
        for (Script script : scripts()) {
            for (Press press : script.presses()) {
                boolean isStart = press.point().equals("start");
                late.add(press.offsetMicros() - (isStart ? 0 : script.finishStampMicros()));
            }
        }
        double made = late.size() / (2.0 * scripts().size());
        assertThat(1 - made).as("seed %d", SEED).isBetween(0.04, 0.06);
        double mean = late.stream().mapToLong(Long::longValue).average().orElseThrow();
        // Am. J. Phys. 87(2) 110, 2019: 0.11 s, SD 0.07 s.
        assertThat(mean).as("seed %d", SEED).isBetween(105_000.0, 115_000.0);
        double square = late.stream().mapToDouble(l -> (l - mean) * (l - mean)).sum();
        assertThat(Math.sqrt(square / late.size())).isBetween(66_000.0, 74_000.0);
    }

    @Test
    void a_proctor_crosses_at_the_asked_share_and_never_nearer_than_asked() {
        long blocks = count(m -> m.cause() == Cause.PROCTOR && m.state() == 1 && !m.bounce());
        // Sensors people cross: 3 at the drag, 2 mats and beams under the deck, 4 at the fan, 1 at
        // each of the poles, the ladder and the roll-up. Counted in the demo's plan.
        double share = blocks / (12.0 * RUNS);
        assertThat(share).as("seed %d", SEED).isBetween(0.26, 0.34);
        for (Script script : scripts()) {
            script.moves().stream()
                    .filter(move -> move.cause() == Cause.PROCTOR && !move.bounce())
                    .filter(move -> !isFirstOfTwo(move.sensor()))
                    .forEach(
                            move ->
                                    assertThat(Math.abs(move.offsetMicros()))
                                            .as("seed %d, %s", SEED, move)
                                            .isGreaterThanOrEqualTo(Rates.CROSSING_NEAREST));
        }
    }

    /** The candidate passes these some tenths before the instant that counts. */
    private static boolean isFirstOfTwo(SensorRef beam) {
        return beam.unit().equals("fu-07") && beam.sensor() % 2 == 1;
    }

    @Test
    void loads_break_beams_first_and_mats_are_stepped_on_twice() {
        assertThat(count(m -> m.cause() == Cause.LOAD && m.state() == 1))
                .as("seed %d", SEED)
                .isBetween(RUNS * 15 / 10L, RUNS * 25 / 10L);
        long kind = 0;
        for (int number = 1; number <= RUNS; number++) {
            double pace = RoughRun.pace(SEED, number);
            for (Script s : CandidateRun.draw(SEED, number, PLAN.stations(), pace).scripts()) {
                kind += s.moves().size();
            }
        }
        // Three mats to start from, each with two kinds of double step, and one to finish on.
        long more = count(m -> m.cause() == Cause.OWN) - kind;
        assertThat(more / 2.0 / (7 * RUNS)).as("seed %d", SEED).isBetween(0.30, 0.40);
    }

    @Test
    void a_slow_one_goes_before_a_fast_one_in_every_ten() {
        for (int group = 0; group < 9; group++) {
            List<Double> paces = new ArrayList<>();
            for (int place = 1; place <= 10; place++) {
                paces.add(RoughRun.pace(SEED, group * 10 + place));
            }
            int slow = paces.indexOf(Rates.SLOW);
            assertThat(slow).as("seed %d", SEED).isNotNegative();
            assertThat(paces.get(slow + 1)).isEqualTo(Rates.FAST);
            assertThat(paces).filteredOn(pace -> pace == 1.0).hasSize(8);
        }
    }
}
