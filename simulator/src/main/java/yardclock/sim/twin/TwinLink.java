package yardclock.sim.twin;

import yardclock.sim.stage.Stage;
import yardclock.sim.units.UnitLink;

import java.nio.charset.StandardCharsets;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;

/** One unit's connection to the broker of {@link Air}. */
final class TwinLink implements UnitLink {
    private static final long RECONNECT_MICROS = 400_000;
    private static final Message WILL =
            new Message("health", "{\"v\":1,\"up\":0}".getBytes(StandardCharsets.UTF_8), 1, true);

    private final Stage stage;
    private final Air air;
    private final String unit;
    private final Air.Path path;
    private final Map<String, Message> retained = new LinkedHashMap<>();
    private final Deque<Message> stored = new ArrayDeque<>();
    private Receiver receiver;
    private int connection;
    private boolean up;
    private boolean outOfReach;
    private long lastUpMicros;
    private long lastDownMicros;

    TwinLink(Stage stage, Air air, String unit, Air.Path path) {
        this.stage = stage;
        this.air = air;
        this.unit = unit;
        this.path = path;
    }

    @Override
    public void open(Receiver to) {
        receiver = to;
        stage.afterMicros(RECONNECT_MICROS, this::comeUp);
    }

    private void comeUp() {
        if (up || outOfReach) {
            return;
        }
        up = true;
        connection++;
        receiver.up();
        retained.values().forEach(this::send);
        while (!stored.isEmpty()) {
            send(stored.removeFirst());
        }
    }

    @Override
    public boolean publish(Message message, Runnable handed) {
        if (!up) {
            return false;
        }
        int by = connection;
        lastUpMicros = Math.max(lastUpMicros + 1, stage.nowMicros() + path.upMicros());
        stage.at(lastUpMicros, () -> arriveUp(by, message, handed));
        return true;
    }

    private void arriveUp(int by, Message message, Runnable handed) {
        if (by != connection || !up) {
            return;
        }
        air.atBroker(unit, message, () -> {});
        stage.afterMicros(
                path.downMicros(),
                () -> {
                    if (by == connection && up) {
                        handed.run();
                    }
                });
    }

    /** A message of the gateway: sent now, or kept for a unit that is out of reach. */
    void fromBroker(Message message) {
        if (message.retained()) {
            retained.put(message.name(), message);
        }
        if (up) {
            send(message);
        } else if (message.qos() > 0 && !message.retained()) {
            stored.addLast(message);
        }
    }

    private void send(Message message) {
        int by = connection;
        lastDownMicros = Math.max(lastDownMicros + 1, stage.nowMicros() + path.downMicros());
        stage.at(
                lastDownMicros,
                () -> {
                    if (by == connection && up) {
                        receiver.arrived(message.name(), message.payload());
                    }
                });
    }

    @Override
    public void breakOff() {
        if (!up) {
            return;
        }
        up = false;
        int broken = connection;
        receiver.down();
        stage.afterMicros(Air.WILL_MICROS, () -> noticeSilence(broken));
        if (!outOfReach) {
            stage.afterMicros(RECONNECT_MICROS, this::comeUp);
        }
    }

    private void noticeSilence(int broken) {
        if (broken == connection && !up) {
            air.atBroker(unit, WILL, () -> {});
        }
    }

    /** Out of reach for so long; it connects again afterwards. */
    void loseFor(long micros) {
        outOfReach = true;
        breakOff();
        stage.afterMicros(
                micros,
                () -> {
                    outOfReach = false;
                    comeUp();
                });
    }

    @Override
    public void close() {
        up = false;
        outOfReach = true;
    }
}
