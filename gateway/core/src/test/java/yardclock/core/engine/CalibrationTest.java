package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.board.BenchFrame;
import yardclock.core.board.CalibrationView;
import yardclock.core.fact.Fact;
import yardclock.core.fact.FactKind;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Refusal;

import java.util.List;
import java.util.function.Consumer;

/** Two units compared at the bench by trips of both at once, and what becomes of it. */
class CalibrationTest {
    private static final long SEED = 11;
    private final CalibrationBench bench = CalibrationBench.open(SEED);
    private final Yard yard = bench.yard();

    @Test
    void lopsided_paths_make_one_instant_two_until_they_are_calibrated() {
        assertThat(apart()).isBetween(-2_400L, -1_600L);
        bench.calibrated();
        assertThat(apart()).isBetween(-400L, 400L);
    }

    /** By how much u7's stamp of one instant lies after u3's. */
    private long apart() {
        yard.after(3);
        yard.edge("u3/1", 1);
        yard.edge("u7/1", 1);
        List<BenchFrame.EdgeView> newest = yard.engine().bench(yard.view()).edges();
        long difference = newest.get(0).micros() - newest.get(1).micros();
        yard.after(1);
        yard.edge("u3/1", 0);
        yard.edge("u7/1", 0);
        return difference;
    }

    @Test
    void the_bench_lists_every_pair_and_says_which_are_rejected() {
        bench.begin().trips(7).trip(0.05).trips(9).trip(0.02).trips(6);
        CalibrationView.SittingView sitting = bench.view().sitting();
        assertThat(sitting.reference()).isEqualTo("u3/1");
        assertThat(sitting.other()).isEqualTo("u7/1");
        assertThat(sitting.pairs()).hasSize(24);
        assertThat(sitting.referenceTrips()).isEqualTo(24);
        assertThat(sitting.otherTrips()).isEqualTo(24);
        assertThat(sitting.pairs().get(7).standing()).isEqualTo("impossible");
        assertThat(sitting.pairs().get(17).standing()).isIn("impossible", "outlier");
        assertThat(sitting.kept()).isBetween(20, 22);
        assertThat(sitting.medianMicros()).isBetween(-2_300L, -1_700L);
        assertThat(sitting.objection()).isEmpty();
    }

    @Test
    void what_stands_says_what_it_corrects_and_how_wide_a_declared_stamp_is() {
        bench.calibrated();
        CalibrationView view = bench.view();
        assertThat(view.sitting()).isNull();
        assertThat(view.ended()).isEmpty();
        CalibrationView.Standing standing = view.standing().get(0);
        assertThat(standing.root()).isEqualTo("u3");
        assertThat(standing.correctionMicros()).isEqualTo(-standing.medianMicros());
        assertThat(standing.declaredMicros()).isBetween(600L, 3_000L);
        assertThat(standing.rejected()).isGreaterThanOrEqualTo(2);
        assertThat(yard.facts(FactKind.CALIBRATED)).hasSize(1);
    }

    @Test
    void limits_stay_where_they_were() {
        List<BenchFrame.EdgeView> before = stampsWith(false);
        List<BenchFrame.EdgeView> after = stampsWith(true);
        assertThat(after)
                .extracting(BenchFrame.EdgeView::widthMicros)
                .isEqualTo(before.stream().map(BenchFrame.EdgeView::widthMicros).toList());
        assertThat(after.get(0).micros() - before.get(0).micros()).isBetween(1_700L, 2_300L);
    }

    private static List<BenchFrame.EdgeView> stampsWith(boolean accept) {
        CalibrationBench twin = CalibrationBench.open(SEED);
        twin.begin().trips(22);
        assertThat(twin.end(accept).isAccepted()).isTrue();
        twin.yard().after(30);
        twin.yard().edge("u7/1", 1);
        return twin.yard().engine().bench(twin.yard().view()).edges().subList(0, 1);
    }

    @Test
    void earlier_edges_are_not_moved() {
        bench.begin().trips(18);
        yard.edge("u7/2", 1);
        long before = newest("u7", 2).micros();
        assertThat(bench.trips(4).end(true).isAccepted()).isTrue();
        assertThat(newest("u7", 2).micros()).isEqualTo(before);
    }

    private BenchFrame.EdgeView newest(String unit, int sensor) {
        return yard.engine().bench(yard.view()).edges().stream()
                .filter(e -> e.unit().equals(unit) && e.sensor() == sensor)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void accepting_is_refused_with_the_reason() {
        assertThat(bench.end(true).refusal()).isEqualTo(Refusal.NOT_CALIBRATING);
        bench.begin().trips(19);
        assertThat(bench.view().sitting().objection()).isEqualTo("too-few");
        assertThat(bench.end(true).refusal()).isEqualTo(Refusal.TOO_FEW_TRIPS);
        bench.trips(3);
        long old = bench.view().revision() - 1;
        assertThat(yard.rule("technician1", new Act.EndCalibration(true), old).refusal())
                .isEqualTo(Refusal.OUT_OF_DATE);
        assertThat(bench.end(true).isAccepted()).isTrue();
    }

    @Test
    void a_unit_that_restarts_meanwhile_spoils_it() {
        bench.begin().trips(10);
        yard.unit("u7").reboot(Math.round(yard.now() * 1e6));
        bench.health("u7").trips(22);
        assertThat(bench.view().sitting().objection()).isEqualTo("boot");
        assertThat(bench.view().sitting().changedUnit()).isEqualTo("u7");
        assertThat(bench.end(true).refusal()).isEqualTo(Refusal.UNIT_CHANGED);
        assertThat(bench.end(false).isAccepted()).isTrue();
        assertThat(bench.view().sitting()).isNull();
    }

    @Test
    void it_ends_when_a_unit_restarts() {
        bench.calibrated();
        endsBy("u3", "boot", unit -> unit.reboot(Math.round(yard.now() * 1e6)));
    }

    @Test
    void it_ends_when_a_unit_goes_to_another_access_point() {
        yard.unit("u7").roamsTo("02:00:00:00:00:01");
        bench.health("u7").calibrated();
        endsBy("u7", "access-point", unit -> unit.roamsTo("02:00:00:00:00:02"));
    }

    @Test
    void it_ends_when_a_unit_speaks_another_contract() {
        bench.calibrated();
        endsBy("u7", "contract", unit -> unit.speaks(2));
    }

    private void endsBy(String unit, String why, Consumer<TestUnit> change) {
        bench.health("u3").health("u7");
        assertThat(bench.view().standing()).hasSize(1);
        change.accept(yard.unit(unit));
        bench.health(unit);
        CalibrationView view = bench.view();
        assertThat(view.standing()).isEmpty();
        assertThat(view.ended()).hasSize(1);
        assertThat(view.ended().get(0).why()).isEqualTo(why);
        assertThat(view.ended().get(0).unit()).isEqualTo(unit);
        assertThat(yard.facts(FactKind.CALIBRATION_ENDED))
                .extracting(Fact::station)
                .containsExactly(unit);
        assertThat(yard.facts(FactKind.ALARM))
                .extracting(Fact::words)
                .anyMatch(words -> words.startsWith("Calibration of u3, u7 ended."));
        bench.compare(60);
        assertThat(apart()).as("uncorrected again").isBetween(-2_500L, -1_500L);
    }

    @Test
    void against_a_pin_of_the_gateway_the_whole_error_of_the_path_goes() {
        assertThat(bench.withPin().tripped("u6", "u7").end(true).isAccepted()).isTrue();
        assertThat(errorOf("u7")).isBetween(-400L, 400L);
    }

    /** By how much a stamp of the unit lies after the true instant. */
    private long errorOf(String unit) {
        yard.after(3);
        long truth = Math.round(yard.now() * 1e6);
        yard.edge(unit + "/1", 1);
        yard.after(1);
        yard.edge(unit + "/1", 0);
        List<BenchFrame.EdgeView> edges = yard.engine().bench(yard.view()).edges();
        return edges.get(1).micros() - truth;
    }

    @Test
    void corrections_add_up_along_a_chain_and_a_link_that_breaks_makes_a_new_root() {
        bench.withPin().tripped("u3", "u7");
        assertThat(bench.end(true).isAccepted()).isTrue();
        bench.health("u6").health("u3").tripped("u6", "u3");
        assertThat(bench.end(true).isAccepted()).isTrue();
        assertThat(bench.view().standing())
                .extracting(CalibrationView.Standing::root)
                .containsOnly("u6");
        assertThat(errorOf("u7")).isBetween(-500L, 500L);
        yard.unit("u6").reboot(Math.round(yard.now() * 1e6));
        bench.health("u6");
        assertThat(bench.view().standing())
                .extracting(CalibrationView.Standing::root)
                .containsExactly("u3");
        assertThat(apart()).isBetween(-400L, 400L);
    }

    @Test
    void an_access_point_that_is_not_said_ends_nothing() {
        yard.unit("u7").roamsTo("02:00:00:00:00:01");
        bench.health("u7").calibrated();
        yard.unit("u7").roamsTo("");
        bench.health("u7");
        assertThat(bench.view().standing()).hasSize(1);
    }

    @Test
    void a_new_one_takes_the_place_of_the_old() {
        bench.calibrated().calibrated();
        assertThat(bench.view().standing()).hasSize(1);
        assertThat(bench.view().ended())
                .extracting(CalibrationView.Ended::why)
                .containsExactly("replaced");
        assertThat(bench.view().standing().get(0).correctionMicros()).isBetween(1_700L, 2_300L);
        assertThat(apart()).isBetween(-400L, 400L);
    }

    @Test
    void units_in_a_chain_are_measured_against_its_first() {
        bench.calibrated();
        Act ring = new Act.BeginCalibration("u7", 1, "u3", 1);
        assertThat(yard.rule("technician1", ring).refusal())
                .isEqualTo(Refusal.CALIBRATED_IN_A_RING);
        assertThat(bench.view().standing())
                .extracting(CalibrationView.Standing::root)
                .containsExactly("u3");
    }

    @Test
    void an_interrupted_time_line_ends_all() {
        bench.calibrated().begin();
        yard.take(new Input.Epoch("m2", "p2", 1_700_000_500_000_000L, 0, 1, false, "1"));
        assertThat(bench.view().sitting()).isNull();
        assertThat(bench.view().standing()).isEmpty();
        assertThat(bench.view().ended().get(0).why()).isEqualTo("time-line");
    }

    @Test
    void the_journal_replayed_comes_to_the_same_state() {
        bench.calibrated();
        yard.unit("u7").reboot(Math.round(yard.now() * 1e6));
        bench.health("u7");
        Engine again = new Engine();
        yard.journal().forEach(again::apply);
        assertThat(again.digest()).isEqualTo(yard.engine().digest());
    }
}
