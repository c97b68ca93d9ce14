package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.account.Cause;
import yardclock.core.board.PostFrame;
import yardclock.core.passage.EdgeKey;
import yardclock.core.result.Result;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Verdict;

import java.util.stream.Stream;

/** A person says whose a passage is, and of what: it counts there and nowhere else. */
class AssignTest {
    private final Yard yard = Yard.open(new TestPlan().make());
    private final Walk walk = new Walk(yard, 101, "proctor1").at(10);

    @Test
    void a_start_out_of_the_tray_starts_the_turn_until_it_is_taken_back() {
        walk.release();
        Input.Edge early = leavesMatBeforeAnybodyIsExpected();
        long byTap = startOfDrag();
        assertThat(end(early)).isEqualTo(Cause.NOBODYS);
        assertThat(yard.engine().post(yard.view(), "proctor1").tray())
                .singleElement()
                .satisfies(lies -> assertThat(lies.seq()).isEqualTo(early.seq()))
                .satisfies(lies -> assertThat(lies.points().get(0).id()).isEqualTo("start"));

        yard.ok("proctor1", assign(early, 101, "start"));
        long entry = yard.journal().size();
        assertThat(startOfDrag()).isLessThan(byTap - 3_000_000);
        assertThat(end(early)).isEqualTo(Cause.MARK);
        assertThat(yard.engine().post(yard.view(), "proctor1").tray()).isEmpty();

        yard.ok("proctor1", new Act.WithdrawRuling(101, "drag", entry, "not his"));
        assertThat(startOfDrag()).isEqualTo(byTap);
        assertThat(end(early)).isEqualTo(Cause.NOBODYS);
        assertThat(yard.engine().post(yard.view(), "proctor1").tray()).hasSize(1);
        assertReplaysToTheSame();
    }

    /** A start while the station before is not over yet; later the proctor taps one by hand. */
    private Input.Edge leavesMatBeforeAnybodyIsExpected() {
        walk.horn();
        yard.after(3).edge("u2/1", 1);
        yard.after(1);
        Input.Edge early = happens("u2/1", 0);
        walk.tap("walk", "cap");
        walk.press("u1/3");
        yard.after(1);
        walk.tap("drag", "start");
        yard.after(4).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        return early;
    }

    @Test
    void what_was_assigned_is_never_clean_and_says_why() {
        finishesWithoutItsLine();
        Input.Edge line = passesLine();
        yard.ok("coordinator1", assign(line, 101, "finish"));
        PostFrame.Split drag = throughTheCourse();
        assertThat(drag.label()).isEqualTo("look");
        assertThat(drag.why().en()).contains("assigned by a ruling");
        assertThat(drag.onEvidence()).singleElement().extracting("act").isEqualTo("assign");
        assertThat(drag.splitMicros()).isEqualTo(yard.split(101, "drag").splitMicros());
    }

    /** The line is silent: the proctor's tap stands in, ten seconds later. */
    private void finishesWithoutItsLine() {
        walk.release().station("walk").after(5).leaveMat("u2/1");
        yard.after(5).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        yard.after(4);
        walk.tap("drag", "finish");
        yard.after(20);
        assertThat(yard.split(101, "drag").state()).isEqualTo("ambiguous");
    }

    private Input.Edge passesLine() {
        yard.after(1).edge("u2/3", 1);
        yard.after(1);
        Input.Edge edge = happens("u2/3", 0);
        yard.after(3);
        return edge;
    }

    private PostFrame.Split throughTheCourse() {
        walk.stations(2, 6);
        yard.after(20);
        return yard.engine().post(yard.view(), "proctor1").candidate().splits().stream()
                .filter(split -> split.station().equals("drag"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_passage_of_another_candidates_turn_goes_over_and_comes_back() {
        finishesWithoutItsLine();
        long byTap = yard.split(101, "drag").splitMicros();
        Walk next = new Walk(yard, 102, "proctor2");
        walk.reset("walk").reset("drag").after(60);
        next.release().station("walk").after(5).leaveMat("u2/1");
        yard.after(3).edge("u2/2", 1);
        yard.after(0.5).edge("u2/2", 0);
        Input.Edge line = passesLine();
        Result.SplitLine theirs = yard.split(102, "drag");
        assertThat(theirs.state()).isEqualTo("proposed");
        Act over = assign(line, 101, "finish");

        assertThat(yard.rule("proctor1", over).refusal()).isEqualTo(Refusal.NOT_YOUR_CANDIDATE);
        yard.ok("coordinator1", over);
        long entry = yard.journal().size();
        assertThat(yard.split(101, "drag").splitMicros()).isGreaterThan(byTap + 60_000_000);
        assertThat(yard.split(102, "drag").state()).isEqualTo("incomplete");

        yard.ok("coordinator1", new Act.WithdrawRuling(101, "drag", entry, ""));
        assertThat(yard.split(101, "drag").splitMicros()).isEqualTo(byTap);
        assertThat(yard.split(102, "drag").splitMicros()).isEqualTo(theirs.splitMicros());
        assertReplaysToTheSame();
    }

    @Test
    void a_checkpoint_is_seen_by_what_was_assigned_to_it() {
        walk.release().station("walk").after(5).leaveMat("u2/1");
        yard.after(5).edge("u2/2", 1);
        yard.after(0.05);
        Input.Edge brief = happens("u2/2", 0);
        yard.after(3.5).edge("u2/3", 1);
        yard.after(1).edge("u2/3", 0);
        yard.after(3);
        assertThat(yard.split(101, "drag").why()).contains("not seen");
        yard.ok("proctor1", assign(brief, 101, "post"));
        assertThat(yard.split(101, "drag").why()).contains("assigned");
    }

    @Test
    void a_finish_before_the_start_is_not_plausible_and_a_ruled_split_is_let_be() {
        walk.release().station("walk").after(5).station("drag");
        Input.Edge finish = lastEdge();
        Verdict asStart = yard.rule("proctor1", assign(finish, 101, "start"));
        assertThat(asStart.refusal()).isEqualTo(Refusal.PASSAGE_ELSEWHERE);
        Input.Edge mat = edgeOf("u2", 1, 0);
        yard.ok("proctor1", new Act.Confirm(101, "drag"));
        assertThat(yard.rule("proctor1", assign(mat, 101, "start")).refusal())
                .isEqualTo(Refusal.ALREADY_RULED);
        assertThat(yard.rule("proctor1", assign(unknown(), 101, "start")).refusal())
                .isEqualTo(Refusal.NO_SUCH_EDGE);
    }

    private static Input.Edge unknown() {
        return new Input.Edge("u2", "no-boot", 1, 1, 1, 1);
    }

    private Act assign(Input.Edge edge, int number, String point) {
        return new Act.Assign(
                edge.unit(), edge.boot(), edge.seq(), number, "drag", point, Reason.OTHER, "");
    }

    private long startOfDrag() {
        return yard.split(101, "drag").startMicros();
    }

    private Input.Edge happens(String sensor, int state) {
        yard.edge(sensor, state);
        return lastEdge();
    }

    private Input.Edge lastEdge() {
        return edges().reduce((first, second) -> second).orElseThrow();
    }

    private Input.Edge edgeOf(String unit, int sensor, int state) {
        return edges().filter(
                        e -> e.unit().equals(unit) && e.sensor() == sensor && e.state() == state)
                .findFirst()
                .orElseThrow();
    }

    private Stream<Input.Edge> edges() {
        return yard.journal().stream()
                .map(Entry::input)
                .filter(Input.Edge.class::isInstance)
                .map(Input.Edge.class::cast);
    }

    private Cause end(Input.Edge edge) {
        EdgeKey key = new EdgeKey(edge.unit(), edge.boot(), edge.seq());
        return yard.engine().edgeCauses().apply(key).orElseThrow();
    }

    private void assertReplaysToTheSame() {
        Engine again = new Engine();
        yard.journal().forEach(again::apply);
        assertThat(again.digest()).isEqualTo(yard.engine().digest());
    }
}
