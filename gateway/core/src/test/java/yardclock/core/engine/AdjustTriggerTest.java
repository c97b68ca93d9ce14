package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import yardclock.core.board.TriggerView;
import yardclock.core.fact.FactKind;
import yardclock.core.result.Result;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Refusal;
import yardclock.core.run.Attempt;
import yardclock.core.run.PointPassage;
import yardclock.core.run.Turn;

import java.util.List;

/**
 * A trigger's guards adjusted on the bench: what is admitted, and what judges before and after. The
 * values are this project's own test course; nothing here has an outside source.
 */
class AdjustTriggerTest {
    private static final long SECOND = 1_000_000;
    private static final Act ONE_SECOND_LOCKOUT = lockoutOfLaps(0, SECOND);

    private final Yard yard = Yard.open(new TestPlan().make());

    private static Act lockoutOfLaps(int adjustment, long micros) {
        return new Act.AdjustTrigger(
                "laps", "finish", adjustment, micros, 0, 0, 0, 0, 0, 0, 0, "the pad was tightened");
    }

    /** lockout, staysFor, clearFor, stoodFor, minBlock, mergeGap, within, spacing in ms. */
    @ParameterizedTest
    @CsvSource({
        "laps,  finish, 0, 1000 0 0 0 0 0 0 0,         ",
        "laps,  finish, 0, 60000 0 0 0 0 0 0 600000,   ",
        "laps,  start,  0, 0 0 0 0 5000 0 0 0,         ",
        "drag,  start,  0, 0 0 0 10000 0 0 0 0,        ",
        "drag,  post,   0, 0 0 0 0 50 0 0 0,           ",
        "drag,  finish, 0, 0 0 2000 0 0 0 0 0,         ",
        "fan,   start,  0, 0 0 0 0 0 0 10 0,           ",
        "poles, poles,  0, 0 0 0 0 0 0 0 0,            ",
        "moat,  finish, 0, 0 0 0 0 0 0 0 0,            UNKNOWN_STATION",
        "laps,  nook,   0, 0 0 0 0 0 0 0 0,            UNKNOWN_POINT",
        "laps,  finish, 1, 1000 0 0 0 0 0 0 0,         OUT_OF_DATE",
        "laps,  finish, 0, 60001 0 0 0 0 0 0 0,        GUARDS_IMPOSSIBLE",
        "laps,  finish, 0, -1 0 0 0 0 0 0 0,           GUARDS_IMPOSSIBLE",
        "laps,  finish, 0, 0 0 0 0 5001 0 0 0,         GUARDS_IMPOSSIBLE",
        "laps,  finish, 0, 0 0 0 0 0 5001 0 0,         GUARDS_IMPOSSIBLE",
        "laps,  finish, 0, 0 0 0 0 0 0 0 600001,       GUARDS_IMPOSSIBLE",
        "laps,  finish, 0, 0 500 0 0 0 0 0 0,          GUARDS_IMPOSSIBLE",
        "laps,  finish, 0, 0 0 0 0 0 0 500 0,          GUARDS_IMPOSSIBLE",
        "drag,  start,  0, 0 0 0 0 0 0 0 0,            GUARDS_IMPOSSIBLE",
        "drag,  start,  0, 0 0 0 10001 0 0 0 0,        GUARDS_IMPOSSIBLE",
        "drag,  finish, 0, 0 0 30001 0 0 0 0 0,        GUARDS_IMPOSSIBLE",
        "drag,  finish, 0, 0 500 1500 0 0 0 0 0,       GUARDS_IMPOSSIBLE",
        "fan,   start,  0, 0 0 0 0 0 0 9 0,            GUARDS_IMPOSSIBLE",
        "fan,   start,  0, 0 0 0 0 0 0 0 0,            GUARDS_IMPOSSIBLE",
        "fan,   start,  0, 0 0 0 0 0 0 30001 0,        GUARDS_IMPOSSIBLE",
        "walk,  start,  0, 500 0 0 0 0 0 0 0,          GUARDS_IMPOSSIBLE",
        "walk,  finish, 0, 500 0 0 0 0 0 0 0,          GUARDS_IMPOSSIBLE",
        "poles, poles,  0, 0 0 500 0 0 0 0 0,          GUARDS_IMPOSSIBLE"
    })
    void only_values_within_the_limits_that_mean_something_are_taken(
            String station, String point, int adjustment, String millis, Refusal refusal) {
        long[] at = List.of(millis.split(" ")).stream().mapToLong(Long::parseLong).toArray();
        Act act =
                new Act.AdjustTrigger(
                        station,
                        point,
                        adjustment,
                        at[0] * 1_000,
                        at[1] * 1_000,
                        at[2] * 1_000,
                        at[3] * 1_000,
                        at[4] * 1_000,
                        at[5] * 1_000,
                        at[6] * 1_000,
                        at[7] * 1_000,
                        "wind");
        assertThat(yard.at(10).rule("technician1", act).refusal()).isEqualTo(refusal);
    }

    @Test
    void the_reason_is_given_in_words() {
        Act silent = new Act.AdjustTrigger("laps", "finish", 0, 1, 0, 0, 0, 0, 0, 0, 0, "  ");
        assertThat(refusal(silent)).isEqualTo(Refusal.NO_WORDS);
        Act wordy =
                new Act.AdjustTrigger("laps", "finish", 0, 1, 0, 0, 0, 0, 0, 0, 0, "x".repeat(501));
        assertThat(refusal(wordy)).isEqualTo(Refusal.WORDS_TOO_LONG);
    }

    @Test
    void nobody_adjusts_a_trigger_under_the_feet_of_somebody() {
        Walk walk = new Walk(yard, 101, "proctor1").at(10).release();
        assertThat(refusal(ONE_SECOND_LOCKOUT)).as("somewhere else on the course").isNull();
        walk.station("walk").stations(1, 5);
        assertThat(refusal(lockoutOfLaps(1, SECOND))).isEqualTo(Refusal.STATION_TAKEN);
        yard.after(5).edge("u7/1", 1);
        assertThat(refusal(lockoutOfLaps(1, SECOND))).isEqualTo(Refusal.STATION_TAKEN);
        presses(5, 5);
        assertThat(refusal(lockoutOfLaps(1, SECOND))).as("through").isNull();
    }

    /** Two presses 2 s apart are one within a lock-out of 3 s, and two within one of 1 s. */
    @Test
    void passages_keep_the_version_that_judged_them_and_later_ones_have_the_next() {
        toLaps(101, "proctor1");
        presses(5, 2, 3.5);
        assertThat(splitMicros(101)).isEqualTo(10_400_000);
        Result before = yard.result(101);
        yard.after(1).ok("technician1", ONE_SECOND_LOCKOUT);
        assertThat(version("laps", "finish")).isEqualTo("1+1");
        assertThat(version("laps", "start")).isEqualTo("1+0");
        assertThat(yard.result(101)).isEqualTo(before);
        allReady();
        toLaps(102, "proctor2");
        presses(5, 2, 3.5);
        assertThat(splitMicros(102)).isEqualTo(6_900_000);
        assertThat(yard.result(101)).as("nothing was judged again").isEqualTo(before);
        assertThat(rules(101)).containsOnly("1+0");
        assertThat(rules(102)).containsOnly("1+1");
        assertThat(yard.facts(FactKind.TRIGGER_ADJUSTED)).hasSize(1);
        replaysTheSame();
    }

    @Test
    void an_edge_from_before_that_comes_after_is_no_start_by_the_new_rule() {
        yard.at(10);
        Input.Edge late = yard.happens("u2/1", 1);
        yard.after(1);
        Input.Edge gone = yard.happens("u2/1", 0);
        yard.after(1).ok("technician1", stoodFor(100_000));
        yard.take(late);
        yard.take(gone);
        assertThat(yard.facts(FactKind.PASSAGE_UNASSIGNED)).isEmpty();
        replaysTheSame();
    }

    @Test
    void who_stood_on_a_mat_before_still_starts_by_leaving_it() {
        Yard first = Yard.open(new TestPlan().firstMovement().make());
        first.at(10).edge("u2/1", 1);
        first.after(1).ok("technician1", stoodFor(500_000));
        first.ok("coordinator1", new Act.Release(101, "proctor1"));
        first.after(1).edge("u2/1", 0);
        assertThat(first.facts(FactKind.STATION_IN_USE)).hasSize(1);
    }

    @Test
    void what_nobody_was_expected_for_is_not_counted_again_by_the_next_version() {
        yard.at(10).edge("u2/1", 1);
        yard.after(1).edge("u2/1", 0);
        assertThat(yard.facts(FactKind.PASSAGE_UNASSIGNED)).hasSize(1);
        yard.after(1).ok("technician1", stoodFor(100_000));
        yard.after(1).edge("u2/1", 1);
        yard.after(0.2).edge("u2/1", 0);
        assertThat(yard.facts(FactKind.PASSAGE_UNASSIGNED)).hasSize(2);
        replaysTheSame();
    }

    @Test
    void an_adjustment_during_the_reset_is_for_the_next_turn() {
        toLaps(101, "proctor1");
        presses(5, 2, 3.5);
        yard.ok("technician1", ONE_SECOND_LOCKOUT);
        yard.ok("technician1", lockoutOfLaps(1, 2 * SECOND));
        assertThat(version("laps", "finish")).isEqualTo("1+2");
        assertThat(rules(101)).containsOnly("1+0");
        assertThat(refusal(ONE_SECOND_LOCKOUT)).isEqualTo(Refusal.OUT_OF_DATE);
        replaysTheSame();
    }

    private static Act stoodFor(long micros) {
        return new Act.AdjustTrigger(
                "drag", "start", 0, 0, 0, 0, micros, 0, 0, 0, 0, "people are quicker than that");
    }

    private Refusal refusal(Act act) {
        return yard.rule("technician1", act).refusal();
    }

    private void toLaps(int number, String proctor) {
        new Walk(yard, number, proctor).after(60).release().station("walk").stations(1, 5);
        yard.after(5).edge("u7/1", 1);
    }

    private void presses(double... apart) {
        for (double seconds : apart) {
            yard.after(seconds - 0.1).edge("u7/2", 1);
            yard.after(0.1).edge("u7/2", 0);
        }
    }

    private void allReady() {
        Walk crew = new Walk(yard, 101, "proctor1");
        yard.edge("u7/1", 0);
        TestPlan.stations().forEach(crew::reset);
    }

    private long splitMicros(int number) {
        return yard.split(number, "laps").splitMicros();
    }

    private String version(String station, String point) {
        return yard.engine().bench(yard.view()).triggers().stream()
                .filter(t -> t.station().equals(station) && t.point().equals(point))
                .map(TriggerView::version)
                .findFirst()
                .orElseThrow();
    }

    private List<String> rules(int number) {
        Attempt attempt =
                yard.engine().attempts().stream()
                        .filter(a -> a.number() == number)
                        .findFirst()
                        .orElseThrow();
        Turn turn = attempt.turnAt("laps").orElseThrow();
        return PointPassage.of(turn, yard.engine().plan().orElseThrow()).stream()
                .filter(p -> p.point().equals("finish"))
                .map(p -> p.passage().rule().toString())
                .distinct()
                .toList();
    }

    private void replaysTheSame() {
        Engine again = new Engine();
        yard.journal().forEach(again::apply);
        assertThat(again.digest()).isEqualTo(yard.engine().digest());
        assertThat(again.results()).isEqualTo(yard.engine().results());
    }
}
