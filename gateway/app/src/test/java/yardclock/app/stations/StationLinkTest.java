package yardclock.app.stations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import org.awaitility.Awaitility;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.core.engine.Input;
import yardclock.core.fact.Effect;
import yardclock.core.intake.AnswerRefusal;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

/** The link on a real broker, with units played by hand. */
class StationLinkTest {
    @TempDir Path folder;

    private Yard yard;
    private final BenchLane lane = new BenchLane(1_000);

    /** A machine that builds other things beside takes its time. */
    @BeforeAll
    static void bePatient() {
        Awaitility.setDefaultTimeout(Duration.ofSeconds(30));
    }

    @AfterAll
    static void beAsPatientAsBefore() {
        Awaitility.reset();
    }

    @BeforeEach
    void open() throws Exception {
        yard = new Yard(folder);
    }

    @AfterEach
    void close() throws Exception {
        yard.close();
        lane.close();
    }

    @Test
    void anEdgeIsAcknowledgedToTheBrokerOnlyAfterItsCommit() throws Exception {
        StationLink link = linked();
        BenchUnit unit = yard.unit("fu-01");
        lane.hold();
        unit.edges(0, 4);
        await().until(() -> link.counts().received() == 5);
        assertThat(link.counts().acknowledged()).isZero();
        lane.resume();
        await().until(() -> link.counts().acknowledged() == 5);
        assertThat(lane.journal(Input.Edge.class))
                .extracting(Input.Edge::seq)
                .containsExactly(0L, 1L, 2L, 3L, 4L);
    }

    @Test
    void whatAKilledGatewayHadNotCommittedComesAgain() throws Exception {
        BenchLane killed = new BenchLane(1_000);
        StationLink first = yard.link(killed);
        await().until(first::isUp);
        BenchUnit unit = yard.unit("fu-01");
        unit.edges(0, 9);
        await().until(() -> first.counts().acknowledged() == 10);
        killed.hold();
        unit.edges(10, 19);
        await().until(() -> first.counts().received() == 20);
        first.close();
        killed.close();
        unit.edges(20, 29);

        linked();
        await().untilAsserted(() -> assertThat(lane.journal(Input.Edge.class)).hasSize(20));
        assertThat(lane.journal(Input.Edge.class))
                .extracting(Input.Edge::seq)
                .containsExactlyInAnyOrderElementsOf(
                        LongStream.rangeClosed(10, 29).boxed().toList());
        assertThat(killed.journal()).hasSize(10);
    }

    /** Whole, not in order: a broker may mix what it sends again with what it sends first. */
    @Test
    void aBacklogLargerThanTheInboxComesInWhole() throws Exception {
        StationLink once = yard.link(lane);
        await().until(once::isUp);
        once.close();
        BenchUnit unit = yard.unit("fu-02");
        for (int i = 0; i < 1_500; i += 100) {
            publishWithoutWaiting(unit, i, i + 99);
        }
        BenchLane small = new BenchLane(16);
        small.hold();
        yard.link(small);
        await().until(() -> small.waiting() == 16);
        await().until(() -> Yard.TROUBLES.of(StationLink.TROUBLE).contains("the inbox is full"));
        small.resume();
        await().atMost(Duration.ofSeconds(60)).until(() -> distinct(small).size() == 1_500);
        assertThat(distinct(small))
                .containsExactlyInAnyOrderElementsOf(LongStream.range(0, 1_500).boxed().toList());
        small.close();
    }

    @Test
    void aMessageTheJournalLostComesAgainWhenTheDiskIsWell() throws Exception {
        linked();
        BenchUnit unit = yard.unit("fu-01");
        lane.lose("the disk is full");
        unit.edges(0, 3);
        await().until(() -> Yard.TROUBLES.of(StationLink.TROUBLE).contains("the disk is full"));
        lane.lose(null);
        await().untilAsserted(
                        () -> assertThat(distinct(lane)).containsExactlyInAnyOrder(0L, 1L, 2L, 3L));
    }

    @Test
    void aDuplicateArrivesUntouchedAsAnInputOfItsOwn() throws Exception {
        linked();
        BenchUnit unit = yard.unit("fu-01");
        unit.edges(0, 0);
        unit.edges(0, 0);
        await().untilAsserted(() -> assertThat(lane.journal(Input.Edge.class)).hasSize(2));
        assertThat(lane.journal().get(0)).isEqualTo(lane.journal().get(1));
    }

    @Test
    void badMessagesAreCountedOnceAndNothingElseIsLost() throws Exception {
        StationLink link = linked();
        BenchUnit unit = yard.unit("fu-01");
        unit.say("edges", BenchUnit.edge(0));
        unit.say("edges", "{not json");
        unit.say("edges", BenchUnit.edge(1).replace("\"v\":1", "\"v\":2"));
        unit.say("edges", "[" + " ".repeat(5_000) + BenchUnit.edge(2) + "]");
        unit.say("edges", BenchUnit.edge(3).replace("\"sensor\":1", "\"sensor\":13"));
        unit.say("edges", "[" + BenchUnit.edge(4) + ",{\"v\":1}," + BenchUnit.edge(5) + "]");
        unit.say("edges", BenchUnit.edge(6));
        await().untilAsserted(
                        () ->
                                assertThat(lane.journal(Input.Edge.class))
                                        .extracting(Input.Edge::seq)
                                        .containsExactly(0L, 4L, 5L, 6L));
        await().until(() -> link.counts().acknowledged() == 7);
        RejectionLog log = link.rejections();
        assertThat(log.total()).isEqualTo(5);
        for (RejectionReason each :
                List.of(
                        RejectionReason.NOT_JSON,
                        RejectionReason.UNKNOWN_VERSION,
                        RejectionReason.TOO_LARGE,
                        RejectionReason.OUT_OF_RANGE,
                        RejectionReason.MISSING_FIELD)) {
            assertThat(log.count(each)).as(each.code()).isEqualTo(1);
        }
        assertThat(log.newest().get(0).topic()).isEqualTo("yc/1/fu-01/edges");
    }

    @Test
    void aRetainedEdgeIsNeverTakenFromANewSubscription() throws Exception {
        BenchUnit unit = yard.unit("fu-01");
        unit.sayRetained("edges", BenchUnit.edge(7));
        StationLink link = linked();
        await().until(() -> link.rejections().count(RejectionReason.RETAINED) == 1);
        assertThat(lane.journal()).isEmpty();
    }

    @Test
    void aRetainedSignOfLifeIsPassedOverAndARetainedLastWillIsTaken() throws Exception {
        yard.unit("fu-01").sayRetained("health", BenchUnit.health(BenchUnit.BOOT));
        yard.unit("fu-02").sayRetained("health", "{\"v\":1,\"up\":0}");
        StationLink link = linked();
        await().until(() -> link.counts().received() == 2);
        await().until(() -> lane.journal().contains(new Input.UnitDown("fu-02")));
        assertThat(lane.journal()).hasSize(1);
        assertThat(link.rejections().total()).isZero();
    }

    @Test
    void aUnitThatIsHeardIsAskedForTheTimeInABurst() throws Exception {
        linked();
        BenchUnit unit = yard.unit("fu-01");
        unit.answerQuestions();
        unit.say("health", BenchUnit.health(BenchUnit.BOOT));
        await().until(() -> lane.journal(Input.ExchangeAnswered.class).size() == Exchanges.BURST);
        List<Input.ExchangeAnswered> exchanges = lane.journal(Input.ExchangeAnswered.class);
        assertThat(exchanges).extracting(Input.ExchangeAnswered::id).doesNotHaveDuplicates();
        assertThat(exchanges)
                .allMatch(e -> e.gatewayReceivedMicros() > e.gatewaySentMicros())
                .allMatch(e -> e.unitSentTick() - e.unitReceivedTick() == 5);
    }

    @Test
    void aSecondAnswerAndOneToNothingAskedAreJournalledAsCounts() throws Exception {
        linked();
        BenchUnit unit = yard.unit("fu-01");
        unit.answerQuestions();
        unit.say("health", BenchUnit.health(BenchUnit.BOOT));
        await().until(() -> lane.journal(Input.ExchangeAnswered.class).size() == Exchanges.BURST);
        Input.ExchangeAnswered first = lane.journal(Input.ExchangeAnswered.class).get(0);
        unit.say("answer", answer(first.id()));
        unit.say("answer", answer("nobody-1"));
        await().untilAsserted(
                        () ->
                                assertThat(lane.journal(Input.AnswerRefused.class))
                                        .containsExactly(
                                                refused(first.id(), AnswerRefusal.AGAIN),
                                                refused("nobody-1", AnswerRefusal.UNKNOWN)));
    }

    private static String answer(String id) {
        return "{\"v\":1,\"id\":\"%s\",\"boot\":\"%s\",\"received\":9,\"sent\":9}"
                .formatted(id, BenchUnit.BOOT);
    }

    private static Input.AnswerRefused refused(String id, AnswerRefusal why) {
        return new Input.AnswerRefused("fu-01", BenchUnit.BOOT, id, why, 1);
    }

    @Test
    void aUnitThatVanishesIsReportedByItsLastWill() throws Exception {
        linked();
        BenchUnit unit = yard.unit("fu-03");
        unit.drop();
        await().until(() -> lane.journal().contains(new Input.UnitDown("fu-03")));
    }

    @Test
    void effectsReachTheUnitAndStandingOnesWaitForIt() throws Exception {
        StationLink link = linked();
        link.release(List.of(new Effect.Kept("fu-01", BenchUnit.BOOT, 3)));
        link.release(List.of(new Effect.Kept("fu-01", BenchUnit.BOOT, 4)));
        BenchUnit unit = yard.unit("fu-01");
        for (String leaf : List.of("kept", "settings", "resend", "show", "identify")) {
            unit.listen(leaf);
        }
        await().until(() -> unit.heard("kept").contains(kept(4)));
        link.release(
                List.of(
                        new Effect.AskAgain("fu-01", BenchUnit.BOOT, 5, 9),
                        new Effect.Show("fu-01", 9, "start", 1_500),
                        new Effect.Blink("fu-01", 10)));
        await().until(
                        () ->
                                !unit.heard("resend").isEmpty()
                                        && !unit.heard("show").isEmpty()
                                        && !unit.heard("identify").isEmpty());
        assertThat(unit.heard("resend"))
                .containsExactly("{\"v\":1,\"boot\":\"00000000000000a1\",\"from\":5,\"to\":9}");
        assertThat(unit.heard("show"))
                .containsExactly("{\"v\":1,\"output\":9,\"what\":\"start\",\"expiresMs\":1500}");
        assertThat(unit.heard("identify")).containsExactly("{\"v\":1,\"seconds\":10}");
        assertThat(unit.heard("settings"))
                .containsExactly(
                        "{\"v\":1,\"version\":3,\"sensors\":"
                                + "[{\"number\":1,\"inverted\":false,\"pullUp\":true}]}");
    }

    @Test
    void aBrokerThatGoesIsSaidAndABrokerThatComesBackIsFound() throws Exception {
        StationLink link = linked();
        yard.stopBroker();
        await().until(() -> !link.isUp());
        await().until(() -> Yard.TROUBLES.of(StationLink.TROUBLE).contains(yard.uri()));
        link.release(List.of(new Effect.Kept("fu-02", BenchUnit.BOOT, 8)));
        yard.startBroker();
        await().until(link::isUp);
        assertThat(Yard.TROUBLES.of(StationLink.TROUBLE)).isEqualTo("ok");
        BenchUnit unit = yard.unit("fu-02");
        unit.listen("kept");
        await().until(() -> unit.heard("kept").contains(kept(8)));
    }

    private static String kept(long upto) {
        return "{\"v\":1,\"boot\":\"" + BenchUnit.BOOT + "\",\"upto\":" + upto + "}";
    }

    private StationLink linked() {
        StationLink link = yard.link(lane);
        await().until(link::isUp);
        return link;
    }

    private static List<Long> distinct(BenchLane lane) {
        return lane.journal(Input.Edge.class).stream().map(Input.Edge::seq).distinct().toList();
    }

    private static void publishWithoutWaiting(BenchUnit unit, int from, int to) throws Exception {
        var tokens = new ArrayList<IMqttToken>();
        for (int seq = from; seq <= to; seq++) {
            tokens.add(unit.publish("yc/1/fu-02/edges", BenchUnit.edge(seq), false));
        }
        for (var token : tokens) {
            token.waitForCompletion(10_000);
        }
    }
}
