package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.board.CheckView;
import yardclock.core.board.Head.ReleaseHold;
import yardclock.core.board.WatchFrame;
import yardclock.core.course.Text;
import yardclock.core.readiness.Team;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Verdict;

import java.util.List;

/**
 * The start-of-day checklist: what it holds until it is signed, and what it never holds. The rules
 * are this project's design of the exam day; no outside source gives them.
 */
class ChecklistTest {
    private final Yard yard = Yard.open(new TestPlan().startOfDay().make()).at(10);

    @Test
    void nobody_is_released_before_every_item_is_signed_and_the_refusal_names_the_open_ones() {
        Verdict verdict = yard.rule("coordinator1", release(101));
        assertThat(verdict.refusal()).isEqualTo(Refusal.CHECKLIST_OPEN);
        assertThat(verdict.named())
                .extracting(Text::en)
                .containsExactly("Cooling is here", "Medical team is here");
        sign("medical");
        assertThat(yard.rule("coordinator1", release(101)).named())
                .extracting(Text::en)
                .containsExactly("Cooling is here");
        sign("cooling");
        yard.ok("coordinator1", release(101));
    }

    @Test
    void every_page_says_what_holds_and_the_safety_officers_who_signed_what_and_when() {
        yard.after(5).ok("safety2", new Act.ChecklistDone("cooling", " two tubs, ice "));
        WatchFrame watch = yard.engine().watch(yard.view());
        CheckView signed = watch.startOfDay().get(0);
        assertThat(signed.id()).isEqualTo("cooling");
        assertThat(signed.done()).isTrue();
        assertThat(signed.note()).isEqualTo("two tubs, ice");
        assertThat(signed.person()).isEqualTo("P. safety2");
        assertThat(signed.atMicros()).isEqualTo(watch.head().gatewayMicros());
        CheckView open = watch.startOfDay().get(1);
        assertThat(open.done()).isFalse();
        assertThat(open.person()).isEmpty();
        assertThat(open.atMicros()).isEqualTo(-1);
        assertThat(yard.engine().control(yard.view()).startOfDay()).isEqualTo(watch.startOfDay());
        assertThat(yard.engine().control(yard.view()).next().blockers())
                .containsExactly("checklist-open");
        assertThat(yard.engine().post(yard.view(), "proctor1").head().holds())
                .containsExactly(new ReleaseHold("checklist-open", ""));
        assertThat(yard.engine().board(yard.view()).toString())
                .contains("course-held")
                .doesNotContain("checklist")
                .doesNotContain("Cooling");
    }

    @Test
    void a_signature_taken_back_holds_the_next_release_and_leaves_those_alone_who_move() {
        sign("cooling");
        sign("medical");
        Walk walk = new Walk(yard, 101, "proctor1").at(20).release();
        yard.ok("coordinator1", new Act.ChecklistOpen("cooling", "the ice has melted"));
        walk.station("walk").reset("walk").after(60);
        assertThat(yard.result(101).splits()).hasSize(1);
        assertThat(yard.rule("coordinator1", release(102)).refusal())
                .isEqualTo(Refusal.CHECKLIST_OPEN);
        CheckView cooling = yard.engine().watch(yard.view()).startOfDay().get(0);
        assertThat(cooling.done()).isFalse();
        assertThat(cooling.note()).isEqualTo("the ice has melted");
        assertThat(cooling.person()).isEqualTo("P. coordinator1");
        sign("cooling");
        yard.ok("coordinator1", release(102));
    }

    @Test
    void who_takes_a_signature_back_says_why() {
        sign("cooling");
        assertThat(yard.rule("safety1", new Act.ChecklistOpen("cooling", " ")).refusal())
                .isEqualTo(Refusal.NO_WORDS);
        assertThat(yard.rule("safety1", new Act.ChecklistOpen("cooling", null)).refusal())
                .isEqualTo(Refusal.NO_WORDS);
        Act endless = new Act.ChecklistDone("medical", "x".repeat(501));
        assertThat(yard.rule("safety1", endless).refusal()).isEqualTo(Refusal.WORDS_TOO_LONG);
        yard.ok("safety1", new Act.ChecklistDone("medical", null));
    }

    @Test
    void an_open_list_never_stands_in_the_way_of_a_stop_a_hold_or_a_team_called_away() {
        yard.ok("coordinator1", new Act.HoldCourse(Reason.WEATHER, ""));
        assertThat(yard.rule("coordinator1", release(101)).refusal())
                .isEqualTo(Refusal.COURSE_HELD);
        yard.ok("coordinator1", new Act.ResumeCourse());
        yard.ok("crew1", new Act.StopAll(""));
        assertThat(yard.rule("coordinator1", release(101)).refusal()).isEqualTo(Refusal.STOPPED);
        yard.ok("safety1", new Act.Restart());
        yard.ok("coordinator1", new Act.ResumeCourse());
        yard.ok("safety1", new Act.TeamAway(Team.MEDICAL, ""));
        assertThat(yard.rule("coordinator1", release(101)).refusal())
                .isEqualTo(Refusal.CHECKLIST_OPEN);
        assertThat(yard.engine().watch(yard.view()).head().holds())
                .containsExactly(
                        new ReleaseHold("checklist-open", ""),
                        new ReleaseHold("team-away", "medical"));
    }

    @Test
    void a_plan_without_a_list_holds_nobody() {
        Yard plain = Yard.open(new TestPlan().make()).at(10);
        assertThat(plain.engine().watch(plain.view()).startOfDay()).isEmpty();
        plain.ok("coordinator1", release(101));
        assertThat(plain.rule("safety1", new Act.ChecklistDone("cooling", "")).refusal())
                .isEqualTo(Refusal.UNKNOWN_ITEM);
    }

    @Test
    void signatures_outlast_a_restart_and_a_replay_comes_to_the_same() {
        String before = yard.engine().digest();
        sign("cooling");
        assertThat(yard.engine().digest()).isNotEqualTo(before);
        yard.after(5).loseGateway().after(20).replaceBoard("m2", 20_000_000);
        assertThat(yard.rule("coordinator1", release(101)).named())
                .isEqualTo(List.of(new Text("Medical team is here", "Medical team is here")));
        Engine again = new Engine();
        yard.journal().forEach(again::apply);
        assertThat(again.digest()).isEqualTo(yard.engine().digest());
    }

    private void sign(String item) {
        yard.ok("safety1", new Act.ChecklistDone(item, ""));
    }

    private static Act release(int number) {
        return new Act.Release(number, "proctor" + (number - 100));
    }
}
