package yardclock.sim.yard;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.app.settings.DemoPlan;
import yardclock.core.course.SensorRef;

import java.util.Set;

class BodiesTest {
    private static final SensorRef BEAM = new SensorRef("fu-02", 3);
    private static final SensorRef HOME = new SensorRef("fu-08", 1);
    private final Bodies bodies = new Bodies(DemoPlan.plan().plan());

    private int change(int who, SensorRef sensor, int state, Cause cause) {
        Move move = new Move(0, sensor, state, false, cause, false);
        return bodies.change(move, new Diary.By(who, cause, false));
    }

    @Test
    void a_beam_is_blocked_while_anybody_blocks_it() {
        assertThat(change(1, BEAM, 1, Cause.OWN)).isOne();
        assertThat(change(1, BEAM, 1, Cause.PROCTOR)).isOne();
        assertThat(change(1, BEAM, 0, Cause.OWN)).isOne();
        assertThat(change(1, BEAM, 0, Cause.PROCTOR)).isZero();
    }

    @Test
    void a_knock_turns_a_contact_over_and_lets_it_back() {
        assertThat(change(-1, HOME, 1, Cause.JOSTLE)).isZero();
        assertThat(change(-1, HOME, 0, Cause.JOSTLE)).isOne();
    }

    @Test
    void the_crew_clears_a_beam_of_those_who_stopped_and_of_no_others() {
        change(1, BEAM, 1, Cause.OWN);
        assertThat(bodies.putBack(BEAM, 0, Set.of(2))).isOne();
        assertThat(bodies.putBack(BEAM, 0, Set.of(1))).isZero();
    }
}
