package yardclock.app.lane;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import yardclock.app.clock.GatewayClock;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Input;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The one thread that owns the state, and the door to it.
 *
 * <p>Offers and questions wait from the moment it is made, and are worked on from {@link #start} to
 * {@link #close}. What the lane does is in {@code Duty}; this class lends it a thread. {@link
 * #offer}, {@link #ask}, {@link #depth} and {@link #entries} may be called from any thread.
 */
public final class Lane implements Inbox, Questions, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(Lane.class);

    private final LaneParts parts;
    private final GatewayClock clock;
    private final Waiting waiting;
    private final Door door;
    private Thread thread;

    public Lane(LaneParts parts) {
        this(parts, Limits.INBOX_INPUTS);
    }

    Lane(LaneParts parts, int inboxInputs) {
        this.parts = parts;
        this.clock = parts.clock();
        this.waiting = new Waiting(inboxInputs);
        this.door = new Door(waiting, clock);
    }

    /**
     * Starts the thread.
     *
     * @param dead called once if the lane ends by itself, which is a fault of the program: the
     *     process must end, so that it can be started again
     */
    public void start(LaneSinks sinks, Opening opening, Consumer<Throwable> dead) {
        Duty duty = new Duty(parts, waiting, sinks, opening);
        thread = new Thread(() -> run(duty, dead), "lane");
        thread.start();
    }

    @Override
    public boolean offer(List<? extends Input> inputs, Consumer<Receipt> done) {
        return door.offer(inputs, done);
    }

    @Override
    public <T> CompletableFuture<T> ask(Function<Engine, T> question) {
        return door.ask(question);
    }

    /** How many inputs wait. */
    public int depth() {
        return waiting.depth();
    }

    /** The number of the newest entry that was applied or collected. */
    public long entries() {
        return parts.state().lastEntry();
    }

    /**
     * Whether a stop that came now would be kept and carried out: the journal can be written and
     * the rules run. To be asked on the lane's thread, whose turning is the rest of the answer.
     */
    public boolean takesStops() {
        return parts.troubles().of(Duty.TROUBLE).equals("ok") && !parts.state().isCollectingOnly();
    }

    private void run(Duty duty, Consumer<Throwable> dead) {
        try {
            while (!waiting.isClosed()) {
                long nanos = duty.turn();
                waiting.await(nanos);
            }
            drain(duty);
        } catch (Throwable e) {
            LOG.error("The lane has ended; nothing is taken in any more", e);
            waiting.close();
            dead.accept(e);
        }
    }

    private void drain(Duty duty) {
        long begun = clock.realNanos();
        while (waiting.depth() > 0
                && clock.realNanos() - begun < Waiting.millis(Limits.STOP_MILLIS)) {
            duty.turn();
        }
        duty.refuse(waiting.take(Integer.MAX_VALUE), "The gateway is stopping.");
        waiting.takeQuestions().forEach(question -> question.accept(null));
    }

    /** Takes nothing more, keeps and applies what waits already, then ends the thread. */
    @Override
    public void close() throws InterruptedException {
        waiting.close();
        if (thread != null) {
            thread.join();
        }
    }
}
