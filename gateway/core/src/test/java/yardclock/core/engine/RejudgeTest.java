package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.course.GuardLimit;
import yardclock.core.course.GuardTimes;
import yardclock.core.course.Station;
import yardclock.core.course.Trigger;
import yardclock.core.course.TriggerSense;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Reason;
import yardclock.core.ruling.Refusal;
import yardclock.core.ruling.Rejudgement;
import yardclock.core.run.Rejudged;
import yardclock.core.run.SplitLabel;
import yardclock.core.run.SplitState;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;

/**
 * What other guards would have found of a past stretch. The values are this project's own test
 * course; what the guards would have found is taken from a second yard that had them from the
 * beginning.
 */
class RejudgeTest {
    private static final long SECOND = 1_000_000;

    private final Yard yard = Yard.open(new TestPlan().make());

    private static GuardTimes lockout(long micros) {
        return new GuardTimes(micros, 0, 0, 0, 0, 0, 0, 0);
    }

    private static GuardTimes clearFor(long micros) {
        return new GuardTimes(0, 0, micros, 0, 0, 0, 0, 0);
    }

    private static GuardTimes stoodFor(long micros) {
        return new GuardTimes(0, 0, 0, micros, 0, 0, 0, 0);
    }

    /** Two presses 2 s apart are one within the plan's lock-out of 3 s, and two within 1 s. */
    @Test
    void another_lock_out_finds_the_split_that_it_would_have_made() {
        laps(yard, 101, 5, 2, 3.5);
        Rejudged found = ask("laps", "finish", lockout(SECOND));
        assertThat(found.judged()).isEqualTo(1);
        assertThat(found.unchanged()).isZero();
        assertThat(found.silent()).isEmpty();
        assertThat(found.version()).isEqualTo("1+0");
        Rejudged.Line line = found.changed().get(0);
        assertThat(List.of(line.number(), line.run())).containsExactly(101, 1);
        assertThat(line.before().splitMicros()).isEqualTo(10_400_000);
        assertThat(line.standsMicros()).isEqualTo(10_400_000);
        assertThat(line.after().startMicros()).isEqualTo(line.before().startMicros());

        Yard other = Yard.open(new TestPlan().make());
        other.at(1).ok("technician1", adjusting("laps", "finish", lockout(SECOND)));
        laps(other, 101, 5, 2, 3.5);
        assertThat(line.after().splitMicros())
                .isEqualTo(other.split(101, "laps").splitMicros())
                .isEqualTo(6_900_000);
        assertThat(line.after().label()).isEqualTo(SplitLabel.CLEAN);
    }

    @Test
    void a_start_that_other_guards_do_not_find_is_said_to_be_missing() {
        new Walk(yard, 101, "proctor1").at(10).release().station("walk").stations(1, 2);
        Rejudged.Line line = ask("drag", "start", stoodFor(2 * SECOND)).changed().get(0);
        assertThat(line.before().label()).isEqualTo(SplitLabel.CLEAN);
        assertThat(line.after().label()).isEqualTo(SplitLabel.LOOK);
        assertThat(line.after().why().en()).isEqualTo("the start was not seen");
        assertThat(line.after().startMicros()).isEqualTo(-1);
        assertThat(line.after().splitMicros()).isEqualTo(-1);
    }

    @Test
    void a_checkpoint_that_other_guards_do_not_find_makes_a_split_one_to_look_at() {
        new Walk(yard, 101, "proctor1").at(10).release().station("walk").stations(1, 2);
        GuardTimes longer = new GuardTimes(0, 0, 0, 0, 900_000, 0, 0, 0);
        Rejudged.Line line = ask("drag", "post", longer).changed().get(0);
        assertThat(line.after().splitMicros()).isEqualTo(line.before().splitMicros());
        assertThat(line.after().why().en()).isEqualTo("not seen: post");
        assertThat(ask("drag", "post", new GuardTimes(0, 0, 0, 0, 300_000, 0, 0, 0)).unchanged())
                .as("a block of half a second is found all the same")
                .isEqualTo(1);
    }

    @Test
    void asking_changes_nothing() {
        new Walk(yard, 101, "proctor1").at(10).wholeCourse();
        String digest = yard.engine().digest();
        var results = yard.engine().results();
        var bench = yard.engine().bench(yard.view());
        int facts = yard.facts().size();
        assertThat(ask("laps", "finish", lockout(60 * SECOND)).judged()).isEqualTo(1);
        assertThat(ask("drag", "finish", clearFor(100_000)).judged()).isEqualTo(1);
        assertThat(ask("drag", "start", stoodFor(2 * SECOND)).changed()).hasSize(1);
        assertThat(yard.engine().digest()).isEqualTo(digest);
        assertThat(yard.engine().results()).isEqualTo(results);
        assertThat(yard.engine().bench(yard.view())).isEqualTo(bench);
        assertThat(yard.facts()).hasSize(facts);
    }

    @Test
    void what_was_ruled_stands_beside_what_the_guards_find() {
        laps(yard, 101, 5, 2, 3.5);
        yard.ok("proctor1", new Act.HandTime(101, "laps", 12 * SECOND, Reason.OTHER, "by watch"));
        Rejudged.Line line = ask("laps", "finish", lockout(SECOND)).changed().get(0);
        assertThat(line.state()).isEqualTo(SplitState.BY_HAND);
        assertThat(line.standsMicros()).isEqualTo(12 * SECOND);
        assertThat(line.before().splitMicros()).isEqualTo(10_400_000);
        assertThat(line.after().splitMicros()).isEqualTo(6_900_000);
        assertThat(yard.split(101, "laps").splitMicros()).isEqualTo(12 * SECOND);
    }

    @Test
    void each_turn_is_compared_with_the_version_that_judged_it() {
        laps(yard, 101, 5, 2, 3.5);
        yard.after(1).ok("technician1", adjusting("laps", "finish", lockout(SECOND)));
        yard.edge("u7/1", 0);
        TestPlan.stations().forEach(new Walk(yard, 101, "proctor1")::reset);
        laps(yard, 102, 5, 2, 3.5);
        Rejudged back = ask("laps", "finish", lockout(3 * SECOND));
        assertThat(back.version()).isEqualTo("1+1");
        assertThat(back.unchanged()).as("101, judged by the plan's own").isEqualTo(1);
        assertThat(back.changed()).hasSize(1);
        assertThat(back.changed().get(0).number()).isEqualTo(102);
        assertThat(back.changed().get(0).version()).isEqualTo("1+1");
        assertThat(back.changed().get(0).after().splitMicros()).isEqualTo(10_400_000);
    }

    @Test
    void of_a_turn_under_way_nothing_is_said() {
        toLaps(yard, 101);
        assertSilent(ask("laps", "finish", lockout(SECOND)), Rejudged.Why.UNDER_WAY);
    }

    @Test
    void of_a_turn_that_ended_before_its_time_nothing_is_said() {
        toLaps(yard, 101);
        yard.after(1).ok("proctor1", new Act.Withdraw(101, "a cramp"));
        assertSilent(ask("laps", "finish", lockout(SECOND)), Rejudged.Why.ENDED);
    }

    @Test
    void where_the_station_was_ready_again_too_soon_for_the_guards_nothing_is_said() {
        Walk walk = new Walk(yard, 101, "proctor1").at(10).release().station("walk");
        walk.stations(1, 2);
        assertSilent(ask("drag", "finish", clearFor(20 * SECOND)), Rejudged.Why.NOT_OVER);
        yard.after(25).exchange("u2");
        assertThat(ask("drag", "finish", clearFor(20 * SECOND)).unchanged()).isEqualTo(1);
        walk.reset("drag");
        assertSilent(ask("drag", "finish", clearFor(30 * SECOND)), Rejudged.Why.NOT_OVER);
    }

    @Test
    void turns_of_long_ago_are_judged_too_unless_an_edge_of_theirs_came_when_nobody_took_it() {
        Yard busy = Yard.openFor(new TestPlan().firstMovement().releaseEvery(1).make(), 18);
        Input.Edge late = null;
        for (int number = 101; number <= 118; number++) {
            late = dragged(busy, number, late);
        }
        var question = question("drag", "finish", clearFor(3 * SECOND));
        Rejudged found = busy.engine().rejudge(question).found();
        assertThat(List.of(found.judged(), found.unchanged())).containsExactly(18, 18);
        busy.take(late);
        Rejudged then = busy.engine().rejudge(question).found();
        assertThat(then.unchanged()).isEqualTo(17);
        assertThat(then.silent())
                .containsExactly(new Rejudged.Silent(101, 1, Rejudged.Why.CAME_TOO_LATE));
    }

    /** Through the first station and out; the first one's last edge is held back. */
    private static Input.Edge dragged(Yard busy, int number, Input.Edge late) {
        busy.after(30).ok("coordinator1", new Act.Release(number, "proctor1"));
        busy.after(2).edge("u2/1", 1);
        busy.after(1).edge("u2/1", 0);
        busy.after(5).edge("u2/2", 1);
        busy.after(0.5).edge("u2/2", 0);
        busy.after(4).edge("u2/3", 1);
        busy.after(1).edge("u2/3", 0);
        Input.Edge heldBack = busy.after(1.8).happens("u2/3", 1);
        busy.after(8).exchange("u2");
        busy.ok("proctor1", new Act.Confirm(number, "drag"));
        busy.ok("proctor1", new Act.Withdraw(number, ""));
        busy.ok("crew1", new Act.StationReady("drag"));
        return late == null ? heldBack : late;
    }

    @Test
    void only_what_is_there_and_possible_can_be_asked_for() {
        assertThat(refusal("moat", "finish", lockout(0))).isEqualTo(Refusal.UNKNOWN_STATION);
        assertThat(refusal("laps", "nook", lockout(0))).isEqualTo(Refusal.UNKNOWN_POINT);
        assertThat(refusal("laps", "finish", lockout(61 * SECOND)))
                .isEqualTo(Refusal.GUARDS_IMPOSSIBLE);
        assertThat(refusal("laps", "finish", clearFor(SECOND)))
                .as("that would be another rule")
                .isEqualTo(Refusal.GUARDS_IMPOSSIBLE);
        assertThat(refusal("laps", "finish", lockout(0))).isNull();
        assertThat(new Engine().rejudge(question("laps", "finish", lockout(0))).refusal())
                .isEqualTo(Refusal.NO_PLAN);
    }

    /** Each guard at its utmost, one after the other, so that most lines are told. */
    @Test
    void what_the_guards_of_then_find_is_what_the_live_judge_found() {
        int told = 0;
        for (long seed = 1; seed <= 3; seed++) {
            Yard rattling = rattlingDay(seed);
            for (Station station : rattling.engine().plan().orElseThrow().stations()) {
                for (String point : station.points()) {
                    Trigger trigger = station.trigger(point).orElseThrow();
                    for (GuardTimes utmost : utmost(trigger)) {
                        var question = question(station.id(), point, utmost);
                        told += asStanding(rattling.engine().rejudge(question).found(), seed);
                    }
                }
            }
        }
        assertThat(told).as("lines that were compared").isGreaterThan(150);
    }

    private static int asStanding(Rejudged found, long seed) {
        for (Rejudged.Line line : found.changed()) {
            assertThat(line.before().splitMicros())
                    .as("seed %d, %s %s: %s", seed, found.station(), found.point(), line)
                    .isEqualTo(line.standsMicros());
        }
        return found.changed().size();
    }

    private static Yard rattlingDay(long seed) {
        Day day = new Day();
        for (int i = 0; i < 4; i++) {
            day.candidate(101 + i, "proctor" + (i + 1), 10 + 25.0 * i);
        }
        Yard yard = Yard.begun(new TestPlan().releaseEvery(25).make(), 1);
        yard.compareClocks(new Random(seed));
        day.rattle(seed)
                .arrivals(() -> Yard.LINK_MICROS)
                .forEach(a -> yard.deliver(a.micros(), a.input()));
        return yard;
    }

    /** The trigger's guards with one of them as long as it may be, where that means anything. */
    private static List<GuardTimes> utmost(Trigger trigger) {
        List<GuardTimes> all = new ArrayList<>();
        for (GuardLimit one : GuardLimit.values()) {
            long[] micros =
                    Arrays.stream(GuardLimit.values())
                            .mapToLong(g -> g == one ? g.max() : g.of(trigger.guards().times()))
                            .toArray();
            GuardTimes times = times(micros);
            if (TriggerSense.admits(trigger, times)) {
                all.add(times);
            }
        }
        return all;
    }

    private static GuardTimes times(long[] at) {
        return new GuardTimes(at[0], at[1], at[2], at[3], at[4], at[5], at[6], at[7]);
    }

    /** Whatever a yard does: asking is not noticed, and the guards in force change nothing. */
    @Test
    void the_guards_in_force_would_change_nothing() {
        int judged = 0;
        for (long seed = 1; seed <= 8; seed++) {
            Yard any = Yard.open(new TestPlan().releaseEvery(5).make());
            RandomYard random = new RandomYard(seed, seed % 4 == 0, any);
            for (int step = 0; step < 400; step++) {
                random.step();
            }
            String digest = any.engine().digest();
            for (Station station : any.engine().plan().orElseThrow().stations()) {
                for (String point : station.points()) {
                    judged += judgedAsBefore(any, station, point, seed);
                }
            }
            assertThat(any.engine().digest()).as("seed %d", seed).isEqualTo(digest);
        }
        assertThat(judged).as("the chaos leaves something to judge").isGreaterThan(100);
    }

    private static int judgedAsBefore(Yard any, Station station, String point, long seed) {
        Trigger planned = station.trigger(point).orElseThrow();
        var question = question(station.id(), point, planned.guards().times());
        Rejudgement answer = any.engine().rejudge(question);
        if (answer.refusal() != null) {
            return 0;
        }
        for (Rejudged.Line line : answer.found().changed()) {
            assertThat(line.version())
                    .as("seed %d, %s %s: %s", seed, station.id(), point, line)
                    .isNotEqualTo("1+0");
        }
        return answer.found().judged();
    }

    private static Rejudgement.Question question(String station, String point, GuardTimes times) {
        return new Rejudgement.Question(station, point, times);
    }

    private Rejudged ask(String station, String point, GuardTimes times) {
        Rejudgement answer = yard.engine().rejudge(question(station, point, times));
        assertThat(answer.refusal()).isNull();
        return answer.found();
    }

    private Refusal refusal(String station, String point, GuardTimes times) {
        return yard.engine().rejudge(question(station, point, times)).refusal();
    }

    private static void assertSilent(Rejudged found, Rejudged.Why why) {
        assertThat(found.judged()).isZero();
        assertThat(found.changed()).isEmpty();
        assertThat(found.silent()).containsExactly(new Rejudged.Silent(101, 1, why));
    }

    private static Act adjusting(String station, String point, GuardTimes times) {
        return new Act.AdjustTrigger(
                station,
                point,
                0,
                times.lockoutMicros(),
                times.staysForMicros(),
                times.clearForMicros(),
                times.stoodForMicros(),
                times.minBlockMicros(),
                times.mergeGapMicros(),
                times.withinMicros(),
                times.spacingMicros(),
                "to try");
    }

    private static void toLaps(Yard yard, int number) {
        String proctor = "proctor" + (number - 100);
        new Walk(yard, number, proctor).after(60).release().station("walk").stations(1, 5);
        yard.after(5).edge("u7/1", 1);
    }

    private static void laps(Yard yard, int number, double... apart) {
        toLaps(yard, number);
        for (double seconds : apart) {
            yard.after(seconds - 0.1).edge("u7/2", 1);
            yard.after(0.1).edge("u7/2", 0);
        }
        yard.after(5);
    }
}
