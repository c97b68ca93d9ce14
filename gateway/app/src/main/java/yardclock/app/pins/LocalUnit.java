package yardclock.app.pins;

import com.pi4j.io.gpio.digital.DigitalInput;
import com.pi4j.io.gpio.digital.DigitalState;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.Inbox;
import yardclock.app.lane.Troubles;
import yardclock.core.course.FieldUnit;
import yardclock.core.course.SensorPlan;
import yardclock.core.engine.Input;

import java.security.SecureRandom;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;

/**
 * The gateway's own board as a field unit: its pins' changes become edges, and it gives signs of
 * life like any other. Without any pins it still does, for what else is wired to the board.
 *
 * <p>Pi4J's threads stamp and store; one thread of its own hands in, one batch at a time. Open the
 * lane before and close it after. Periods are exam time, retries real time.
 */
public final class LocalUnit implements AutoCloseable {
    /** The source of the trouble that is raised while the pins cannot be used. */
    public static final String TROUBLE = "pins";

    private static final Logger LOG = LoggerFactory.getLogger(LocalUnit.class);
    private static final long HEALTH_MICROS = TimeUnit.SECONDS.toMicros(2);
    private static final long EXCHANGE_MICROS = TimeUnit.SECONDS.toMicros(5);
    private static final long RETRY_MILLIS = 1_000;

    /** Far beyond any commit; handing in again does no harm, duplicates are absorbed. */
    private static final long RECEIPT_SECONDS = 10;

    private static final int STATES = 8;
    private static final int CONTRACT = 1;

    private final PinMap map;
    private final FieldUnit plan;
    private final Inbox inbox;
    private final GatewayClock clock;
    private final Troubles troubles;
    private final String boot = HexFormat.of().toHexDigits(new SecureRandom().nextLong());
    private final long bootMicros;
    private final EdgeStore store;
    private final Map<Integer, DigitalInput> inputs = new TreeMap<>();
    private final Thread thread;
    private String firmware = "gateway pins";
    private long lowestFreeMemory = Long.MAX_VALUE;
    private long exchanges;

    /**
     * @throws IllegalArgumentException when the plan does not know the unit or one of its sensors
     */
    public LocalUnit(
            PinMap map, FieldUnit plan, Inbox inbox, GatewayClock clock, Troubles troubles) {
        this.map = map;
        this.plan = plan;
        this.inbox = inbox;
        this.clock = clock;
        this.troubles = troubles;
        bootMicros = clock.now().micros();
        store = new EdgeStore(map.unit(), boot, EdgeStore.EDGES);
        thread = new Thread(this::run, "pins-" + map.unit());
        map.lineOfSensor().keySet().forEach(this::planned);
    }

    /** Opens the pins; where that fails, says so and goes on without them. */
    public void start(BoardPins board) {
        if (map.lineOfSensor().isEmpty()) {
            firmware = "gateway board";
        } else {
            open(board);
        }
        thread.start();
    }

    private void open(BoardPins board) {
        try {
            Pins pins = board.open();
            map.lineOfSensor().forEach((sensor, line) -> listen(pins, sensor, line));
        } catch (RuntimeException | LinkageError e) {
            firmware = "gateway pins not available";
            String words =
                    "The pins of this board, field unit "
                            + map.unit()
                            + ", cannot be used; everything else runs on: "
                            + e.getMessage();
            LOG.warn("{}", words);
            troubles.raise(TROUBLE, words);
        }
    }

    private void listen(Pins pins, int sensor, int line) {
        DigitalInput input = pins.open(line, planned(sensor));
        boolean inverted = planned(sensor).inverted();
        inputs.put(sensor, input);
        input.addListener(
                change -> {
                    long tick = tick();
                    store.add(sensor, state(change.state(), inverted), tick);
                });
    }

    private SensorPlan planned(int sensor) {
        return plan.sensors().stream()
                .filter(each -> each.number() == sensor)
                .findFirst()
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        "the plan has no sensor " + map.unit() + "/" + sensor));
    }

    private static int state(DigitalState state, boolean inverted) {
        return state.isHigh() != inverted ? 1 : 0;
    }

    /** Which start its ticks count from. */
    String boot() {
        return boot;
    }

    /** Its clock now; any thread. */
    long tick() {
        return clock.now().micros() - bootMicros;
    }

    private void run() {
        long nextHealth = 0;
        long nextExchange = 0;
        try {
            while (!Thread.currentThread().isInterrupted()) {
                long now = tick();
                if (now >= nextHealth) {
                    handIn(List.of(health()));
                    nextHealth = now + HEALTH_MICROS;
                }
                if (now >= nextExchange) {
                    handIn(List.of(exchange()));
                    nextExchange = now + EXCHANGE_MICROS;
                }
                handInEdges(Math.min(nextHealth, nextExchange) - now);
            }
        } catch (InterruptedException closed) {
            Thread.currentThread().interrupt();
        }
    }

    private void handInEdges(long waitMicros) throws InterruptedException {
        long waitMillis = Math.max(1, waitMicros / 1_000 / clock.speed());
        List<Input.Edge> edges = store.oldest(waitMillis);
        if (edges.isEmpty()) {
            return;
        }
        if (handIn(edges)) {
            store.drop(edges.size());
        } else {
            TimeUnit.MILLISECONDS.sleep(RETRY_MILLIS);
        }
    }

    /** True when the journal has them. */
    private boolean handIn(List<? extends Input> inputs) throws InterruptedException {
        BlockingQueue<Inbox.Receipt> receipts = new LinkedBlockingQueue<>();
        if (!inbox.offer(inputs, receipts::add)) {
            return false;
        }
        Inbox.Receipt receipt = receipts.poll(RECEIPT_SECONDS, TimeUnit.SECONDS);
        return receipt != null && receipt.isKept();
    }

    private Input.Health health() {
        lowestFreeMemory = Math.min(lowestFreeMemory, Runtime.getRuntime().freeMemory());
        return new Input.Health(
                map.unit(),
                boot,
                tick(),
                store.nextSeq(),
                0,
                0,
                store.fill(),
                lowestFreeMemory,
                firmware,
                CONTRACT,
                states(),
                "");
    }

    private List<Integer> states() {
        List<Integer> states = new ArrayList<>(Collections.nCopies(STATES, -1));
        inputs.forEach(
                (sensor, input) ->
                        states.set(sensor - 1, state(input.state(), planned(sensor).inverted())));
        return states;
    }

    /** Both clocks are one clock: the four stamps are one. */
    private Input.ExchangeAnswered exchange() {
        long now = clock.now().micros();
        long tick = now - bootMicros;
        String id = boot + "-" + exchanges++;
        return new Input.ExchangeAnswered(map.unit(), boot, id, now, tick, tick, now);
    }

    /** Stops handing in. What was not kept yet is lost with the boot; close the lane after. */
    @Override
    public void close() {
        thread.interrupt();
        try {
            thread.join(TimeUnit.SECONDS.toMillis(5));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
