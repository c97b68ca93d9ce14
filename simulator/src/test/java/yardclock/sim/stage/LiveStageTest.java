package yardclock.sim.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import org.junit.jupiter.api.Test;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;

class LiveStageTest {
    private final List<String> seen = new CopyOnWriteArrayList<>();

    @Test
    void acts_run_in_the_order_of_the_time_they_were_planned_for() {
        try (LiveStage stage = new LiveStage(1)) {
            stage.at(30, () -> seen.add("third"));
            stage.at(10, () -> seen.add("first"));
            stage.at(20, () -> seen.add("second"));
            stage.at(20, () -> seen.add("second, asked later"));
            stage.begin();
            await().until(() -> seen.size() == 4);
        }
        assertThat(seen).containsExactly("first", "second", "second, asked later", "third");
    }

    @Test
    void a_dropped_act_does_not_run_and_a_failing_one_stops_nothing() {
        try (LiveStage stage = new LiveStage(10)) {
            stage.at(5, () -> seen.add("dropped")).drop();
            stage.at(
                    6,
                    () -> {
                        throw new IllegalStateException("stumbles");
                    });
            stage.at(7, () -> seen.add("goes on"));
            stage.begin();
            await().until(() -> !seen.isEmpty());
        }
        assertThat(seen).containsExactly("goes on");
    }

    @Test
    void exam_time_runs_as_many_times_as_fast_as_real_time() {
        try (LiveStage stage = new LiveStage(60)) {
            stage.begin();
            long nanos = System.nanoTime();
            long micros = stage.nowMicros();
            stage.afterRealMillis(50, () -> seen.add(String.valueOf(stage.nowMicros())));
            await().until(() -> !seen.isEmpty());
            long took = (System.nanoTime() - nanos) / 1_000;
            long examTook = Long.parseLong(seen.get(0)) - micros;
            assertThat(examTook).isBetween(50_000L * 60, took * 60);
        }
    }
}
