package yardclock.sim.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.app.settings.DemoPlan;
import yardclock.core.course.Station;

import java.util.ArrayList;
import java.util.List;

/**
 * The candidates' model over many seeds. Expected figures: exam-day model of this project (spread
 * of the whole course 10–15 % of its mean, station times correlating about 0.5–0.6 within a
 * person); an assumption there, no outside source.
 */
class CandidateRunTest {
    private static final List<Station> COURSE = DemoPlan.plan().plan().stations();
    private static final int PEOPLE = 4_000;

    private static List<CandidateRun> people(long seed) {
        List<CandidateRun> people = new ArrayList<>();
        for (int number = 1; number <= PEOPLE; number++) {
            people.add(CandidateRun.draw(seed, number, COURSE));
        }
        return people;
    }

    @Test
    void the_same_seed_and_number_give_the_same_run_whoever_else_comes() {
        CandidateRun once = CandidateRun.draw(7, 12, COURSE);
        assertThat(CandidateRun.draw(7, 12, COURSE)).isEqualTo(once);
        assertThat(CandidateRun.draw(8, 12, COURSE)).isNotEqualTo(once);
        assertThat(CandidateRun.draw(7, 13, COURSE)).isNotEqualTo(once);
    }

    @Test
    void whole_course_times_spread_by_ten_to_fifteen_percent_of_their_mean() {
        for (long seed = 1; seed <= 3; seed++) {
            double[] times =
                    people(seed).stream().mapToDouble(CandidateRun::courseMicros).toArray();
            assertThat(deviation(times) / mean(times)).as("seed %d", seed).isBetween(0.10, 0.15);
        }
    }

    @Test
    void the_whole_course_is_skewed_to_the_slow_side() {
        double[] times = people(1).stream().mapToDouble(CandidateRun::courseMicros).toArray();
        double mean = mean(times);
        double deviation = deviation(times);
        double third = 0;
        for (double time : times) {
            third += Math.pow((time - mean) / deviation, 3);
        }
        assertThat(third / times.length).isPositive();
    }

    @Test
    void times_of_two_stations_correlate_within_a_person() {
        List<CandidateRun> people = people(1);
        double sum = 0;
        int pairs = 0;
        for (int i = 0; i < COURSE.size(); i++) {
            for (int j = i + 1; j < COURSE.size(); j++) {
                sum += correlation(logs(people, i), logs(people, j));
                pairs++;
            }
        }
        // 0.75² = 0.56 within one population; the two together lie somewhat higher.
        assertThat(sum / pairs).isBetween(0.5, 0.7);
    }

    @Test
    void a_few_in_a_hundred_meet_a_mishap() {
        List<CandidateRun> people = people(1);
        long withdrawals = count(people, Mishap.Kind.WITHDRAWAL);
        long faults = count(people, Mishap.Kind.FAULT);
        // 0.75 · 1 % + 0.25 · 2.5 % = 1.4 %, and 9 · (0.75 · 0.5 % + 0.25 · 0.8 %) = 5.2 %.
        assertThat(withdrawals / (double) PEOPLE).isBetween(0.008, 0.020);
        assertThat(faults / (double) PEOPLE).isBetween(0.038, 0.064);
    }

    @Test
    void most_pass_and_a_good_many_do_not() {
        long cutOff = DemoPlan.plan().plan().timing().cutOffMicros();
        long within = people(1).stream().filter(run -> run.courseMicros() <= cutOff).count();
        assertThat(within / (double) PEOPLE).isBetween(0.5, 0.85);
    }

    private static long count(List<CandidateRun> people, Mishap.Kind kind) {
        return people.stream().filter(run -> run.mishap().kind() == kind).count();
    }

    private static double[] logs(List<CandidateRun> people, int station) {
        return people.stream()
                .mapToDouble(run -> Math.log((double) run.scripts().get(station).finishMicros()))
                .toArray();
    }

    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        return sum / values.length;
    }

    private static double deviation(double[] values) {
        double mean = mean(values);
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        return Math.sqrt(squares / values.length);
    }

    private static double correlation(double[] a, double[] b) {
        double meanA = mean(a);
        double meanB = mean(b);
        double together = 0;
        for (int i = 0; i < a.length; i++) {
            together += (a[i] - meanA) * (b[i] - meanB);
        }
        return together / a.length / deviation(a) / deviation(b);
    }
}
