package yardclock.core.engine;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

import yardclock.core.account.Cause;
import yardclock.core.board.ProofView;
import yardclock.core.fact.FactKind;
import yardclock.core.passage.EdgeKey;
import yardclock.core.proof.ProofAsked;
import yardclock.core.proof.ProofPoint.State;
import yardclock.core.proof.ProofWhy;
import yardclock.core.ruling.Act;
import yardclock.core.ruling.Refusal;

import java.util.function.Function;

/**
 * Somebody walks the course before a candidate does: what it shows, who signs it, what it holds.
 */
class ProofRunTest {
    private final Yard yard = Yard.open(new TestPlan().make()).at(10);
    private final ProofWalk proof = new ProofWalk(yard);

    private Refusal release() {
        return yard.rule("coordinator1", new Act.Release(101, "proctor1")).refusal();
    }

    private void heard() {
        for (int unit = 1; unit <= 7; unit++) {
            yard.health("u" + unit);
        }
    }

    @Test
    void a_clean_walk_shows_every_point_seen_within_the_hand_interval() {
        proof.begin("").wholeCourse();
        assertThat(proof.view().points()).hasSize(17);
        assertThat(proof.view().points())
                .allSatisfy(p -> assertThat(p.state()).as(p.toString()).isEqualTo(State.SEEN));
        assertThat(proof.point("drag", "post").minusHandMicros()).isBetween(-120_000L, -100_000L);
        assertThat(proof.point("walk", "finish").minusHandMicros()).isNull();
        assertThat(proof.point("poles", "poles").automatic()).isEqualTo(2);
    }

    @Test
    void every_edge_of_it_is_the_proof_runs_and_none_is_in_the_tray() {
        proof.begin("").wholeCourse().sign("");
        Function<EdgeKey, java.util.Optional<Cause>> causes = yard.engine().edgeCauses();
        int edges = 0;
        for (Entry entry : yard.journal()) {
            if (entry.input() instanceof Input.Edge edge) {
                EdgeKey key = new EdgeKey(edge.unit(), edge.boot(), edge.seq());
                assertThat(causes.apply(key)).as(key.toString()).contains(Cause.PROOF_RUN);
                edges++;
            }
        }
        assertThat(edges).isGreaterThan(20);
        assertThat(yard.engine().control(yard.view()).tray()).isEmpty();
        assertThat(yard.facts(FactKind.PASSAGE_UNASSIGNED)).isEmpty();
        assertThat(yard.engine().results()).allMatch(result -> result.splits().isEmpty());
    }

    @Test
    void a_sensor_that_says_nothing_leaves_its_point_missing() {
        proof.begin("");
        yard.after(1);
        proof.tap("bag", "start");
        assertThat(proof.point("bag", "start").state()).isEqualTo(State.MISSING);
        assertThat(proof.point("bag", "start").pressed()).isEqualTo(1);
        assertThat(proof.point("bag", "start").automatic()).isZero();
        yard.edge("u7/1", 1);
        assertThat(proof.point("laps", "start").state())
                .as("seen, and not pressed")
                .isEqualTo(State.MISSING);
        assertThat(proof.point("laps", "start").automatic()).isEqualTo(1);
    }

    @Test
    void a_press_outside_the_hand_interval_is_apart_and_its_edge_within() {
        // Stamps of this yard are known to some milliseconds on each side.
        proof.begin("bag").late(0.24).station("bag");
        assertThat(proof.point("bag", "start").state()).isEqualTo(State.SEEN);
        yard.ok("technician1", new Act.EndProofRun(""));
        proof.begin("bag").late(0.29).station("bag");
        assertThat(proof.point("bag", "start").state()).isEqualTo(State.APART);
        assertThat(proof.point("bag", "start").minusHandMicros()).isBetween(-300_000L, -280_000L);
    }

    @Test
    void a_start_that_is_pressed_again_begins_the_station_anew() {
        proof.begin("bag").late(0.6).station("bag");
        assertThat(proof.point("bag", "start").state()).isEqualTo(State.APART);
        yard.after(20);
        proof.late(0.1).station("bag");
        assertThat(proof.view().points()).allMatch(p -> p.state() == State.SEEN);
    }

    @Test
    void nobody_is_released_while_it_runs_nor_before_one_where_the_plan_requires_it() {
        Yard strict = Yard.open(new TestPlan().proofRequired().make()).at(10);
        ProofWalk walk = new ProofWalk(strict);
        Act release = new Act.Release(101, "proctor1");
        assertThat(strict.rule("coordinator1", release).refusal())
                .isEqualTo(Refusal.PROOF_RUN_MISSING);
        walk.begin("");
        assertThat(strict.rule("coordinator1", release).refusal())
                .isEqualTo(Refusal.PROOF_RUN_UNDER_WAY);
        walk.wholeCourse().sign("");
        for (int unit = 1; unit <= 7; unit++) {
            strict.health("u" + unit);
        }
        strict.ok("coordinator1", release);
    }

    @Test
    void two_persons_on_two_devices_sign_it_and_the_second_closes_it() {
        proof.begin("").wholeCourse();
        yard.ok("technician1", new Act.SignProofRun(""));
        assertThat(proof.view().run().signedBy()).isEqualTo("P. technician1");
        assertThat(yard.rule("technician1", new Act.SignProofRun("")).refusal())
                .isEqualTo(Refusal.SIGNED_BY_YOU);
        assertThat(release()).isEqualTo(Refusal.PROOF_RUN_UNDER_WAY);
        yard.ok("proctor2", new Act.SignProofRun(""));
        ProofView.SignedView signed = proof.view().signed().get(0);
        assertThat(signed.seen()).isEqualTo(signed.points()).isEqualTo(17);
        assertThat(signed.first()).isEqualTo("P. technician1");
        assertThat(signed.second()).isEqualTo("P. proctor2");
        assertThat(signed.largestMicros()).isBetween(-240_000L, -100_000L);
        assertThat(proof.view().run()).isNull();
        assertThat(release()).isNull();
    }

    @Test
    void with_a_point_missing_it_is_signed_only_with_words() {
        proof.begin("bag");
        assertThat(yard.rule("technician1", new Act.SignProofRun(" ")).refusal())
                .isEqualTo(Refusal.NO_WORDS);
        proof.sign("seen by eye, unit on its way");
        assertThat(proof.view().signed().get(0).seen()).isZero();
        assertThat(proof.view().signed().get(0).words()).isEqualTo("seen by eye, unit on its way");
    }

    @Test
    void a_signature_counts_only_for_what_its_person_saw() {
        proof.begin("bag");
        yard.ok("technician1", new Act.SignProofRun("nothing seen"));
        proof.station("bag");
        assertThat(proof.view().run().signedBy()).isEmpty();
        yard.ok("technician1", new Act.SignProofRun(""));
        assertThat(proof.view().signed()).as("the first signature, again").isEmpty();
        yard.ok("coordinator1", new Act.SignProofRun(""));
        assertThat(proof.view().signed()).hasSize(1);
    }

    @Test
    void it_begins_only_with_nobody_in_the_way() {
        Walk walk = new Walk(yard, 101, "proctor1").at(12).release();
        Act course = new Act.BeginProofRun("", ProofWhy.START_OF_DAY);
        Act station = new Act.BeginProofRun("walk", ProofWhy.AFTER_REPAIR);
        assertThat(yard.rule("technician1", course).refusal())
                .isEqualTo(Refusal.PROOF_RUN_NOT_CLEAR);
        assertThat(yard.rule("technician1", station).refusal())
                .isEqualTo(Refusal.PROOF_RUN_NOT_CLEAR);
        walk.station("walk");
        assertThat(yard.rule("technician1", course).refusal())
                .isEqualTo(Refusal.PROOF_RUN_NOT_CLEAR);
        yard.ok("technician1", station);
    }

    @Test
    void a_station_behind_a_candidate_is_proven_and_the_candidate_is_timed_on() {
        Walk walk = new Walk(yard, 101, "proctor1").at(12).release();
        walk.station("walk").after(5).station("drag").after(5);
        proof.begin("drag").station("drag");
        walk.station("poles");
        assertThat(yard.split(101, "poles").splitMicros()).isBetween(9_990_000L, 10_010_000L);
        assertThat(yard.split(101, "drag").splitMicros()).isBetween(9_990_000L, 10_010_000L);
        assertThat(proof.view().points()).allMatch(p -> p.state() == State.SEEN);
        proof.sign("");
        walk.reset("drag");
        assertThat(yard.engine().control(yard.view()).tray()).isEmpty();
    }

    @Test
    void an_edge_that_comes_after_its_end_is_the_proof_runs_all_the_same() {
        proof.begin("laps");
        Input.Edge late = yard.happens("u7/1", 1);
        yard.after(1).ok("technician1", new Act.EndProofRun("rain"));
        yard.after(1).take(late);
        EdgeKey key = new EdgeKey(late.unit(), late.boot(), late.seq());
        assertThat(yard.engine().edgeCauses().apply(key)).contains(Cause.PROOF_RUN);
        assertThat(yard.facts(FactKind.PASSAGE_UNASSIGNED)).isEmpty();
    }

    @Test
    void after_it_a_candidate_is_timed_as_ever() {
        proof.begin("").wholeCourse().sign("");
        yard.after(5).edge("u3/2", 0);
        yard.edge("u3/3", 0);
        yard.after(5);
        new Walk(yard, 101, "proctor1").wholeCourse();
        assertThat(yard.result(101).splits()).hasSize(6);
        assertThat(yard.split(101, "poles").splitMicros()).isBetween(9_990_000L, 10_010_000L);
    }

    @Test
    void a_repair_asks_for_the_stations_own_proof_by_words() {
        heard();
        proof.begin("").wholeCourse();
        heard();
        proof.sign("");
        assertThat(proof.view().asked()).isEmpty();
        yard.unit("u4").reboot(Math.round(yard.now() * 1e6));
        yard.health("u4");
        assertThat(proof.view().asked())
                .containsExactly(new ProofAsked("bag", ProofAsked.Cause.UNIT));
        assertThat(proof.view().missing()).as("advice only").isFalse();
        proof.begin("bag");
        yard.exchange("u4");
        proof.station("bag").sign("");
        assertThat(proof.view().asked()).isEmpty();
        new Walk(yard, 101, "proctor1").at(yard.now() + 5).release();
        yard.ok("proctor1", new Act.EquipmentFault(101, "fan", "the blade sticks"));
        assertThat(proof.view().asked())
                .containsExactly(new ProofAsked("fan", ProofAsked.Cause.FAULT));
    }

    @Test
    void where_the_plan_requires_it_a_repair_holds_releases_until_its_station_is_proven() {
        Yard strict = Yard.open(new TestPlan().proofRequired().make()).at(10);
        strict.health("u4");
        ProofWalk walk = new ProofWalk(strict);
        walk.begin("").wholeCourse().sign("");
        strict.edge("u3/2", 0);
        strict.edge("u3/3", 0);
        strict.unit("u4").reboot(Math.round(strict.now() * 1e6));
        strict.health("u4");
        Act release = new Act.Release(101, "proctor1");
        assertThat(strict.rule("coordinator1", release).refusal())
                .isEqualTo(Refusal.PROOF_RUN_MISSING);
        walk.begin("bag");
        strict.exchange("u4");
        walk.station("bag").sign("");
        strict.ok("coordinator1", release);
    }

    @Test
    void a_broken_clock_of_the_gateway_ends_it() {
        proof.begin("").station("walk");
        yard.loseGateway().after(30);
        yard.replaceBoard("m2", 5_000_000);
        assertThat(proof.view().run()).isNull();
        assertThat(yard.facts(FactKind.PROOF_RUN_ENDED)).hasSize(1);
        assertThat(proof.view().signed()).isEmpty();
    }

    @Test
    void the_same_journal_gives_the_same_state() {
        proof.begin("").wholeCourse().sign("");
        Engine again = new Engine();
        yard.journal().forEach(again::apply);
        assertThat(again.digest()).isEqualTo(yard.engine().digest());
    }
}
