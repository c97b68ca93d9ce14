package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.board.BoardFrame;
import yardclock.core.board.LeaderboardFrame;
import yardclock.core.board.PostFrame;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;

import java.util.List;

/** What each screen shows, and what it must not show yet. */
class BoardsTest {
    private static final long SECOND = 1_000_000;

    @Test
    void failed_withdrawn_and_passed_read_the_same_on_the_board() {
        Yard yard = Yard.open(new TestPlan().make());
        new Walk(yard, 101, "proctor1").at(10).wholeCourse().confirmAll();
        yard.ok("coordinator1", new Act.Withdraw(102, "ill"));
        yard.ok("coordinator1", new Act.NoShow(103));
        assertThat(board(yard).lines().subList(0, 3))
                .extracting(BoardFrame.Line::status)
                .containsOnly("course-done");
    }

    @Test
    void the_queue_shows_places_and_call_times_as_ranges() {
        Yard yard = Yard.open(new TestPlan().make());
        new Walk(yard, 101, "proctor1").at(10).release();
        List<BoardFrame.Line> lines = board(yard).lines();
        assertThat(lines.get(0).status()).isEqualTo("called");
        assertThat(lines.get(0).place()).isZero();
        assertThat(lines.get(0).earliestMicros()).isEqualTo(-1);
        assertThat(lines.get(1).place()).isEqualTo(1);
        assertThat(lines.get(1).earliestMicros()).isEqualTo(70 * SECOND);
        assertThat(lines.get(2).earliestMicros()).isEqualTo(130 * SECOND);
        assertThat(lines).allMatch(l -> l.place() == 0 || l.latestMicros() > l.earliestMicros());
    }

    @Test
    void times_stand_on_the_board_only_by_plan_and_only_after_they_were_told() {
        Yard yard = Yard.open(new TestPlan().timesOnBoard().make());
        new Walk(yard, 101, "proctor1").at(10).wholeCourse().confirmAll();
        assertThat(board(yard).times()).isEmpty();
        yard.ok("proctor1", new Act.Tell(101));
        assertThat(board(yard).times()).containsExactly(new BoardFrame.Time(101, "1:30.2", true));
        assertThat(board(Yard.open(new TestPlan().make())).times()).isEmpty();
    }

    @Test
    void the_public_sees_a_delay_and_not_its_reason() {
        Yard yard = Yard.open(new TestPlan().leaderboardPublic().make());
        yard.at(10).ok("proctor1", new Act.StopAll("101 has collapsed"));
        assertThat(board(yard).head().course().name()).isEqualTo("STOPPED");
        assertThat(board(yard).toString()).doesNotContain("collapsed");
        assertThat(leaderboard(yard).toString()).doesNotContain("collapsed");
        assertThat(yard.engine().control(yard.view()).head().courseWords()).contains("collapsed");
    }

    @Test
    void staff_see_the_leaderboard_before_the_paper_work_and_the_public_after_the_telling() {
        Yard staff = Yard.open(new TestPlan().make());
        new Walk(staff, 101, "proctor1").at(10).wholeCourse();
        assertThat(leaderboard(staff).rows())
                .extracting(r -> r.display())
                .containsExactly("1:30.2");
        Yard open = Yard.open(new TestPlan().leaderboardPublic().make());
        Walk walk = new Walk(open, 101, "proctor1").at(10).wholeCourse();
        assertThat(leaderboard(open).rows()).isEmpty();
        walk.confirmAll();
        assertThat(leaderboard(open).rows()).isEmpty();
        open.ok("proctor1", new Act.Tell(101));
        assertThat(leaderboard(open).rows()).hasSize(1);
    }

    @Test
    void equal_displayed_times_share_a_rank_and_no_time_has_none() {
        Yard yard = Yard.open(new TestPlan().make());
        for (int number = 101; number <= 103; number++) {
            Walk walk = new Walk(yard, number, "proctor" + (number - 100)).after(61).release();
            walk.station("walk").after(number == 103 ? 9 : 5);
            for (String station : TestPlan.stations().subList(1, 6)) {
                walk.station(station).after(5);
            }
            TestPlan.stations().forEach(walk::reset);
        }
        yard.ok("coordinator1", new Act.Withdraw(104, ""));
        assertThat(leaderboard(yard).rows())
                .extracting(row -> row.rank() + ":" + row.number())
                .containsExactly("1:101", "1:102", "3:103", "0:104");
    }

    @Test
    void a_proctor_is_shown_the_station_and_what_is_still_to_be_seen() {
        Yard yard = Yard.open(new TestPlan().make());
        Walk walk = new Walk(yard, 101, "proctor1").at(10).release();
        assertThat(post(yard).canGiveStart()).isTrue();
        yard.ok("proctor1", new Act.GiveStart(101));
        assertThat(post(yard).canGiveStart()).isFalse();
        assertThat(post(yard).signalPendingSinceMicros()).isEqualTo(10 * SECOND);
        yard.after(0.2).edge("u1/9", 1);
        assertThat(post(yard).station().started()).isTrue();
        assertThat(post(yard).station().finishJudged()).isTrue();
        assertThat(post(yard).station().finishArmed()).isFalse();
        walk.after(3).tap("walk", "cap");
        assertThat(post(yard).station().finishArmed()).isTrue();
        assertThat(post(yard).station().checkpoints().get(0).seen()).isEqualTo(1);
        yard.ok("proctor1", new Act.Call(101, "walk", "rough", false, ""));
        assertThat(post(yard).station().criteria())
                .extracting(c -> c.id() + c.warnings() + c.faults())
                .contains("rough10");
        yard.ok("proctor1", new Act.HoldCandidate(101, Reason.OTHER, ""));
        assertThat(post(yard).phase()).isEqualTo("held");
    }

    @Test
    void a_free_proctor_is_shown_nobody_and_one_with_paper_work_the_finished_one() {
        Yard yard = Yard.open(new TestPlan().make());
        assertThat(post(yard)).isNull();
        Walk walk = new Walk(yard, 101, "proctor1").at(10).wholeCourse();
        assertThat(post(yard).splits()).hasSize(6);
        assertThat(post(yard).result()).isEmpty();
        walk.confirmAll();
        assertThat(post(yard).result()).isEqualTo("passed");
        yard.ok("proctor1", new Act.Tell(101));
        assertThat(post(yard)).isNull();
    }

    @Test
    void a_proctor_who_handed_over_sees_no_more_of_the_candidate() {
        Yard yard = Yard.open(new TestPlan().make());
        new Walk(yard, 101, "proctor1").at(10).release();
        yard.ok("coordinator1", new Act.HandOver(101, "proctor2"));
        assertThat(post(yard)).isNull();
        assertThat(yard.engine().post(yard.view(), "proctor2").candidate().number()).isEqualTo(101);
    }

    @Test
    void the_wall_clock_follows_gateway_time_at_the_epochs_speed() {
        Yard fast = Yard.begun(new TestPlan().make(), 10);
        long before = fast.engine().control(fast.view()).head().wallMicros();
        fast.at(50);
        long after = fast.engine().control(fast.view()).head().wallMicros();
        assertThat(after - before).isEqualTo(5 * SECOND);
    }

    private static PostFrame.Candidate post(Yard yard) {
        return yard.engine().post(yard.view(), "proctor1").candidate();
    }

    private static BoardFrame board(Yard yard) {
        return yard.engine().board(yard.view());
    }

    private static LeaderboardFrame leaderboard(Yard yard) {
        return yard.engine().leaderboard(yard.view());
    }
}
