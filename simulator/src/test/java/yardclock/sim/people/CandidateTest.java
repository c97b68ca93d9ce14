package yardclock.sim.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.app.settings.DemoPlan;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.sim.stage.VirtualStage;
import yardclock.sim.units.VirtualUnit;
import yardclock.sim.units.VirtualUnits;
import yardclock.sim.yard.Spot;
import yardclock.sim.yard.Yard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** A candidate lives through what was drawn, in virtual time. */
class CandidateTest {
    private static final ExamPlan PLAN = DemoPlan.plan().plan();
    private static final long SECOND = 1_000_000;
    private static final long DAY = 3_600 * SECOND;

    private final VirtualStage stage = new VirtualStage(10);
    private final TruthBook book = new TruthBook();
    private final Yard yard = new Yard(stage, PLAN, units());
    private final List<String> seen = new ArrayList<>();

    private Map<String, VirtualUnit> units() {
        return PLAN.fieldUnits().stream()
                .map(FieldUnit::id)
                .collect(Collectors.toMap(id -> id, id -> VirtualUnits.mute(stage, id)));
    }

    /** The first number from so many on whose run has such a mishap. */
    private static CandidateRun runWith(Mishap.Kind kind) {
        for (int number = 1; number < 10_000; number++) {
            CandidateRun run = CandidateRun.draw(1, number, PLAN.stations());
            if (run.mishap().kind() == kind) {
                return run;
            }
        }
        throw new AssertionError("nobody has a " + kind);
    }

    private Candidate started(CandidateRun run) {
        Candidate candidate = new Candidate(stage, yard, PLAN.stations(), run, book);
        candidate.accompaniedBy(new Watching());
        candidate.come();
        stage.advanceMicros(60 * SECOND);
        assertThat(seen).containsExactly("at the start");
        candidate.hears(stage.nowMicros());
        return candidate;
    }

    private final class Watching implements Companion {
        @Override
        public void standsAtStart(Candidate candidate) {
            seen.add("at the start");
        }

        @Override
        public void sees(Candidate candidate, String station, String checkpoint) {
            seen.add(checkpoint);
        }

        @Override
        public void nears(Candidate candidate, int stationIndex, long plannedStart) {
            candidate.startAt(stationIndex, plannedStart);
        }

        @Override
        public void mishap(Candidate candidate, int stationIndex, Mishap.Kind kind) {
            seen.add(kind + " at " + stationIndex);
        }
    }

    @Test
    void the_course_takes_what_was_drawn_to_the_microsecond() {
        CandidateRun run = runWith(Mishap.Kind.NONE);
        Candidate candidate = started(run);
        stage.advanceMicros(DAY);
        assertThat(candidate.phase()).isEqualTo(Candidate.Phase.DONE);
        assertThat(candidate.finished()).isEqualTo(9);
        long first = book.at(run.number(), "hydrant-walk").startMicros();
        long last = book.at(run.number(), "roll-up").finishMicros();
        assertThat(last - first).isEqualTo(run.courseMicros());
        assertThat(seen).containsExactly("at the start", "cap-off", "hands-changed", "accepted");
    }

    @Test
    void who_gives_up_does_nothing_more_and_leaves_a_station_to_be_put_back() {
        CandidateRun run = runWith(Mishap.Kind.WITHDRAWAL);
        Candidate candidate = started(run);
        stage.advanceMicros(DAY);
        int where = run.mishap().station();
        assertThat(candidate.phase()).isEqualTo(Candidate.Phase.DONE);
        assertThat(candidate.finished()).isEqualTo(where);
        assertThat(seen).contains("WITHDRAWAL at " + where);
        assertThat(yard.spot(PLAN.stations().get(where).id())).isEqualTo(Spot.TO_BE_PUT_BACK);
    }

    @Test
    void alone_a_candidate_waits_for_a_station_until_it_looks_ready() {
        CandidateRun run = runWith(Mishap.Kind.NONE);
        Candidate candidate = started(run);
        candidate.leftAlone();
        yard.setSpot("mannequin-drag", Spot.OCCUPIED);
        stage.advanceMicros(DAY / 4);
        assertThat(candidate.begun()).isEqualTo(1);
        yard.setSpot("mannequin-drag", Spot.READY);
        stage.advanceMicros(DAY);
        assertThat(candidate.finished()).isEqualTo(9);
    }

    @Test
    void a_station_that_was_put_back_is_at_rest_again() {
        Candidate candidate = started(runWith(Mishap.Kind.NONE));
        stage.advanceMicros(DAY);
        assertThat(candidate.finished()).isEqualTo(9);
        VirtualUnit wedge =
                yard.units().stream().filter(u -> u.id().equals("fu-08")).findFirst().orElseThrow();
        assertThat(wedge.state(2)).isEqualTo(1);
        yard.putBack("wedge-drive");
        assertThat(wedge.state(1)).isEqualTo(1);
        assertThat(wedge.state(2)).isZero();
    }
}
