package yardclock.sim.yard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import yardclock.app.settings.DemoPlan;
import yardclock.core.course.Checkpoint;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Station;
import yardclock.core.passage.Passage;
import yardclock.core.passage.TimedEdge;
import yardclock.core.passage.TriggerJudge;
import yardclock.core.time.Stamp;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/** What a station's sensors go through, over many seeds. */
class ScriptTest {
    private static final ExamPlan PLAN = DemoPlan.plan().plan();
    private static final int SEEDS = 300;

    /** Where the passage starts on the gateway's time line; any instant would do. */
    private static final long START = 1_000_000_000;

    static List<Station> stations() {
        return PLAN.stations();
    }

    private static Script script(Station station, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        long median = station.timing().medianMicros();
        long takes = random.nextLong(median / 2, median * 2);
        return DemoCourse.perform(station.id(), takes, random);
    }

    @ParameterizedTest
    @MethodSource("stations")
    void every_move_alternates_its_sensor_from_rest(Station station) {
        for (long seed = 0; seed < SEEDS; seed++) {
            Map<SensorRef, Integer> states = new HashMap<>();
            for (Move move : script(station, seed).moves()) {
                int before = states.getOrDefault(move.sensor(), restState(move.sensor()));
                assertThat(move.state())
                        .as("seed %d, %s at %d", seed, move.sensor(), move.offsetMicros())
                        .isEqualTo(1 - before);
                states.put(move.sensor(), move.state());
            }
        }
    }

    private static int restState(SensorRef sensor) {
        return PLAN.fieldUnit(sensor.unit()).orElseThrow().sensors().stream()
                .filter(planned -> planned.number() == sensor.sensor())
                .mapToInt(SensorPlan::restState)
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("stations")
    void the_plans_triggers_stamp_the_very_edges_the_script_means(Station station) {
        for (long seed = 0; seed < SEEDS; seed++) {
            Script script = script(station, seed);
            List<TimedEdge> edges = edges(script);
            if (!isSignal(station)) {
                assertThat(startStamp(station, edges)).as("start, seed %d", seed).hasValue(START);
            }
            long armed = armedAt(station, script, edges);
            Optional<Passage> finish = new TriggerJudge(station.finish(), 0).mark(edges, armed);
            assertThat(finish.map(passage -> passage.stamp().micros()))
                    .as("finish, seed %d", seed)
                    .hasValue(START + script.finishStampMicros());
        }
    }

    private static boolean isSignal(Station station) {
        return station.start().contacts().get(0).sensor().isOutput();
    }

    private static Optional<Long> startStamp(Station station, List<TimedEdge> edges) {
        return new TriggerJudge(station.start(), 0)
                .mark(edges, START - 5_000_000)
                .map(passage -> passage.stamp().micros());
    }

    /** When everything that arms the finish was seen, by a sensor or by the proctor. */
    private static long armedAt(Station station, Script script, List<TimedEdge> edges) {
        String armedBy = station.finish().guards().armedBy();
        if (armedBy.isEmpty()) {
            return START;
        }
        Checkpoint checkpoint = station.checkpoint(armedBy).orElseThrow();
        if (checkpoint.trigger().isJudged()) {
            return START + script.sights().get(0).offsetMicros();
        }
        return new TriggerJudge(checkpoint.trigger(), 0)
                .mark(edges, START)
                .orElseThrow()
                .stamp()
                .micros();
    }

    @ParameterizedTest
    @MethodSource("stations")
    void every_checkpoint_is_seen_as_often_as_the_plan_asks(Station station) {
        for (long seed = 0; seed < SEEDS; seed++) {
            Script script = script(station, seed);
            List<TimedEdge> edges = edges(script);
            for (Checkpoint checkpoint : station.checkpoints()) {
                if (checkpoint.trigger().isJudged()) {
                    assertThat(script.sights())
                            .extracting(Sight::checkpoint)
                            .contains(checkpoint.id());
                } else {
                    TriggerJudge judge = new TriggerJudge(checkpoint.trigger(), 0);
                    assertThat(judge.counted(edges, START, checkpoint.count()))
                            .as("%s, seed %d", checkpoint.id(), seed)
                            .hasSize(checkpoint.count());
                }
            }
        }
    }

    private static List<TimedEdge> edges(Script script) {
        List<TimedEdge> edges = new ArrayList<>();
        for (Move move : script.moves()) {
            long at = START + move.offsetMicros();
            Stamp stamp = new Stamp(at, at, at);
            edges.add(
                    new TimedEdge(
                            move.sensor(),
                            move.state(),
                            stamp,
                            0,
                            "boot",
                            edges.size(),
                            stamp.micros(),
                            stamp.micros(),
                            0));
        }
        return edges;
    }

    @ParameterizedTest
    @MethodSource("stations")
    void chatter_stays_within_twenty_milliseconds_of_a_true_change(Station station) {
        for (long seed = 0; seed < SEEDS; seed++) {
            List<Move> moves = script(station, seed).moves();
            for (Move bounce : moves) {
                if (bounce.bounce()) {
                    assertThat(moves)
                            .as("seed %d, %s", seed, bounce)
                            .anyMatch(other -> isTrueChangeNear(bounce, other));
                }
            }
        }
    }

    private static boolean isTrueChangeNear(Move bounce, Move other) {
        return !other.bounce()
                && other.sensor().equals(bounce.sensor())
                && Math.abs(other.offsetMicros() - bounce.offsetMicros()) <= 20_000;
    }

    @ParameterizedTest
    @MethodSource("stations")
    void nothing_happens_before_the_lead(Station station) {
        for (long seed = 0; seed < SEEDS; seed++) {
            assertThat(script(station, seed).moves())
                    .allMatch(move -> move.offsetMicros() >= -Script.LEAD_MICROS);
        }
    }

    @Test
    void at_least_a_tenth_of_all_edges_is_chatter() {
        long all = 0;
        long bounces = 0;
        for (Station station : PLAN.stations()) {
            for (long seed = 0; seed < SEEDS; seed++) {
                List<Move> moves = script(station, seed).moves();
                all += moves.size();
                bounces += moves.stream().filter(Move::bounce).count();
            }
        }
        assertThat(bounces * 10).isGreaterThan(all);
    }
}
