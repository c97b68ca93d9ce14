package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

import yardclock.core.board.BoardFrame;
import yardclock.core.board.ControlFrame;
import yardclock.core.board.PostFrame;
import yardclock.core.course.ExamPlan;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.result.OutcomeKind;
import yardclock.core.result.Result;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;

/** Four candidates on the course at once, and everything that may be seen while they are. */
class ScriptedDayTest {
    private static final int CANDIDATES = 4;
    private static final long SECOND = 1_000_000;
    private static final ExamPlan PLAN = new TestPlan().releaseEvery(25).make();

    private static Day day() {
        Day day = new Day();
        for (int i = 0; i < CANDIDATES; i++) {
            day.candidate(101 + i, "proctor" + (i + 1), 10 + 25.0 * i);
        }
        return day;
    }

    private static Yard deliver(List<Day.Arrival> arrivals) {
        Yard yard = Yard.begun(PLAN, 1);
        arrivals.forEach(a -> yard.deliver(a.micros(), a.input()));
        yard.after(5);
        return yard;
    }

    @Test
    void everyone_gets_their_own_marks() {
        Day day = day();
        Yard yard = deliver(day.arrivals(() -> Yard.LINK_MICROS));
        for (int number = 101; number < 101 + CANDIDATES; number++) {
            for (int station = 0; station < 6; station++) {
                Result.SplitLine line = yard.split(number, TestPlan.stations().get(station));
                assertThat(line.state()).isEqualTo("confirmed");
                assertThat(line.startMicros())
                        .isEqualTo(Math.round(day.start(number, station) * SECOND));
                assertThat(line.finishMicros())
                        .isEqualTo(Math.round(day.finish(number, station) * SECOND));
            }
            assertThat(yard.result(number).officialMicros()).isEqualTo(95 * SECOND);
            assertThat(yard.result(number).outcome()).isEqualTo("passed");
            assertThat(yard.result(number).told()).isTrue();
        }
        assertThat(yard.facts(FactKind.PASSAGE_UNASSIGNED)).isEmpty();
        assertThat(yard.facts(FactKind.MARK_CHANGED)).isEmpty();
    }

    @Test
    void at_some_time_all_four_are_on_the_course() {
        Yard yard = Yard.begun(PLAN, 1);
        int most = 0;
        for (Day.Arrival arrival : day().arrivals(() -> Yard.LINK_MICROS)) {
            yard.deliver(arrival.micros(), arrival.input());
            most = Math.max(most, yard.engine().control(yard.view()).onCourse().size());
        }
        assertThat(most).isEqualTo(CANDIDATES);
    }

    @Test
    void with_clocks_that_run_apart_and_contacts_that_rattle_the_truth_is_in_every_interval() {
        for (long seed = 1; seed <= 10; seed++) {
            Day day = day().rattle(seed);
            Random random = new Random(seed);
            for (int unit = 1; unit <= 7; unit++) {
                day.unit("u" + unit).runsFastBy(random.nextInt(121) - 60L);
            }
            Yard yard = deliver(day.arrivals(() -> 2_000 + random.nextInt(200_000)));
            for (int number = 101; number < 101 + CANDIDATES; number++) {
                for (int station = 0; station < 6; station++) {
                    assertTrue(yard, day, number, station, seed);
                }
            }
        }
    }

    private static void assertTrue(Yard yard, Day day, int number, int station, long seed) {
        Result.SplitLine line = yard.split(number, TestPlan.stations().get(station));
        long truth =
                Math.round((day.finish(number, station) - day.start(number, station)) * SECOND);
        String what = number + " at " + line.station() + ", seed " + seed;
        assertThat(line.splitMicros()).as(what).isCloseTo(truth, within(10_000L));
        assertThat(truth).as(what).isBetween(line.lowerMicros(), line.upperMicros());
    }

    @Test
    void another_order_of_arrival_gives_the_same_marks() {
        List<Result> expected = deliver(day().arrivals(() -> Yard.LINK_MICROS)).engine().results();
        for (long seed = 1; seed <= 15; seed++) {
            Random random = new Random(seed);
            // Within the plan's settling time, so that no ruling comes before its evidence.
            Day day = day();
            List<Day.Arrival> arrivals = day.arrivals(() -> 1_000 + random.nextInt(380_000));
            Yard yard = deliver(arrivals);
            assertThat(marks(yard.engine().results()))
                    .as("seed %d", seed)
                    .isEqualTo(marks(expected));
        }
    }

    @Test
    void evidence_later_than_the_settling_time_gives_the_same_marks_while_nobody_ruled() {
        List<Day.Arrival> inTime = unruled(day().arrivals(() -> Yard.LINK_MICROS));
        List<Result> expected = deliver(inTime).engine().results();
        for (long seed = 1; seed <= 10; seed++) {
            Random random = new Random(seed);
            List<Day.Arrival> arrivals =
                    unruled(day().arrivals(() -> 1_000 + random.nextInt(950_000)));
            Yard yard = deliver(arrivals);
            yard.after(60);
            assertThat(marks(yard.engine().results()))
                    .as("seed %d", seed)
                    .isEqualTo(marks(expected));
        }
    }

    private static List<Day.Arrival> unruled(List<Day.Arrival> arrivals) {
        return arrivals.stream()
                .filter(a -> !a.input().toString().contains("act=Confirm"))
                .filter(a -> !a.input().toString().contains("act=Tell"))
                .toList();
    }

    private static List<String> marks(List<Result> results) {
        List<String> marks = new ArrayList<>();
        for (Result result : results) {
            for (Result.SplitLine line : result.splits()) {
                marks.add(
                        String.join(
                                " ",
                                result.number() + "",
                                line.station(),
                                line.state(),
                                line.startMicros() + "",
                                line.finishMicros() + "",
                                line.why()));
            }
        }
        return marks;
    }

    @Test
    void duplicates_anywhere_change_nothing_but_tallies() {
        List<Day.Arrival> plain = day().arrivals(() -> Yard.LINK_MICROS);
        for (long seed = 1; seed <= 5; seed++) {
            Random random = new Random(seed);
            List<Day.Arrival> seen = new ArrayList<>();
            Yard one = Yard.begun(PLAN, 1);
            Yard two = Yard.begun(PLAN, 1);
            int added = 0;
            for (Day.Arrival arrival : plain) {
                one.deliver(arrival.micros(), arrival.input());
                two.deliver(arrival.micros(), arrival.input());
                if (arrival.isEdge()) {
                    seen.add(arrival);
                }
                if (!seen.isEmpty() && random.nextInt(4) == 0) {
                    Day.Arrival again = seen.get(random.nextInt(seen.size()));
                    two.deliver(arrival.micros(), again.input());
                    added++;
                    if (added % 10 == 0) {
                        assertSamePicture(one, two, "seed " + seed + " at " + arrival.micros());
                    }
                }
            }
            long tally =
                    two.engine().bench(two.view()).units().stream()
                            .mapToLong(u -> u.duplicates())
                            .sum();
            assertThat(tally).as("seed %d", seed).isEqualTo(added);
            assertThat(two.engine().results()).isEqualTo(one.engine().results());
        }
    }

    private static void assertSamePicture(Yard one, Yard two, String where) {
        assertThat(picture(two)).as(where).isEqualTo(picture(one));
    }

    /** Every frame but the bench's, without entries' numbers and the links' own troubles. */
    private static String picture(Yard yard) {
        Engine engine = yard.engine();
        StringBuilder text = new StringBuilder();
        text.append(engine.control(yard.view())).append('\n');
        text.append(engine.crew(yard.view())).append('\n');
        text.append(engine.board(yard.view())).append('\n');
        text.append(engine.leaderboard(yard.view())).append('\n');
        for (int i = 1; i <= CANDIDATES; i++) {
            text.append(engine.post(yard.view(), "proctor" + i)).append('\n');
        }
        return text.toString()
                .replaceAll("frame=\\d+", "frame=?")
                .replaceAll("Ruled\\[entry=\\d+", "Ruled[entry=?")
                .replaceAll("trouble=[^,\\]]*", "trouble=?");
    }

    @Test
    void no_frame_shows_what_its_audience_must_not_see() {
        Yard yard = Yard.begun(PLAN, 1);
        for (Day.Arrival arrival : day().arrivals(() -> Yard.LINK_MICROS)) {
            yard.deliver(arrival.micros(), arrival.input());
            for (int i = 1; i <= CANDIDATES; i++) {
                check(yard.engine().post(yard.view(), "proctor" + i));
            }
            check(yard.engine().board(yard.view()));
            String crew = yard.engine().crew(yard.view()).toString();
            assertThat(crew).doesNotContain("official", "outcome", "split");
        }
    }

    private static void check(PostFrame frame) {
        PostFrame.Candidate candidate = frame.candidate();
        if (candidate == null) {
            return;
        }
        boolean isThrough =
                candidate.phase().equals("finished") || candidate.phase().equals("done");
        assertThat(candidate.splits().isEmpty()).isEqualTo(!isThrough);
        assertThat(candidate.station() == null).isEqualTo(isThrough);
        if (!candidate.phase().equals("done")) {
            assertThat(candidate.result()).isEmpty();
        }
        assertThat(frame.toString()).doesNotContain(Long.toString(TestPlan.CUT_OFF));
    }

    private static void check(BoardFrame frame) {
        assertThat(frame.lines())
                .extracting(BoardFrame.Line::status)
                .isSubsetOf("waiting", "called", "on-course", "course-done");
        assertThat(frame.times()).isEmpty();
        String text = frame.toString();
        for (OutcomeKind outcome : OutcomeKind.values()) {
            assertThat(text).doesNotContain(outcome.word());
        }
    }

    @Test
    void next_is_ready_exactly_when_a_release_would_be_accepted() {
        Yard yard = Yard.begun(PLAN, 1);
        int step = 0;
        int ready = 0;
        for (Day.Arrival arrival : day().arrivals(() -> Yard.LINK_MICROS)) {
            yard.deliver(arrival.micros(), arrival.input());
            if (step++ % 37 == 0) {
                ready += compareWithARelease(yard) ? 1 : 0;
            }
        }
        assertThat(ready).isPositive();
    }

    private static boolean compareWithARelease(Yard yard) {
        ControlFrame.Next next = yard.engine().control(yard.view()).next();
        Engine fork = new Engine();
        yard.journal().forEach(fork::apply);
        Entry last = yard.journal().get(yard.journal().size() - 1);
        String device = next.proctorDevice().isEmpty() ? "proctor1" : next.proctorDevice();
        Input.Ruling release =
                new Input.Ruling(
                        "try",
                        "coordinator1",
                        "",
                        0,
                        last.gatewayMicros(),
                        -1,
                        new yardclock.core.ruling.Act.Release(next.number(), device));
        var verdict =
                fork.apply(new Entry(last.number() + 1, last.gatewayMicros(), release)).verdict();
        assertThat(verdict.isAccepted()).as("%s: %s", next, verdict).isEqualTo(next.ready());
        if (!verdict.isAccepted()) {
            assertThat(next.blockers().get(0)).isEqualTo(verdict.refusal().code());
        }
        return next.ready();
    }

    @Test
    void facts_tell_the_day_in_order() {
        Yard yard = deliver(day().arrivals(() -> Yard.LINK_MICROS));
        List<Fact> released = yard.facts(FactKind.RELEASED);
        assertThat(released).extracting(Fact::number).containsExactly(101, 102, 103, 104);
        assertThat(yard.facts(FactKind.OUTCOME)).hasSize(CANDIDATES);
        assertThat(yard.facts(FactKind.SPLIT_CONFIRMED)).hasSize(6 * CANDIDATES);
        assertThat(yard.facts(FactKind.OFFICIAL_TIME))
                .extracting(Fact::valueMicros)
                .containsOnly(95 * SECOND);
        List<Long> times = yard.journal().stream().map(Entry::gatewayMicros).toList();
        assertThat(times).isSortedAccordingTo(Comparator.naturalOrder());
    }
}
