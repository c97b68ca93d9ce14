package yardclock.sim.tablets;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.node.MissingNode;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import yardclock.app.settings.DemoPlan;
import yardclock.core.board.CrewFrame;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.ruling.Act;
import yardclock.sim.people.TruthBook;
import yardclock.sim.stage.VirtualStage;
import yardclock.sim.units.VirtualUnit;
import yardclock.sim.units.VirtualUnits;
import yardclock.sim.yard.Spot;
import yardclock.sim.yard.Yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** What the crew puts back and calls ready, over a tablet that answers when the test says so. */
class CrewTest {
    private static final ExamPlan PLAN = DemoPlan.plan().plan();
    private static final String STATION = "ground-ladder";
    private static final Gateway.Answer ACCEPTED =
            new Gateway.Answer(200, MissingNode.getInstance());

    private final VirtualStage stage = new VirtualStage(1);
    private final HandTablet tablet = new HandTablet();
    private Yard yard;

    /** Shows what it is given and keeps each press until it is answered. */
    private static final class HandTablet implements Tablet<CrewFrame> {
        private final List<Act> acts = new ArrayList<>();
        private Consumer<CrewFrame> listener;
        private Consumer<Gateway.Answer> waiting;

        @Override
        public void open(Consumer<CrewFrame> told) {
            listener = told;
        }

        @Override
        public void close() {}

        @Override
        public Access access() {
            return new Access("token", "t-1", "crew");
        }

        @Override
        public CrewFrame newest() {
            return null;
        }

        @Override
        public boolean isFresh() {
            return true;
        }

        @Override
        public void press(Act act, long basis, Consumer<Gateway.Answer> then) {
            acts.add(act);
            waiting = then;
        }

        private void lists(CrewFrame.Reset... resets) {
            listener.accept(new CrewFrame(Frames.head(0), List.of(resets), List.of()));
        }
    }

    @BeforeEach
    void begin() {
        Map<String, VirtualUnit> units =
                PLAN.fieldUnits().stream()
                        .map(FieldUnit::id)
                        .collect(Collectors.toMap(id -> id, id -> VirtualUnits.mute(stage, id)));
        yard = new Yard(stage, PLAN, units);
        new Crew(stage, tablet, new Ground(PLAN, yard, new TruthBook(), 1)).begin();
    }

    private CrewFrame.Reset toReset() {
        return new CrewFrame.Reset(STATION, Frames.NO_TEXT, 0, List.of());
    }

    private void putsBackAndCalls() {
        yard.setSpot(STATION, Spot.TO_BE_PUT_BACK);
        tablet.lists(toReset());
        stage.advanceMicros(PLAN.station(STATION).orElseThrow().timing().resetMicros());
        tablet.lists(toReset());
        assertThat(tablet.acts).containsExactly(new Act.StationReady(STATION));
    }

    @Test
    void a_station_is_ready_once_it_was_put_back_and_called() {
        putsBackAndCalls();
        assertThat(yard.spot(STATION)).isEqualTo(Spot.TO_BE_PUT_BACK);
        tablet.waiting.accept(ACCEPTED);
        assertThat(yard.spot(STATION)).isEqualTo(Spot.READY);
    }

    @Test
    void an_answer_that_comes_late_takes_no_station_from_who_has_stepped_up_to_it() {
        putsBackAndCalls();
        tablet.lists();
        assertThat(yard.spot(STATION)).isEqualTo(Spot.READY);
        yard.setSpot(STATION, Spot.OCCUPIED);
        tablet.waiting.accept(ACCEPTED);
        assertThat(yard.spot(STATION)).isEqualTo(Spot.OCCUPIED);
    }
}
