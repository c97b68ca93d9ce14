package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Refusal;

/** A calibration and the course: neither gets the other's edges. */
class CalibrationOnTheCourseTest {
    private final CalibrationBench bench = CalibrationBench.open(5);
    private final Yard yard = bench.yard();

    private Walk walk(int number) {
        for (int unit = 1; unit <= 7; unit++) {
            yard.exchange("u" + unit);
        }
        return new Walk(yard, number, "proctor1");
    }

    @Test
    void trips_reach_no_station() {
        bench.begin().trips(5);
        assertThat(yard.facts(FactKind.PASSAGE_UNASSIGNED)).isEmpty();
        assertThat(yard.facts(FactKind.EDGE_TAKEN)).hasSize(20);
        assertThat(bench.end(false).isAccepted()).isTrue();
        yard.after(1);
        yard.edge("u3/1", 1);
        yard.after(1);
        yard.edge("u3/1", 0);
        assertThat(yard.facts(FactKind.PASSAGE_UNASSIGNED))
                .extracting(Fact::station)
                .contains("poles");
    }

    @Test
    void it_does_not_begin_while_someone_is_still_to_come_by() {
        walk(101).release();
        Act begin = new Act.BeginCalibration("u3", 1, "u7", 1);
        assertThat(yard.rule("technician1", begin).refusal()).isEqualTo(Refusal.STATION_AWAITS);
        yard.ok("proctor1", new Act.Withdraw(101, ""));
        assertThat(yard.rule("technician1", begin).isAccepted()).isTrue();
    }

    @Test
    void a_release_ends_it_at_once_and_the_candidate_is_timed() {
        bench.begin().trips(3);
        // The mat was left pressed when the technician walked off.
        yard.after(1);
        yard.edge("u3/1", 1);
        Walk walk = walk(101).at(yard.now() + 5).release();
        assertThat(bench.view().sitting()).isNull();
        assertThat(yard.facts(FactKind.CALIBRATION_BROKEN_OFF)).hasSize(1);
        assertThat(bench.end(true).refusal()).isEqualTo(Refusal.NOT_CALIBRATING);
        walk.station("walk").after(5).station("drag").after(5).station("poles");
        assertThat(yard.split(101, "poles").splitMicros()).isBetween(9_990_000L, 10_010_000L);
    }

    @Test
    void an_edge_from_before_it_began_belongs_to_the_course() {
        Input.Edge pressed = yard.happens("u3/1", 1);
        yard.after(1);
        Input.Edge released = yard.happens("u3/1", 0);
        yard.after(1);
        bench.begin();
        yard.take(pressed);
        yard.take(released);
        assertThat(bench.view().sitting().pairs()).isEmpty();
        assertThat(yard.facts(FactKind.PASSAGE_UNASSIGNED)).hasSize(1);
    }

    @Test
    void after_it_a_candidate_is_timed_as_ever() {
        bench.calibrated();
        Walk walk = walk(101).at(yard.now() + 5).release();
        walk.station("walk").after(5).station("drag").after(5).station("poles");
        assertThat(yard.split(101, "poles").splitMicros()).isBetween(9_990_000L, 10_010_000L);
    }
}
