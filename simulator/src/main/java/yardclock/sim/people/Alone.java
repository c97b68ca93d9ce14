package yardclock.sim.people;

import yardclock.core.course.Station;
import yardclock.sim.stage.Stage;
import yardclock.sim.yard.Spot;
import yardclock.sim.yard.Yard;

import java.util.List;

/**
 * A candidate without one of our proctors, as when a person at a tablet has taken over: goes on
 * when the station looks ready, and leaves taps and warnings to that person.
 */
final class Alone implements Companion {
    private static final long LOOK_AGAIN_MICROS = 1_000_000;

    private final Stage stage;
    private final Yard yard;
    private final List<Station> course;

    Alone(Stage stage, Yard yard, List<Station> course) {
        this.stage = stage;
        this.yard = yard;
        this.course = course;
    }

    @Override
    public void standsAtStart(Candidate candidate) {
        // waits for the horn
    }

    @Override
    public void sees(Candidate candidate, String station, String checkpoint) {
        // whoever has the tablet must see it
    }

    @Override
    public void nears(Candidate candidate, int stationIndex, long plannedStart) {
        if (yard.spot(course.get(stationIndex).id()) == Spot.READY) {
            candidate.startAt(stationIndex, plannedStart);
        } else {
            long later = plannedStart + LOOK_AGAIN_MICROS;
            stage.afterMicros(LOOK_AGAIN_MICROS, () -> nears(candidate, stationIndex, later));
        }
    }

    @Override
    public void mishap(Candidate candidate, int stationIndex, Mishap.Kind kind) {
        // nothing is called for a candidate nobody of ours is with
    }
}
