package yardclock.app.stations;

import org.eclipse.paho.client.mqttv3.MqttException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.EffectSink;
import yardclock.app.lane.Inbox;
import yardclock.app.lane.Troubles;
import yardclock.core.course.ExamPlan;
import yardclock.core.course.FieldUnit;
import yardclock.core.fact.Effect;

import java.security.SecureRandom;
import java.time.Duration;
import java.util.HexFormat;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;

/**
 * The gateway's end of the MQTT link to the field units.
 *
 * <p>One thread owns the link: it connects, and as long as that lasts, publishes what waits and
 * asks for the time; when the link is over, it waits a growing while and starts again, for ever.
 * {@link #release} and the counts may be called from any thread. Start it after the lane: a
 * broker's backlog comes in with the first connection. Waits are real time, exchanges are exam
 * time.
 */
public final class StationLink implements EffectSink, AutoCloseable {
    /** The source of the trouble that is raised while there is no link. */
    public static final String TROUBLE = "broker";

    private static final Logger LOG = LoggerFactory.getLogger(StationLink.class);
    private static final long ROUND_NANOS = TimeUnit.MILLISECONDS.toNanos(200);
    private static final long SUBSCRIBING_NANOS = TimeUnit.MILLISECONDS.toNanos(20);
    private static final long CLOSE_MILLIS = 3_000;
    private static final long STEADY_NANOS = TimeUnit.SECONDS.toNanos(5);

    private final LinkSettings settings;
    private final GatewayClock clock;
    private final Outbox outbox = new Outbox();
    private final Exchanges exchanges;
    private final Arrivals arrivals;
    private final CountDownLatch closing = new CountDownLatch(1);
    private final CountDownLatch linked = new CountDownLatch(1);
    private final Thread thread = new Thread(this::run, "station-link");
    private final Troubles troubles;
    private volatile boolean up;
    private final AtomicLong asks = new AtomicLong();

    /**
     * @param received messages that reached the gateway, redeliveries included
     * @param acknowledged messages that are done with: committed or refused, and acknowledged
     * @param asks exchanges asked
     * @param dropped messages to units that never went out because too many waited
     */
    public record Counts(long received, long acknowledged, long asks, long dropped) {}

    public StationLink(
            LinkSettings settings,
            ExamPlan plan,
            Inbox inbox,
            GatewayClock clock,
            Troubles troubles) {
        this.settings = settings;
        this.clock = clock;
        this.troubles = troubles;
        SecureRandom random = new SecureRandom();
        exchanges =
                new Exchanges(
                        clock.speed(), random, () -> HexFormat.of().toHexDigits(random.nextLong()));
        List<String> units = plan.fieldUnits().stream().map(FieldUnit::id).toList();
        arrivals =
                new Arrivals(
                        new UnitMessages(units),
                        exchanges,
                        inbox,
                        clock,
                        settings.fullInboxPatience().toNanos());
        troubles.raise(TROUBLE, "The broker at " + settings.uri() + " has not been reached yet.");
        for (FieldUnit unit : plan.fieldUnits()) {
            outbox.put(Outgoing.settings(unit.id(), plan.name().version(), unit.sensors()));
        }
    }

    public void start() {
        thread.start();
    }

    /** Asks the world for them, now or when the link is back. Never waits. */
    @Override
    public void release(List<Effect> effects) {
        effects.forEach(effect -> outbox.put(Outgoing.of(effect)));
    }

    /**
     * Waits for the first link. What units say to a broker before the gateway's first subscription
     * reaches nobody, until the gap is seen and asked for again.
     *
     * @return false when there was none within the time
     */
    public boolean awaitUp(Duration longest) throws InterruptedException {
        return linked.await(longest.toMillis(), TimeUnit.MILLISECONDS);
    }

    public boolean isUp() {
        return up;
    }

    public RejectionLog rejections() {
        return arrivals.rejections();
    }

    public Counts counts() {
        return new Counts(
                arrivals.received(), arrivals.acknowledged(), asks.get(), outbox.dropped());
    }

    /** Ends the link. What the broker still holds is delivered after the next start. */
    @Override
    public void close() {
        closing.countDown();
        outbox.wake();
        try {
            thread.join(CLOSE_MILLIS);
            thread.interrupt();
            thread.join(CLOSE_MILLIS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void run() {
        long waitMillis = LinkSettings.FIRST_RETRY.toMillis();
        while (closing.getCount() > 0) {
            long start = clock.realNanos();
            exchanges.linkUp();
            try (Connection connection = new Connection(settings, arrivals)) {
                serve(connection);
                say("The link to the broker at " + settings.uri() + " ended: " + connection.end());
            } catch (MqttException e) {
                say("The broker at " + settings.uri() + " is not there: " + Connection.words(e));
            } catch (InterruptedException e) {
                break;
            } finally {
                up = false;
            }
            boolean wasSteady = clock.realNanos() - start > STEADY_NANOS;
            waitMillis =
                    wasSteady
                            ? LinkSettings.FIRST_RETRY.toMillis()
                            : Math.min(2 * waitMillis, LinkSettings.LONGEST_RETRY.toMillis());
            if (isClosedWithin(waitMillis)) {
                break;
            }
        }
    }

    private boolean isClosedWithin(long millis) {
        try {
            return closing.await(millis, TimeUnit.MILLISECONDS);
        } catch (InterruptedException e) {
            return true;
        }
    }

    private void serve(Connection connection) throws InterruptedException {
        outbox.linkUp();
        while (closing.getCount() > 0 && !connection.isOver()) {
            if (!up && connection.isSubscribed()) {
                up = true;
                linked.countDown();
                troubles.clear(TROUBLE);
                LOG.info("linked to the broker as {}", settings);
            }
            askWhoeverIsDue(connection);
            long most = up ? ROUND_NANOS : SUBSCRIBING_NANOS;
            Outgoing message = outbox.poll(exchanges.nanosToNext(clock.realNanos(), most));
            if (message != null && !(connection.reserve() && connection.publish(message))) {
                outbox.putBack(message);
            }
        }
    }

    /** The stamp is taken last, so that waiting for our turn is not taken for time on the way. */
    private void askWhoeverIsDue(Connection connection) throws InterruptedException {
        var unit = exchanges.due(clock.realNanos());
        if (unit.isPresent() && connection.reserve()) {
            long gatewayMicros = clock.now().micros();
            String id = exchanges.ask(unit.get(), gatewayMicros, clock.realNanos());
            connection.publish(Outgoing.ask(unit.get(), id, gatewayMicros));
            asks.incrementAndGet();
        }
    }

    private void say(String sentence) {
        if (closing.getCount() > 0 && !sentence.equals(troubles.of(TROUBLE))) {
            LOG.warn("{}", sentence);
            troubles.raise(TROUBLE, sentence);
        }
    }
}
