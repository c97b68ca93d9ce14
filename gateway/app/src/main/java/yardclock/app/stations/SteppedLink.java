package yardclock.app.stations;

import org.eclipse.paho.client.mqttv3.MqttMessage;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.EffectSink;
import yardclock.app.lane.Inbox;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.fact.Effect;

import java.time.Duration;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * The gateway's end of the link to the field units without a thread and without a broker, for days
 * that are simulated in virtual time. It decodes, refuses, offers and asks as {@link StationLink}
 * does. Used from one thread.
 */
public final class SteppedLink implements EffectSink {
    private final GatewayClock clock;
    private final Exchanges exchanges;
    private final Arrivals arrivals;
    private final Broker broker;

    /** Carries what the gateway publishes. */
    public interface Broker {
        void publish(String topic, byte[] payload, int qos, boolean retained);
    }

    public SteppedLink(
            ExamPlan plan, Inbox inbox, GatewayClock clock, RandomGenerator random, Broker broker) {
        this.clock = clock;
        this.broker = broker;
        this.exchanges =
                new Exchanges(
                        clock.speed(), random, () -> HexFormat.of().toHexDigits(random.nextLong()));
        List<String> units = plan.fieldUnits().stream().map(FieldUnit::id).toList();
        this.arrivals =
                new Arrivals(
                        new UnitMessages(units), exchanges, inbox, clock, Duration.ZERO.toNanos());
    }

    /**
     * One message of a unit.
     *
     * @param acknowledged run when it is committed or refused; until then it may be sent again
     */
    public void arrived(String topic, byte[] payload, int qos, Runnable acknowledged) {
        MqttMessage message = new MqttMessage(payload);
        message.setQos(qos);
        arrivals.arrived(new Once(acknowledged), topic, message);
    }

    @Override
    public void release(List<Effect> effects) {
        effects.forEach(effect -> publish(Outgoing.of(effect)));
    }

    private void publish(Outgoing message) {
        broker.publish(message.topic(), message.payload(), message.qos(), message.retained());
    }

    /** Asks whoever is due for the time; for so many nanoseconds of the clock nobody else is. */
    public long ask(long mostNanos) {
        Optional<String> unit = exchanges.due(clock.realNanos());
        while (unit.isPresent()) {
            long gatewayMicros = clock.now().micros();
            String id = exchanges.ask(unit.get(), gatewayMicros, clock.realNanos());
            publish(Outgoing.ask(unit.get(), id, gatewayMicros));
            unit = exchanges.due(clock.realNanos());
        }
        return exchanges.nanosToNext(clock.realNanos(), mostNanos);
    }

    /** The wire of one message: nothing of it outlives the message. */
    private static final class Once implements Wire {
        private final Runnable acknowledged;
        private boolean over;

        Once(Runnable acknowledged) {
            this.acknowledged = acknowledged;
        }

        @Override
        public boolean acknowledge(MqttMessage message) {
            acknowledged.run();
            return true;
        }

        @Override
        public void giveUp(String why) {
            over = true;
        }

        @Override
        public boolean isOver() {
            return over;
        }
    }
}
