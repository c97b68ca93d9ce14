package yardclock.app.pins;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.Inbox;
import yardclock.app.lane.Troubles;
import yardclock.app.pins.Sht3x.Air;
import yardclock.app.pins.Sht3x.FaultException;
import yardclock.core.engine.Input;

import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Supplier;

/**
 * Reads a climate sensor wired to the board, again and again, and hands each reading in as its
 * field unit would over MQTT.
 *
 * <p>A reading is only what the sensor said just now, checksum and all. What fails is tried again a
 * few times; then the sensor is reset and falls silent until the next round, with a sentence on
 * every page, and the heat watch sees to what silence means. Nothing is repeated or made up.
 *
 * <p>It has a thread of its own, which alone touches the bus; the lane is never waited in. Open the
 * lane and the unit before and close them after.
 */
public final class ClimateSensor implements AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(ClimateSensor.class);

    /** One disturbed transfer is common beside motors and radios, three in a row are a fault. */
    static final int TRIES = 3;

    private static final long RETRY_MILLIS = 50;

    /** Far beyond any commit. */
    private static final long RECEIPT_SECONDS = 10;

    /**
     * Readings refused after the heater was seen on, until it has cooled down. Our own choice: the
     * data sheet gives it a few degrees and the sensor a response time of seconds.
     */
    private static final long COOLING_MICROS = TimeUnit.SECONDS.toMicros(60);

    private final ClimateWiring wiring;
    private final LocalUnit unit;
    private final Inbox inbox;
    private final GatewayClock clock;
    private final Troubles troubles;
    private final Thread thread;

    /** Beside the interrupt, which a bus driver on the way may swallow. */
    private final CountDownLatch closing = new CountDownLatch(1);

    private final Map<ClimateOutcome, AtomicLong> counts = new TreeMap<>();
    private Supplier<SensorBus> opening = SensorBus::ofThisBoard;
    private SensorBus bus;
    private Sht3x sensor;

    /** By the unit's clock. */
    private long hotUntilMicros;

    /**
     * @param unit the field unit it speaks as, whose start and clock its readings are dated by
     */
    public ClimateSensor(
            ClimateWiring wiring,
            LocalUnit unit,
            Inbox inbox,
            GatewayClock clock,
            Troubles troubles) {
        this.wiring = wiring;
        this.unit = unit;
        this.inbox = inbox;
        this.clock = clock;
        this.troubles = troubles;
        for (ClimateOutcome outcome : ClimateOutcome.values()) {
            counts.put(outcome, new AtomicLong());
        }
        thread = new Thread(this::run, "climate-" + wiring.unit());
        // A bus that hangs in the kernel must not keep the process alive.
        thread.setDaemon(true);
    }

    /** The field unit it speaks as. */
    public String unit() {
        return wiring.unit();
    }

    /** How often it came to this since the start; any thread. */
    public long count(ClimateOutcome outcome) {
        return counts.get(outcome).get();
    }

    public void start() {
        thread.start();
    }

    void start(Supplier<SensorBus> buses) {
        opening = buses;
        start();
    }

    private String trouble() {
        return "climate " + wiring.unit();
    }

    private void run() {
        long every = TimeUnit.SECONDS.toMillis(wiring.everySeconds()) / clock.speed();
        try {
            do {
                round();
            } while (!closing.await(every, TimeUnit.MILLISECONDS));
        } catch (InterruptedException closed) {
            Thread.currentThread().interrupt();
        } finally {
            release();
        }
    }

    private void round() throws InterruptedException {
        ClimateOutcome last = null;
        for (int i = 0; i < TRIES; i++) {
            last = once();
            counts.get(last).incrementAndGet();
            if (last == ClimateOutcome.KEPT) {
                troubles.clear(trouble());
                return;
            }
            if (last == ClimateOutcome.NO_BUS || last == ClimateOutcome.HEATER_ON) {
                break; // A moment later it is no other.
            }
            if (closing.await(RETRY_MILLIS, TimeUnit.MILLISECONDS)) {
                return;
            }
        }
        fallSilent(last);
    }

    private void fallSilent(ClimateOutcome why) throws InterruptedException {
        String words =
                "The "
                        + wiring.words()
                        + " gives no reading: "
                        + words(why)
                        + ". Nothing is put in its place; read by hand.";
        if (troubles.of(trouble()).equals("ok")) {
            LOG.warn("{}", words);
        }
        troubles.raise(trouble(), words);
        if (isOfTheSensor(why)) {
            reset();
        }
    }

    private static boolean isOfTheSensor(ClimateOutcome why) {
        return switch (why) {
            case NO_ANSWER, SHORT_ANSWER, WRONG_CHECKSUM -> true;
            case KEPT, NOT_KEPT, HEATER_ON, NO_BUS -> false;
        };
    }

    private static String words(ClimateOutcome why) {
        return switch (why) {
            case KEPT -> throw new IllegalArgumentException("a kept reading is no silence");
            case NOT_KEPT -> "the gateway could not take it in";
            case NO_ANSWER -> Sht3x.Fault.NO_ANSWER.words();
            case SHORT_ANSWER -> Sht3x.Fault.SHORT_ANSWER.words();
            case WRONG_CHECKSUM -> Sht3x.Fault.WRONG_CHECKSUM.words();
            case HEATER_ON -> "its heater was on, and is cooling down";
            case NO_BUS -> "the bus of this board can't be used";
        };
    }

    /** After it everything begins anew, the look at the heater included. */
    private void reset() throws InterruptedException {
        try {
            sensor.reset();
        } catch (FaultException e) {
            LOG.debug("The {} can't be reset", wiring.words(), e);
        }
        release();
    }

    private ClimateOutcome once() throws InterruptedException {
        if (sensor == null && !open()) {
            return ClimateOutcome.NO_BUS;
        }
        try {
            if (isHot()) {
                return ClimateOutcome.HEATER_ON;
            }
            long tick = unit.tick();
            Air air = sensor.measure();
            return handIn(air, tick) ? ClimateOutcome.KEPT : ClimateOutcome.NOT_KEPT;
        } catch (FaultException e) {
            return outcome(e.fault());
        }
    }

    private static ClimateOutcome outcome(Sht3x.Fault fault) {
        return switch (fault) {
            case NO_ANSWER -> ClimateOutcome.NO_ANSWER;
            case SHORT_ANSWER -> ClimateOutcome.SHORT_ANSWER;
            case WRONG_CHECKSUM -> ClimateOutcome.WRONG_CHECKSUM;
        };
    }

    /** Opened anew after each failure: the board's bus may come late, or go and come back. */
    private boolean open() {
        try {
            bus = opening.get();
            sensor = new Sht3x(bus.open(wiring));
            return true;
        } catch (RuntimeException | LinkageError e) {
            LOG.debug("The {} can't be opened", wiring.words(), e);
            release();
            return false;
        }
    }

    private void release() {
        sensor = null;
        if (bus != null) {
            bus.close();
            bus = null;
        }
    }

    /**
     * Looks at the heater before each reading: who left it on, and when, nobody can say. It is put
     * off, and until it has cooled down there is no reading.
     */
    private boolean isHot() throws FaultException, InterruptedException {
        boolean isOn = sensor.isHeaterOn();
        sensor.heaterOff();
        if (isOn) {
            hotUntilMicros = unit.tick() + COOLING_MICROS;
        }
        return unit.tick() < hotUntilMicros;
    }

    /** True when the journal has it. */
    private boolean handIn(Air air, long tick) throws InterruptedException {
        Input.Climate reading =
                new Input.Climate(
                        wiring.unit(),
                        air.centiCelsius(),
                        air.centiPercent(),
                        null,
                        null,
                        null,
                        tick,
                        unit.boot());
        BlockingQueue<Inbox.Receipt> receipts = new LinkedBlockingQueue<>();
        if (!inbox.offer(reading, receipts::add)) {
            return false;
        }
        Inbox.Receipt receipt = receipts.poll(RECEIPT_SECONDS, TimeUnit.SECONDS);
        return receipt != null && receipt.isKept();
    }

    /** Stops reading within seconds, also when the bus hangs. */
    @Override
    public void close() {
        closing.countDown();
        thread.interrupt();
        try {
            thread.join(TimeUnit.SECONDS.toMillis(5));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
