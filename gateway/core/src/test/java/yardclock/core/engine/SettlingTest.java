package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.result.Result;
import yardclock.core.ruling.Act;

import java.util.List;
import java.util.Random;

/**
 * Provisional stamps, final ones, and what a ruling keeps. The truth is the test's own: the yard
 * moves its time, and the units' counters are made from it.
 */
class SettlingTest {
    private static final long SECOND = 1_000_000;
    private static final long SEED = 20_261_125;

    private Random chance;
    private Yard yard;
    private Walk walk;
    private long startedMicros;

    @BeforeEach
    void compareClocksForTwoMinutes() {
        begin(new TestPlan());
    }

    /** A new day with two minutes of exchanges; the same chance each time. */
    private void begin(TestPlan plan) {
        chance = new Random(SEED);
        yard = Yard.begun(plan.firstMovement().make(), 1);
        walk = new Walk(yard, 101, "proctor1");
        yard.unit("u2").runsFastBy(31);
        yard.unit("u7").runsFastBy(-24);
        compareFor(120);
    }

    /** An exchange with every unit each five seconds, over links that are seldom quick. */
    private void compareFor(int seconds) {
        for (int done = 0; done < seconds; done += 5) {
            yard.after(5);
            for (int unit = 2; unit <= 7; unit++) {
                long sent = Math.round(yard.now() * SECOND) - 200_000;
                yard.take(yard.unit("u" + unit).exchange(sent, leg(), leg()));
            }
        }
    }

    private long leg() {
        return 1_500 + Math.round(-8_000 * Math.log(1 - chance.nextDouble()));
    }

    /** The whole course, clocks compared between stations; when the mat was left is the start. */
    private void wholeCourse() {
        walk.release();
        startedMicros = Math.round(yard.now() * SECOND) + SECOND;
        for (String station : List.of("drag", "poles", "bag", "fan", "laps")) {
            walk.station(station);
            compareFor(5);
        }
    }

    private long finishedMicros() {
        // The second press of the pad goes down 0.1 s before it is let go, and 5 s were compared.
        return Math.round((yard.now() - 5 - 0.1) * SECOND);
    }

    @Test
    void marks_get_a_final_stamp_once_the_clock_has_settled() {
        wholeCourse();
        long finished = finishedMicros();
        assertThat(yard.facts(FactKind.MARK_SETTLED)).isEmpty();
        assertThat(yard.result(101).settled()).isNull();
        compareFor(300);
        List<Fact> settled = yard.facts(FactKind.MARK_SETTLED);
        assertThat(settled)
                .extracting(f -> f.station() + " " + f.point())
                .contains("drag start", "drag finish", "drag post", "laps finish");
        assertThat(settled).doesNotHaveDuplicates();
        Result result = yard.result(101);
        assertThat(result.settled().micros()).isEqualTo(result.officialMicros());
        assertThat(finished - startedMicros)
                .as("seed %d", SEED)
                .isBetween(result.lowerMicros(), result.upperMicros());
    }

    @Test
    void both_stamps_contain_the_truth_and_the_provisional_one_stays_on_record() {
        wholeCourse();
        compareFor(300);
        Fact proposed = mark(FactKind.MARK_PROPOSED);
        Fact settled = mark(FactKind.MARK_SETTLED);
        assertThat(startedMicros)
                .as("seed %d", SEED)
                .isBetween(proposed.stamp().lowerMicros(), proposed.stamp().upperMicros())
                .isBetween(settled.stamp().lowerMicros(), settled.stamp().upperMicros());
        assertThat(settled.valueMicros())
                .isEqualTo(settled.stamp().micros() - proposed.stamp().micros());
    }

    private Fact mark(FactKind kind) {
        return yard.facts(kind).stream()
                .filter(f -> f.station().equals("drag") && f.point().equals("start"))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void a_ruling_keeps_the_value_that_was_seen() {
        wholeCourse();
        Result seen = yard.result(101);
        for (String station : List.of("drag", "poles", "bag", "fan", "laps")) {
            yard.ok("proctor1", new Act.Confirm(101, station));
        }
        compareFor(300);
        Result after = yard.result(101);
        assertThat(after.officialMicros()).isEqualTo(seen.officialMicros());
        assertThat(after.lowerMicros()).isEqualTo(seen.lowerMicros());
        assertThat(after.settled()).isNotNull();
        assertThat(after.settled().micros()).isNotEqualTo(seen.officialMicros());
        assertThat(yard.facts(FactKind.LATE_EVIDENCE)).isEmpty();
        assertThat(yard.facts(FactKind.ALARM)).isEmpty();
    }

    @Test
    void start_and_finish_on_one_clock_are_known_to_their_sensors_and_little_more() {
        wholeCourse();
        compareFor(300);
        Result.SplitLine drag = yard.split(101, "drag");
        long mats = drag.upperMicros() - drag.lowerMicros();
        Result.SplitLine bag = yard.split(101, "bag");
        // Two sensors of 2 ms that may chatter for 20 ms each, 0.8 ms of reading, and the rate over
        // ten seconds.
        assertThat(mats).as("drag: mat and beam on u2").isBetween(44_000L, 45_800L);
        long contacts = bag.upperMicros() - bag.lowerMicros();
        assertThat(contacts).as("bag: u4").isBetween(44_000L, 45_800L);
        Result result = yard.result(101);
        assertThat(result.upperMicros() - result.lowerMicros())
                .as("the course, from u2 to u7")
                .isGreaterThan(5_800);
    }

    @Test
    void the_parts_of_an_interval_add_up_to_its_width() {
        wholeCourse();
        yard.ok("proctor1", new Act.HandTime(101, "laps", 10 * SECOND, null, "pad"));
        Result result = yard.result(101);
        long sum =
                result.parts().clockMicros()
                        + result.parts().readingMicros()
                        + result.parts().responseMicros()
                        + result.parts().handMicros()
                        + result.parts().holdMicros();
        assertThat(sum).isEqualTo(result.upperMicros() - result.lowerMicros());
        assertThat(result.parts().handMicros()).as("a pair by one person").isEqualTo(400_000);
        assertThat(result.parts().responseMicros()).as("the mat of drag").isPositive();
    }

    @Test
    void a_time_by_stop_watch_is_worth_its_own_spread_and_no_clock() {
        wholeCourse();
        yard.ok("proctor1", new Act.HandTime(101, "drag", 9 * SECOND, null, "beam"));
        Result.SplitLine drag = yard.split(101, "drag");
        assertThat(drag.splitMicros()).isEqualTo(9 * SECOND);
        assertThat(drag.lowerMicros()).isEqualTo(9 * SECOND - 200_000);
        assertThat(drag.upperMicros()).isEqualTo(9 * SECOND + 200_000);
    }

    @Test
    void a_final_value_that_decides_otherwise_than_what_was_ruled_calls_a_person() {
        confirmAndSettle();
        Result open = yard.result(101);
        assertThat(yard.facts(FactKind.ALARM)).isEmpty();
        long between = open.settled().upperMicros();
        assertThat(between).as("seed %d", SEED).isLessThan(open.upperMicros());

        begin(new TestPlan().cutOff(between));
        confirmAndSettle();
        Result close = yard.result(101);
        assertThat(close.decision()).isEqualTo("undecided");
        assertThat(close.settled().decision()).isEqualTo("within");
        assertThat(yard.facts(FactKind.ALARM))
                .extracting(Fact::words)
                .containsOnlyOnce(
                        "The final clock values decide otherwise than what was ruled: to review.");
    }

    private void confirmAndSettle() {
        wholeCourse();
        for (String station : List.of("drag", "poles", "bag", "fan", "laps")) {
            yard.ok("proctor1", new Act.Confirm(101, station));
        }
        compareFor(300);
    }
}
