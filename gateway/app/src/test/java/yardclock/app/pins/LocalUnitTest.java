package yardclock.app.pins;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.tuple;
import static org.awaitility.Awaitility.await;

import com.pi4j.Pi4J;
import com.pi4j.context.Context;
import com.pi4j.io.gpio.digital.DigitalState;
import com.pi4j.plugin.mock.provider.gpio.digital.MockDigitalInput;
import com.pi4j.plugin.mock.provider.gpio.digital.MockDigitalInputProvider;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.Inbox;
import yardclock.app.lane.Troubles;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorKind;
import yardclock.core.course.SensorPlan;
import yardclock.core.course.Text;
import yardclock.core.engine.Input;
import yardclock.core.engine.Outcome;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.WallTime;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;

/** The board's own pins, on Pi4J's mock provider. */
class LocalUnitTest {
    private static final Text NAME = new Text("mat", "tapete");

    private final Kept inbox = new Kept();
    private final Troubles troubles = new Troubles();
    private final Context context =
            Pi4J.newContextBuilder()
                    .noAutoDetect()
                    .add(MockDigitalInputProvider.newInstance())
                    .build();
    private LocalUnit unit;

    @AfterEach
    void close() {
        if (unit != null) {
            unit.close();
        }
        context.shutdown();
    }

    @Test
    void aPinThatChangesIsAnEdgeWithItsOwnTick() {
        start("fu-12:1=17,2=27");
        pin(17).mockState(DigitalState.HIGH);
        pin(17).mockState(DigitalState.LOW);
        pin(27).mockState(DigitalState.HIGH);
        await().until(() -> edges().size() == 3);
        assertThat(edges()).extracting(Input.Edge::unit).containsOnly("fu-12");
        assertThat(edges()).extracting(Input.Edge::boot).containsOnly(health().boot());
        assertThat(edges()).extracting(Input.Edge::seq).containsExactly(0L, 1L, 2L);
        assertThat(edges()).extracting(Input.Edge::sensor).containsExactly(1, 1, 2);
        assertThat(edges()).extracting(Input.Edge::state).containsExactly(1, 0, 0);
        assertThat(edges()).extracting(Input.Edge::tick).isSorted();
        assertThat(edges().get(0).tick()).isPositive();
        assertThat(troubles.words()).isEmpty();
    }

    @Test
    void itsExchangeSaysThatBothClocksAreOne() {
        start("fu-12:1=17");
        await().until(() -> !inbox.kept(Input.ExchangeAnswered.class).isEmpty());
        Input.ExchangeAnswered exchange = inbox.kept(Input.ExchangeAnswered.class).get(0);
        assertThat(exchange.gatewayReceivedMicros()).isEqualTo(exchange.gatewaySentMicros());
        assertThat(exchange.unitSentTick()).isEqualTo(exchange.unitReceivedTick());
        assertThat(exchange.boot()).isEqualTo(health().boot()).hasSize(16);
    }

    @Test
    void itsSignOfLifeNamesTheStatesOfItsPins() {
        start("fu-12:1=17,2=27");
        await().until(() -> !inbox.kept(Input.Health.class).isEmpty());
        assertThat(health().sensorStates()).containsExactly(0, 1, -1, -1, -1, -1, -1, -1);
        assertThat(health().nextSeq()).isZero();
    }

    @Test
    void edgesWaitWhileTheInboxIsFull() {
        inbox.isFull = true;
        start("fu-12:1=17");
        for (int i = 0; i < 40; i++) {
            pin(17).mockState(i % 2 == 0 ? DigitalState.HIGH : DigitalState.LOW);
        }
        inbox.isFull = false;
        await().until(() -> edges().size() == 40);
        assertThat(edges().get(39).seq()).isEqualTo(39);
    }

    @Test
    void edgesTheJournalLostAreHandedInAgain() {
        inbox.lost = "the disk is full";
        start("fu-12:1=17");
        pin(17).mockState(DigitalState.HIGH);
        await().until(() -> inbox.losses.get() > 0);
        inbox.lost = null;
        await().until(() -> edges().size() == 1);
    }

    @Test
    void offABoardTheUnitSaysSoAndLivesOn() {
        unit = unit("fu-12:1=17");
        unit.start(new BoardPins());
        await().until(() -> !inbox.kept(Input.Health.class).isEmpty());
        assertThat(health().firmware()).isEqualTo("gateway pins not available");
        assertThat(health().sensorStates()).containsOnly(-1);
        assertThat(troubles.of(LocalUnit.TROUBLE))
                .contains("fu-12")
                .contains("everything else runs on");
    }

    @Test
    void aSensorThePlanDoesNotKnowIsRefused() {
        assertThatThrownBy(() -> unit("fu-12:3=17"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("fu-12/3");
    }

    @Test
    void aFullStoreGivesUpTheNewestAndLeavesItsNumberOut() throws InterruptedException {
        EdgeStore store = new EdgeStore("fu-12", "00000000000000a1", 2);
        for (int i = 0; i < 3; i++) {
            store.add(1, i % 2, 100 + i);
        }
        store.drop(1);
        store.add(1, 1, 99);
        assertThat(store.oldest(0))
                .extracting(Input.Edge::seq, Input.Edge::tick)
                .containsExactly(tuple(1L, 101L), tuple(3L, 102L));
    }

    private void start(String map) {
        unit = unit(map);
        unit.start(new BoardPins(() -> new Pins(context, MockDigitalInputProvider.ID, "")));
    }

    /** Sensor 2 is wired the other way round. */
    private LocalUnit unit(String map) {
        List<SensorPlan> sensors =
                List.of(
                        new SensorPlan(1, SensorKind.MAT, NAME, 0, false, true, 500),
                        new SensorPlan(2, SensorKind.MAT, NAME, 0, true, true, 500));
        return new LocalUnit(
                PinMap.parse(map),
                new FieldUnit("fu-12", NAME, sensors),
                inbox,
                new Monotonic(),
                troubles);
    }

    private MockDigitalInput pin(int line) {
        return context.registry().get("line-" + line, MockDigitalInput.class);
    }

    private List<Input.Edge> edges() {
        return inbox.kept(Input.Edge.class);
    }

    private Input.Health health() {
        await().until(() -> !inbox.kept(Input.Health.class).isEmpty());
        return inbox.kept(Input.Health.class).get(0);
    }

    /** Commits at once, or is full, or loses. */
    private static final class Kept implements Inbox {
        private final List<Input> journal = new CopyOnWriteArrayList<>();
        private volatile boolean isFull;
        private volatile String lost;
        private final AtomicInteger losses = new AtomicInteger();

        @Override
        public boolean offer(List<? extends Input> inputs, Consumer<Receipt> done) {
            String why = lost;
            if (isFull) {
                return false;
            }
            if (why != null) {
                losses.incrementAndGet();
                done.accept(new Receipt(List.of(), why));
                return true;
            }
            journal.addAll(inputs);
            List<Outcome> outcomes = new ArrayList<>();
            inputs.forEach(
                    each ->
                            outcomes.add(
                                    new Outcome(List.of(), List.of(), null, OptionalLong.empty())));
            done.accept(new Receipt(outcomes, null));
            return true;
        }

        <T extends Input> List<T> kept(Class<T> kind) {
            return journal.stream().filter(kind::isInstance).map(kind::cast).toList();
        }
    }

    private record Monotonic() implements GatewayClock {
        @Override
        public GatewayTime now() {
            return new GatewayTime(System.nanoTime() / 1_000);
        }

        @Override
        public WallTime wall() {
            return new WallTime(0);
        }

        @Override
        public int speed() {
            return 1;
        }

        @Override
        public long realNanos() {
            return System.nanoTime();
        }
    }
}
