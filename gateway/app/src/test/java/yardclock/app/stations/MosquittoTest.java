package yardclock.app.stations;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.awaitility.Awaitility.await;

import org.awaitility.Awaitility;
import org.eclipse.paho.client.mqttv3.IMqttToken;
import org.eclipse.paho.client.mqttv3.MqttException;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import yardclock.app.lane.Troubles;
import yardclock.core.engine.Input;
import yardclock.core.fact.Effect;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;

/** The link on a real mosquitto with the configuration that goes onto the board. */
class MosquittoTest {
    @TempDir Path folder;

    private final BenchLane lane = new BenchLane(64);
    private final List<AutoCloseable> open = new ArrayList<>();
    private Mosquitto broker;

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
        broker = new Mosquitto(folder, List.of("gateway", "fu-01", "fu-02"));
    }

    @AfterEach
    void close() throws Exception {
        for (int i = open.size() - 1; i >= 0; i--) {
            open.get(i).close();
        }
        broker.close();
        lane.close();
    }

    @Test
    void edgesExchangesAndEffectsTravelBothWays() throws Exception {
        StationLink link = linked();
        BenchUnit unit = unit("fu-01");
        unit.listen("kept");
        unit.listen("settings");
        unit.answerQuestions();
        unit.say("health", BenchUnit.health(BenchUnit.BOOT));
        unit.edges(0, 9);
        await().until(() -> lane.journal(Input.Edge.class).size() == 10);
        await().until(() -> lane.journal(Input.ExchangeAnswered.class).size() >= 4);
        link.release(List.of(new Effect.Kept("fu-01", BenchUnit.BOOT, 9)));
        await().until(() -> unit.heard("kept").size() == 1 && unit.heard("settings").size() == 1);
        assertThat(link.rejections().total()).isZero();
    }

    @Test
    void moreEdgesThanABrokerUsuallyKeepsWaitForAnAbsentGateway() throws Exception {
        linked().close();
        BenchUnit unit = unit("fu-01");
        publish(unit, 1_200);
        linked();
        await().atMost(Duration.ofSeconds(60)).until(() -> seqs().size() == 1_200);
        assertThat(seqs()).containsExactlyElementsOf(LongStream.range(0, 1_200).boxed().toList());
    }

    @Test
    void whatWasSavedSurvivesAPowerCutOfTheBroker() throws Exception {
        linked().close();
        unit("fu-01").edges(0, 49);
        await().until(() -> broker.hasSaved("\"seq\":49,"));
        broker.kill();
        broker.start();
        linked();
        await().until(() -> seqs().size() == 50);
    }

    @Test
    void theLinkFindsABrokerThatWasAway() throws Exception {
        StationLink link = linked();
        broker.kill();
        await().until(() -> !link.isUp());
        broker.start();
        await().until(link::isUp);
        unit("fu-02").edges(0, 0);
        await().until(() -> seqs().size() == 1);
    }

    @Test
    void aUnitWritesUnderItsOwnIdOnly() throws Exception {
        StationLink link = linked();
        BenchUnit unit = unit("fu-01");
        sayDenied(unit, "yc/1/fu-02/edges", BenchUnit.edge(7));
        sayDenied(unit("fu-01"), "yc/1/fu-02/kept", "{}");
        unit("fu-01").edges(8, 8);
        await().until(() -> seqs().contains(8L));
        assertThat(lane.journal(Input.Edge.class)).hasSize(1);
        assertThat(link.rejections().total()).isZero();
    }

    /** MQTT 3.1.1 has no word for it: the message vanishes, or the broker hangs up. */
    private static void sayDenied(BenchUnit unit, String topic, String json) {
        try {
            unit.publish(topic, json, false).waitForCompletion(10_000);
        } catch (MqttException hungUp) {
            assertThat(unit.isConnected()).isFalse();
        }
    }

    @Test
    void nobodyComesInWithoutAPasswordOrWithAWrongOne() {
        assertThatThrownBy(() -> new BenchUnit(broker.uri(), "fu-01", null))
                .isInstanceOf(MqttException.class);
        assertThatThrownBy(() -> new BenchUnit(broker.uri(), "fu-01", "guessed"))
                .isInstanceOf(MqttException.class);
    }

    @Test
    void aUnitCannotTakeOverAnotherUnitsSession() throws Exception {
        BenchUnit owner = unit("fu-02");
        BenchUnit other =
                new BenchUnit(broker.uri(), "fu-02", "fu-01", Mosquitto.password("fu-01"));
        open.add(other);
        other.edges(0, 0);
        owner.edges(0, 0);
        assertThat(owner.isConnected()).isTrue();
    }

    private List<Long> seqs() {
        return lane.journal(Input.Edge.class).stream().map(Input.Edge::seq).distinct().toList();
    }

    private StationLink linked() {
        LinkSettings settings =
                LinkSettings.of(broker.uri(), "gateway", Mosquitto.password("gateway"));
        StationLink link =
                new StationLink(settings, Yard.plan(), lane, new RealTime(1), new Troubles());
        open.add(link);
        link.start();
        await().until(link::isUp);
        return link;
    }

    private BenchUnit unit(String id) throws Exception {
        BenchUnit unit = new BenchUnit(broker.uri(), id, Mosquitto.password(id));
        open.add(unit);
        return unit;
    }

    private static void publish(BenchUnit unit, int count) throws Exception {
        for (int from = 0; from < count; from += 100) {
            List<IMqttToken> tokens = new ArrayList<>();
            for (int seq = from; seq < from + 100; seq++) {
                tokens.add(unit.publish("yc/1/fu-01/edges", BenchUnit.edge(seq), false));
            }
            for (IMqttToken token : tokens) {
                token.waitForCompletion(10_000);
            }
        }
    }
}
