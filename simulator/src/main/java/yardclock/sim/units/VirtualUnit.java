package yardclock.sim.units;

import com.fasterxml.jackson.databind.JsonNode;

import yardclock.sim.stage.Stage;

import java.security.SecureRandom;
import java.util.HexFormat;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.ObjLongConsumer;

/**
 * One field unit: it senses, stamps, keeps and sends.
 *
 * <p>Everything runs on the stage, except that an {@code ask} is stamped and answered on the link's
 * own thread, at arrival, as a board would do it. Health and exchanges run in exam time, link and
 * repeats in real time.
 */
public final class VirtualUnit implements UnitLink.Receiver {
    private static final long HEALTH_MICROS = 2_000_000;
    private static final int EDGE_QOS = 1;

    private final Stage stage;
    private final UnitSettings settings;
    private final UnitLink link;
    private final TickClock clock;
    private final String boot;
    private final int[] states = new int[8];
    private final EdgeSender sender;
    private final SplittableRandom random;
    private ObjLongConsumer<String> onShown = (what, examMicros) -> {};
    private long nextSeq;
    private long lastTick;
    private int settingsVersion = -1;
    private final AtomicLong refused = new AtomicLong();
    private final AtomicLong aheadOfGateway = new AtomicLong(Long.MAX_VALUE);
    private boolean up;
    private String accessPoint = "02:00:00:00:00:01";

    public VirtualUnit(Stage stage, UnitSettings settings, UnitLink link) {
        this(stage, settings, link, newBoot());
    }

    /**
     * @param boot 64 bits in hex, never used before by a unit of this id
     */
    public VirtualUnit(Stage stage, UnitSettings settings, UnitLink link, String boot) {
        this.boot = boot;
        this.stage = stage;
        this.settings = settings;
        this.link = link;
        this.random = new SplittableRandom(settings.seed());
        long ranBeforeMicros = random.nextLong(60_000_000, 900_000_000);
        this.clock =
                new TickClock(-ranBeforeMicros, settings.ratePartsPerBillion(), settings.drift());
        this.sender = new EdgeSender(stage, link, boot, random.split());
        for (int i = 0; i < states.length; i++) {
            states[i] = settings.restStates().get(i);
        }
    }

    /** 64 random bits; never from the seed, because a new process is a new boot. */
    private static String newBoot() {
        return HexFormat.of().toHexDigits(new SecureRandom().nextLong());
    }

    public void powerOn() {
        link.open(this);
        long first = stage.nowMicros() + random.nextLong(HEALTH_MICROS);
        stage.at(first, () -> beat(first));
    }

    public void powerOff() {
        link.close();
    }

    /** Who is told when an output has acted, and when it did. */
    public void onShown(ObjLongConsumer<String> listener) {
        onShown = listener;
    }

    public String id() {
        return settings.id();
    }

    /** A sensor changed at an instant that is now or has just been. Stamps it and sends it. */
    public void sense(int sensor, int state, long examMicros) {
        if (sensor <= states.length) {
            states[sensor - 1] = state;
        }
        lastTick = Math.max(lastTick, clock.tickAt(examMicros));
        sender.add(new StoredEdge(nextSeq++, sensor, state, lastTick));
    }

    public int state(int sensor) {
        return states[sensor - 1];
    }

    public void read(ClimateReading reading) {
        byte[] payload = UnitMessages.climate(reading, boot, clock.tickAt(stage.nowMicros()));
        send("climate", payload, 1, false);
    }

    public UnitCounts counts() {
        return sender.counts(settings.id(), nextSeq);
    }

    /** For tests and incidents: out of reach until the link finds its way back. */
    public void loseLink() {
        link.breakOff();
    }

    /** For tests and incidents: its radio goes over to another access point. */
    public void roamTo(String address) {
        accessPoint = address;
        sendHealth(stage.nowMicros());
    }

    @Override
    public void up() {
        up = true;
        sender.up();
        sendHealth(stage.nowMicros());
    }

    @Override
    public void down() {
        up = false;
        sender.down();
    }

    @Override
    public void arrived(String name, byte[] payload) {
        long receivedTick = clock.tickAt(stage.nowMicros());
        Optional<JsonNode> message = UnitMessages.read(name, payload);
        if (message.isEmpty()) {
            refused.incrementAndGet();
        } else if (name.equals("ask")) {
            answer(message.get(), receivedTick);
        } else {
            stage.soon(() -> obey(name, message.get()));
        }
    }

    /**
     * How far the stage's time is ahead of the gateway's, by the quickest question so far; too much
     * by its time under way. {@link Long#MAX_VALUE} before the first.
     */
    public long aheadOfGatewayMicros() {
        return aheadOfGateway.get();
    }

    /** How many messages this unit could not read. */
    public long refused() {
        return refused.get();
    }

    private void answer(JsonNode ask, long receivedTick) {
        long ahead = stage.nowMicros() - ask.path("gateway").asLong();
        aheadOfGateway.accumulateAndGet(ahead, Math::min);
        long sentTick = clock.tickAt(stage.nowMicros());
        byte[] answer = UnitMessages.answer(ask.path("id").asText(), boot, receivedTick, sentTick);
        send("answer", answer, 0, false);
    }

    private void obey(String name, JsonNode message) {
        switch (name) {
            case "kept" ->
                    sender.kept(message.path("boot").asText(), message.path("upto").asLong());
            case "resend" ->
                    sender.again(
                            message.path("boot").asText(),
                            message.path("from").asLong(),
                            message.path("to").asLong());
            case "show" -> show(message);
            case "settings" -> apply(message);
            default -> {
                // identify blinks a lamp, which nobody here looks at; others are not for this
                // version
            }
        }
    }

    /** The output acts now, its own edge says when; it falls back when the time is over. */
    private void show(JsonNode message) {
        int output = message.path("output").asInt();
        long expiresMicros = Math.max(1, message.path("expiresMs").asLong()) * 1_000;
        if (output < 9 || output > 12) {
            return;
        }
        long at = stage.nowMicros();
        sense(output, 1, at);
        stage.at(at + expiresMicros, () -> sense(output, 0, at + expiresMicros));
        onShown.accept(message.path("what").asText(), at);
    }

    private void apply(JsonNode message) {
        settingsVersion = message.path("version").asInt();
        send("applied", UnitMessages.applied(settingsVersion, refusal(message)), 1, true);
    }

    private static String refusal(JsonNode settings) {
        for (JsonNode sensor : settings.path("sensors")) {
            int number = sensor.path("number").asInt();
            if (number < 1 || number > 12) {
                return "no sensor " + number + " on this board";
            }
        }
        return "";
    }

    /** Health carries the instant it was due, so that a late machine never runs a tick back. */
    private void beat(long dueMicros) {
        sendHealth(dueMicros);
        long next = Math.max(dueMicros + HEALTH_MICROS, stage.nowMicros());
        stage.at(next, () -> beat(next));
    }

    private void sendHealth(long examMicros) {
        if (!up) {
            return;
        }
        byte[] health =
                UnitMessages.health(
                        new UnitMessages.Vitals(
                                boot,
                                clock.tickAt(examMicros),
                                nextSeq,
                                random.nextInt(3_900, 4_100),
                                random.nextInt(-72, -55),
                                sender.waiting(),
                                random.nextLong(110_000, 140_000),
                                "virtual-1",
                                states,
                                accessPoint));
        send("health", health, 1, true);
    }

    private void send(String name, byte[] payload, int qos, boolean retained) {
        link.publish(new UnitLink.Message(name, payload, qos, retained), () -> {});
    }

    static UnitLink.Message edgesMessage(byte[] payload) {
        return new UnitLink.Message("edges", payload, EDGE_QOS, false);
    }
}
