package yardclock.core.reading;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.course.Combination;
import yardclock.core.course.Contact;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.Guards;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.SensorRef;
import yardclock.core.course.Text;
import yardclock.core.course.Trigger;
import yardclock.core.engine.TestPlan;
import yardclock.core.ordering.Evidence;
import yardclock.core.passage.TimedEdge;
import yardclock.core.time.Stamp;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/** Times are in seconds; a tap comes 0.11 s late as the paper in exam-day.md has it. */
class PointSearchTest {
    private static final SensorRef MAT = new SensorRef("u2", 1);
    private static final SensorRef LINE = new SensorRef("u2", 3);
    private static final SensorRef BEYOND = new SensorRef("u2", 4);
    private static final SensorRef CONTACT = new SensorRef("u4", 1);
    private static final Crossed CROSSED = new Crossed(plan());
    private static final long SETTLE = 400_000;

    private final List<TimedEdge> edges = new ArrayList<>();

    @Test
    void of_two_crossings_the_tap_tells_whose_it_was() {
        cuts(10.0, 10.3).cuts(10.9, 11.4);
        PointReadings read = search(firstCut(), true, 10.11);
        assertThat(read.isClear()).isTrue();
        assertThat(read.best().edge().stamp().micros()).isEqualTo(10_000_000);
    }

    @Test
    void two_crossings_near_the_tap_are_a_choice_and_the_likelier_lag_goes_first() {
        cuts(9.85, 9.95).cuts(10.0, 10.3);
        PointReadings read = search(firstCut(), true, 10.11);
        assertThat(read.isClear()).isFalse();
        assertThat(read.ranked()).hasSize(2);
        assertThat(read.best().edge().stamp().micros()).isEqualTo(10_000_000);
    }

    @Test
    void without_a_tap_a_beam_that_others_cross_is_never_clear() {
        cuts(10.0, 10.3);
        PointReadings read = search(firstCut(), true, null);
        assertThat(read.isClear()).isFalse();
        assertThat(read.best().edge()).isNotNull();
        assertThat(read.ranked()).anyMatch(PointReading::isByTap);
    }

    @Test
    void a_tap_that_points_at_nothing_stands_before_a_crossing_far_from_it() {
        cuts(10.5, 10.9);
        PointReadings read = search(firstCut(), true, 10.11);
        assertThat(read.isClear()).isFalse();
        assertThat(read.best().isByTap()).isTrue();
        assertThat(read.isOpen()).isTrue();
    }

    @Test
    void the_heel_that_comes_down_once_more_is_no_second_reading() {
        stands(6.0, 10.0).stands(10.09, 10.2);
        PointReadings read = search(foot(), true, 10.11);
        assertThat(read.isClear()).isTrue();
        assertThat(read.best().edge().stamp().micros()).isEqualTo(10_000_000);
    }

    @Test
    void a_tap_before_a_foot_leaves_may_mean_a_foot_the_mat_missed() {
        stands(6.0, 10.2);
        PointReadings read = search(foot(), true, 10.11);
        assertThat(read.isClear()).isFalse();
        assertThat(read.best().edge()).as("the mat first").isNotNull();
        assertThat(read.ranked().get(1).isByTap()).isTrue();
    }

    @Test
    void a_tap_hardly_after_a_foot_left_lets_the_instant_lie_back_to_where_it_points() {
        stands(6.0, 10.07);
        PointReadings read = search(foot(), true, 10.11);
        assertThat(read.isClear()).isTrue();
        assertThat(read.best().chatter()).isEqualTo(new Chatter(260_000, 0));
    }

    @Test
    void another_in_the_beam_at_a_last_release_lets_the_instant_lie_back() {
        cuts(9.0, 10.1);
        PointReadings read = search(lastRelease(), true, 10.11);
        assertThat(read.isClear()).isTrue();
        assertThat(read.best().chatter()).isEqualTo(new Chatter(290_000, 20_000));
    }

    @Test
    void who_stands_by_on_the_mat_lets_the_instant_lie_back_to_where_the_tap_points() {
        stands(6.0, 10.0);
        assertThat(search(foot(), true, false, 10.13).best().chatter())
                .isEqualTo(new Chatter(20_000, 0));
        PointReadings read = search(foot(), true, true, 10.13);
        assertThat(read.isClear()).isTrue();
        assertThat(read.best().chatter()).isEqualTo(new Chatter(170_000, 0));
    }

    @Test
    void what_goes_ahead_of_the_candidate_is_too_short_to_count() {
        cuts(9.6, 10.7).cutsBeyond(9.90, 9.93).cutsBeyond(10.0, 10.8);
        PointReadings read = search(inward(), true, 10.11);
        assertThat(read.isClear()).isTrue();
        assertThat(read.best().edge().stamp().micros()).isEqualTo(10_000_000);
    }

    @Test
    void a_load_whose_release_was_missed_lets_the_instant_lie_on_to_where_the_tap_points() {
        cuts(9.6, 10.7).cutsBeyond(9.90, 10.8);
        PointReadings read = search(inward(), true, 10.07);
        assertThat(read.isClear()).isTrue();
        assertThat(read.best().chatter()).isEqualTo(new Chatter(20_000, 250_000));
    }

    @Test
    void a_missed_chatter_is_before_a_first_edge_and_after_the_beginning_of_a_stay() {
        assertThat(CROSSED.chatterOf(foot())).isEqualTo(new Chatter(20_000, 0));
        assertThat(CROSSED.chatterOf(stay())).isEqualTo(new Chatter(0, 20_000));
        assertThat(CROSSED.chatterOf(lastRelease())).isEqualTo(new Chatter(0, 20_000));
        Trigger horn = single(new SensorRef("u1", 9), 1, Guards.NONE);
        assertThat(CROSSED.chatterOf(horn)).isEqualTo(Chatter.NONE);
    }

    @Test
    void a_stay_that_a_knock_broke_reaches_back_over_the_break() {
        changes(CONTACT, 10.0, 1).changes(CONTACT, 10.119, 0).changes(CONTACT, 10.125, 1);
        PointReadings read = search(stay(), true, 10.158);
        assertThat(read.isClear()).isTrue();
        assertThat(read.best().edge().stamp().micros()).isEqualTo(10_125_000);
        assertThat(read.best().chatter()).isEqualTo(new Chatter(125_000, 20_000));
    }

    @Test
    void a_stay_after_a_true_opening_reaches_back_over_nothing() {
        changes(CONTACT, 10.0, 1).changes(CONTACT, 10.05, 0).changes(CONTACT, 10.125, 1);
        PointReadings read = search(stay(), true, 10.158);
        assertThat(read.best().chatter()).isEqualTo(new Chatter(0, 20_000));
    }

    @Test
    void a_stay_without_the_tap_that_should_be_there_may_be_a_rebound() {
        changes(CONTACT, 10.0, 1);
        assertThat(search(stay(), true, null).isClear()).isFalse();
        assertThat(search(stay(), false, null).isClear()).as("nobody taps here").isTrue();
        assertThat(search(stay(), true, 10.11).isClear()).isTrue();
    }

    @Test
    void a_rebound_whose_opening_was_missed_stands_behind_the_tap() {
        changes(CONTACT, 8.9, 1);
        PointReadings read = search(stay(), true, 10.11);
        assertThat(read.best().isByTap()).isTrue();
        assertThat(read.ranked().get(1).edge().stamp().micros()).isEqualTo(8_900_000);
    }

    @Test
    void a_knock_is_not_clear_without_a_tap() {
        changes(CONTACT, 10.0, 1).changes(CONTACT, 10.04, 0);
        assertThat(search(single(CONTACT, 1, Guards.NONE), true, null).isClear()).isFalse();
    }

    @Test
    void a_knock_before_the_act_is_a_second_reading_and_the_act_goes_first() {
        changes(CONTACT, 9.796, 1).changes(CONTACT, 9.844, 0).changes(CONTACT, 10.0, 1);
        PointReadings read = search(single(CONTACT, 1, Guards.NONE), true, 10.088);
        assertThat(read.isClear()).isFalse();
        assertThat(read.best().edge().stamp().micros()).isEqualTo(10_000_000);
        assertThat(read.ranked()).hasSize(2);
    }

    @Test
    void a_contact_that_chatters_and_stays_is_clear_without_a_tap() {
        changes(CONTACT, 10.0, 1).changes(CONTACT, 10.003, 0).changes(CONTACT, 10.006, 1);
        assertThat(search(single(CONTACT, 1, Guards.NONE), true, null).isClear()).isTrue();
    }

    @Test
    void the_order_in_which_edges_came_does_not_matter() {
        for (long seed = 0; seed < 200; seed++) {
            edges.clear();
            Random random = new Random(seed);
            double at = 5;
            for (int i = 0; i < 6; i++) {
                at += 0.05 + random.nextDouble();
                cuts(at, at + 0.02 + random.nextDouble() / 2);
                at += 0.6;
            }
            double tap = 5 + random.nextDouble() * 6;
            PointReadings read = search(firstCut(), true, tap);
            Collections.shuffle(edges, random);
            assertThat(search(firstCut(), true, tap)).as("seed " + seed).isEqualTo(read);
            boolean isOne = read.ranked().size() == 1 && read.best().edge() != null;
            assertThat(read.isClear()).as("seed " + seed).isEqualTo(isOne);
        }
    }

    private static ExamPlan plan() {
        ExamPlan course = new TestPlan().make();
        List<FieldUnit> units =
                List.of(
                        unit("u1", sensor(9, SensorKind.HORN)),
                        unit(
                                "u2",
                                sensor(1, SensorKind.MAT),
                                sensor(3, SensorKind.PHOTO_EYE),
                                sensor(4, SensorKind.PHOTO_EYE)),
                        unit("u4", sensor(1, SensorKind.CONTACT)));
        return new ExamPlan(course.name(), course.timing(), course.day(), course.stations(), units);
    }

    private static FieldUnit unit(String id, SensorPlan... sensors) {
        return new FieldUnit(id, new Text("here", "aquí"), List.of(sensors));
    }

    private static SensorPlan sensor(int number, SensorKind kind) {
        return new SensorPlan(number, kind, new Text("it", "ello"), 0, false, false, 0);
    }

    private PointReadings search(Trigger trigger, boolean isTapping, Double tap) {
        return search(trigger, isTapping, false, tap);
    }

    private PointReadings search(
            Trigger trigger, boolean isTapping, boolean isCrowded, Double tap) {
        Evidence evidence = new Evidence();
        edges.forEach(evidence::add);
        Stamp press = tap == null ? null : Stamp.exactly(micros(tap));
        return new PointSearch(trigger, CROSSED, SETTLE, isTapping, isCrowded)
                .search(evidence.inOrder(), 0, press);
    }

    private static Trigger firstCut() {
        return single(LINE, 1, Guards.NONE);
    }

    private static Trigger inward() {
        List<Contact> contacts = List.of(new Contact(LINE, 1), new Contact(BEYOND, 1));
        Guards guards = new Guards(0, 0, 0, 0, 90_000, 0, 2_000_000, 1, "");
        return new Trigger(Combination.DIRECTION, contacts, guards, new Text("so", "así"));
    }

    private static Trigger foot() {
        return single(MAT, 0, new Guards(0, 0, 0, 300_000, 0, 0, 0, 1, ""));
    }

    private static Trigger lastRelease() {
        return single(LINE, 0, new Guards(0, 0, 1_500_000, 0, 0, 0, 0, 1, ""));
    }

    private static Trigger stay() {
        return single(CONTACT, 1, new Guards(0, 300_000, 0, 0, 0, 0, 0, 1, ""));
    }

    private static Trigger single(SensorRef sensor, int state, Guards guards) {
        List<Contact> contacts = List.of(new Contact(sensor, state));
        return new Trigger(Combination.SINGLE, contacts, guards, new Text("so", "así"));
    }

    private PointSearchTest cuts(double from, double until) {
        return changes(LINE, from, 1).changes(LINE, until, 0);
    }

    private PointSearchTest cutsBeyond(double from, double until) {
        return changes(BEYOND, from, 1).changes(BEYOND, until, 0);
    }

    private PointSearchTest stands(double from, double until) {
        return changes(MAT, from, 1).changes(MAT, until, 0);
    }

    private PointSearchTest changes(SensorRef sensor, double at, int state) {
        long micros = micros(at);
        Stamp stamp = Stamp.exactly(micros);
        edges.add(new TimedEdge(sensor, state, stamp, 0, "b0", edges.size(), micros, micros, 0));
        return this;
    }

    private static long micros(double seconds) {
        return Math.round(seconds * 1_000_000);
    }
}
