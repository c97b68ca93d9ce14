package yardclock.app.stations;

import org.eclipse.paho.client.mqttv3.MqttMessage;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.Inbox;
import yardclock.core.engine.Input;

import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;

/**
 * What happens to a message that arrives: stamped, decoded, offered, and acknowledged when it is
 * committed or refused.
 *
 * <p>Runs on Paho's thread; only receipts come on the lane's. When the inbox is full the thread
 * waits a little, which holds the broker back through the socket; when that does not help, or the
 * journal loses a batch, the connection is given up and nothing more is taken from it. The broker
 * then delivers everything unacknowledged again, in order.
 *
 * <p>A retained sign of life is as old as it may be and would make a dead unit look alive, so it is
 * passed over; a retained last will still is news.
 */
final class Arrivals implements Connection.Arrivals {
    private static final Logger LOG = LoggerFactory.getLogger(Arrivals.class);
    private static final long FULL_PAUSE_NANOS = 2_000_000;

    private final UnitMessages messages;
    private final Exchanges exchanges;
    private final RejectionLog rejections;
    private final Inbox inbox;
    private final GatewayClock clock;
    private final long patienceNanos;
    private final AtomicLong received = new AtomicLong();
    private final AtomicLong acknowledged = new AtomicLong();

    Arrivals(
            UnitMessages messages,
            Exchanges exchanges,
            Inbox inbox,
            GatewayClock clock,
            long patienceNanos) {
        this.messages = messages;
        this.exchanges = exchanges;
        this.rejections = new RejectionLog();
        this.inbox = inbox;
        this.clock = clock;
        this.patienceNanos = patienceNanos;
    }

    RejectionLog rejections() {
        return rejections;
    }

    long received() {
        return received.get();
    }

    long acknowledged() {
        return acknowledged.get();
    }

    @Override
    public void arrived(Wire wire, String topic, MqttMessage message) {
        long gatewayMicros = clock.now().micros();
        if (wire.isOver()) {
            return;
        }
        received.incrementAndGet();
        try {
            take(new Arrival(wire, topic, message, gatewayMicros));
        } catch (RuntimeException impossible) {
            LOG.error(
                    "a message on {} broke the decoder; it stays unacknowledged",
                    topic,
                    impossible);
            wire.giveUp("a message could not be handled: " + impossible.getMessage());
        }
    }

    private void take(Arrival arrival) {
        Decoded decoded = decode(arrival);
        for (Input input : decoded.inputs()) {
            noteSignOfLife(input);
        }
        if (decoded.inputs().isEmpty()) {
            finish(arrival, decoded.rejections());
        } else if (!offer(arrival, decoded)) {
            full(arrival);
        }
    }

    private Decoded decode(Arrival arrival) {
        boolean replayed = arrival.message.isRetained();
        boolean mayBeRetained =
                arrival.topic.endsWith("/health") || arrival.topic.endsWith("/applied");
        if (replayed && !mayBeRetained) {
            return Decoded.refused(
                    RejectionReason.RETAINED, "a retained message of this kind is never taken");
        }
        Decoded decoded = messages.decode(arrival.topic, arrival.message.getPayload());
        if (replayed && decoded.inputs().stream().anyMatch(Input.Health.class::isInstance)) {
            return Decoded.NOTHING;
        }
        return decoded.answer()
                .map(a -> exchanges.answered(a, arrival.gatewayMicros, clock.realNanos()))
                .orElse(decoded);
    }

    private void noteSignOfLife(Input input) {
        if (input instanceof Input.Health health) {
            exchanges.heard(health.unit(), health.boot(), clock.realNanos());
        } else if (input instanceof Input.UnitDown down) {
            exchanges.down(down.unit());
        }
    }

    private boolean offer(Arrival arrival, Decoded decoded) {
        long start = clock.realNanos();
        boolean mayWait = arrival.message.getQos() > 0;
        while (!inbox.offer(decoded.inputs(), r -> receipt(arrival, decoded.rejections(), r))) {
            boolean patient = mayWait && clock.realNanos() - start < patienceNanos;
            if (!patient || arrival.wire.isOver()) {
                return false;
            }
            LockSupport.parkNanos(FULL_PAUSE_NANOS);
        }
        return true;
    }

    private void receipt(Arrival arrival, List<Rejection> refused, Inbox.Receipt receipt) {
        if (receipt.isKept()) {
            finish(arrival, refused);
        } else if (arrival.message.getQos() > 0) {
            arrival.wire.giveUp("the journal could not keep a message: " + receipt.lost());
        }
    }

    private void full(Arrival arrival) {
        if (arrival.message.getQos() == 0) {
            Rejection full = new Rejection(RejectionReason.INBOX_FULL, "the inbox is full");
            finish(arrival, List.of(full));
        } else {
            arrival.wire.giveUp("the inbox is full");
        }
    }

    /** Refusals are counted with the acknowledgement, so that a redelivery counts them once. */
    private void finish(Arrival arrival, List<Rejection> refused) {
        boolean comesAgain =
                arrival.message.getQos() > 0 && !arrival.wire.acknowledge(arrival.message);
        if (comesAgain) {
            return;
        }
        acknowledged.incrementAndGet();
        for (Rejection rejection : refused) {
            rejections.add(arrival.gatewayMicros, arrival.topic, rejection);
        }
    }

    private record Arrival(Wire wire, String topic, MqttMessage message, long gatewayMicros) {}
}
