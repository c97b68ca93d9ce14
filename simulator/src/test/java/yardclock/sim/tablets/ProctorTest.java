package yardclock.sim.tablets;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import com.fasterxml.jackson.databind.JsonNode;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import yardclock.app.settings.DemoPlan;
import yardclock.core.board.PostFrame;
import yardclock.core.board.StationView;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.sim.people.Candidate;
import yardclock.sim.people.CandidateRun;
import yardclock.sim.people.Mishap;
import yardclock.sim.people.TruthBook;
import yardclock.sim.stage.LiveStage;
import yardclock.sim.units.VirtualUnit;
import yardclock.sim.units.VirtualUnits;
import yardclock.sim.yard.Spot;
import yardclock.sim.yard.Yard;

import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** What a proctor presses, by what the page shows; the page is a stub's, the tablet real. */
class ProctorTest {
    private static final ExamPlan PLAN = DemoPlan.plan().plan();
    private static final int NUMBER = 12;
    private static final int PIKE_POLES = 2;

    private final LiveStage stage = new LiveStage(60);
    private final TruthBook book = new TruthBook();
    private StubGateway stub;
    private Gateway gateway;
    private LiveTablet<PostFrame> tablet;
    private Yard yard;
    private Proctor proctor;
    private Candidate candidate;

    @BeforeEach
    void open() throws IOException {
        stub = new StubGateway();
        gateway = stub.gateway();
        Tablet.Access access = new Tablet.Access("token", "t-1", "proctor");
        PageClock clock = new PageClock(stage, 1);
        LiveTablet.Page<PostFrame> page = new LiveTablet.Page<>("/api/live/post", PostFrame.class);
        tablet = new LiveTablet<>(stage, gateway, access, clock, page);
        Map<String, VirtualUnit> units =
                PLAN.fieldUnits().stream()
                        .map(FieldUnit::id)
                        .collect(Collectors.toMap(id -> id, id -> VirtualUnits.mute(stage, id)));
        yard = new Yard(stage, PLAN, units);
        CandidateRun run = CandidateRun.draw(1, NUMBER, PLAN.stations());
        candidate = new Candidate(stage, yard, PLAN.stations(), run, book);
        Ground ground = new Ground(PLAN, yard, book, 1);
        proctor = new Proctor(stage, tablet, ground, number -> candidate);
        stage.begin();
        stage.soon(proctor::begin);
    }

    @AfterEach
    void close() {
        tablet.close();
        gateway.close();
        stub.close();
        stage.close();
    }

    private void shows(PostFrame frame) {
        stub.show(frame);
        String wanted = frame.toString();
        await().until(() -> String.valueOf(tablet.newest()).equals(wanted));
    }

    private JsonNode act(int index) {
        return stub.rulings.get(index).path("act");
    }

    @Test
    void the_start_is_given_once_when_the_candidate_stands_and_the_page_allows_it() {
        shows(Frames.of(Frames.released(NUMBER, false)));
        await().until(() -> candidate.phase() == Candidate.Phase.AT_START);
        assertThat(stub.rulings).isEmpty();
        shows(Frames.of(Frames.released(NUMBER, true)));
        await().until(() -> stub.rulings.size() == 1);
        assertThat(act(0).path("act").asText()).isEqualTo("give-start");
        assertThat(act(0).path("number").asInt()).isEqualTo(NUMBER);
    }

    @Test
    void a_candidate_is_held_before_a_station_that_is_not_ready_and_resumed_when_it_is() {
        shows(Frames.of(Frames.walking(NUMBER, PIKE_POLES, StationView.State.TO_BE_RESET)));
        stage.soon(() -> proctor.nears(candidate, PIKE_POLES, stage.nowMicros() + 4_000_000));
        await().until(() -> stub.rulings.size() == 1);
        assertThat(act(0).path("act").asText()).isEqualTo("hold-candidate");
        assertThat(act(0).path("reason").asText()).isEqualTo("station-not-ready");
        shows(Frames.of(Frames.walking(NUMBER, PIKE_POLES, StationView.State.READY)));
        await().until(() -> stub.rulings.size() == 2);
        assertThat(act(1).path("act").asText()).isEqualTo("resume-candidate");
        await().until(() -> book.waitedMicros(NUMBER) > 0);
    }

    @Test
    void the_page_decides_over_the_eye_and_the_eye_where_the_page_says_nothing() {
        String station = PLAN.stations().get(PIKE_POLES).id();
        yard.setSpot(station, Spot.TO_BE_PUT_BACK);
        shows(Frames.of(Frames.walking(NUMBER, PIKE_POLES, StationView.State.READY)));
        stage.soon(() -> proctor.nears(candidate, PIKE_POLES, stage.nowMicros() + 4_000_000));
        shows(Frames.of(Frames.walking(NUMBER, PIKE_POLES - 1, StationView.State.IN_USE)));
        assertThat(stub.rulings).isEmpty();
        stage.soon(() -> proctor.nears(candidate, PIKE_POLES, stage.nowMicros() + 4_000_000));
        await().until(() -> stub.acts().equals(List.of("hold-candidate")));
    }

    @Test
    void a_required_act_without_a_sensor_is_tapped_a_moment_after_it_was_seen() {
        stage.soon(() -> proctor.sees(candidate, "roll-up", "accepted"));
        await().until(() -> stub.rulings.size() == 1);
        assertThat(act(0).path("act").asText()).isEqualTo("tap");
        assertThat(act(0).path("point").asText()).isEqualTo("accepted");
    }

    @Test
    void a_fault_follows_as_many_warnings_as_the_plan_grants() {
        stage.soon(() -> proctor.mishap(candidate, 0, Mishap.Kind.FAULT));
        await().until(() -> stub.rulings.size() == 2);
        assertThat(stub.rulings)
                .extracting(ruling -> ruling.path("act").path("fault").asBoolean())
                .containsExactly(false, true);
        assertThat(act(1).path("criterion").asText()).isEqualTo("running");
    }

    @Test
    void afterwards_clean_splits_are_confirmed_others_timed_by_hand_and_the_result_told() {
        PostFrame.Split clean = Frames.split("low-deck", "proposed", true);
        PostFrame.Split doubtful = Frames.split("pike-poles", "proposed", false);
        shows(Frames.of(Frames.finished(NUMBER, 5, List.of(clean, doubtful), "")));
        await().until(() -> stub.acts().equals(List.of("confirm")));
        assertThat(stub.rulings.get(0).path("basis").asInt()).isEqualTo(5);
        PostFrame.Split confirmed = Frames.split("low-deck", "confirmed", true);
        shows(Frames.of(Frames.finished(NUMBER, 6, List.of(confirmed, doubtful), "")));
        // This candidate never ran, so there is no stop-watch to read: the split is made void.
        await().until(() -> stub.acts().equals(List.of("confirm", "void-split")));
        PostFrame.Split ruled = Frames.split("pike-poles", "void", false);
        shows(Frames.of(Frames.finished(NUMBER, 7, List.of(confirmed, ruled), "undecided")));
        await().until(() -> stub.acts().equals(List.of("confirm", "void-split", "tell")));
    }

    @Test
    void after_a_withdrawal_the_result_is_told_whatever_splits_are_open() {
        PostFrame.Split open = Frames.split("low-deck", "proposed", true);
        shows(Frames.of(Frames.finished(NUMBER, 5, List.of(open), "withdrawn")));
        await().until(() -> stub.acts().equals(List.of("tell")));
    }
}
