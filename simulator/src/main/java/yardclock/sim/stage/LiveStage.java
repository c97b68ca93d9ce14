package yardclock.sim.stage;

import org.slf4j.Logger;
import org.slf4j.LoggerFactory;

import java.util.PriorityQueue;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;

/**
 * A stage that follows the machine's monotonic clock. Safe from any thread; owns one thread from
 * {@link #begin} to {@link #close}.
 *
 * <p>An act that throws is logged and the stage goes on: one stumbling proctor does not end the
 * day.
 */
public final class LiveStage implements Stage, AutoCloseable {
    private static final Logger LOG = LoggerFactory.getLogger(LiveStage.class);

    private final int speed;
    private final long beganNanos = System.nanoTime();
    private final ReentrantLock lock = new ReentrantLock();
    private final Condition changed = lock.newCondition();
    private final PriorityQueue<PlannedAct> acts = new PriorityQueue<>();
    private final Thread thread = new Thread(this::run, "yard");
    private long nextOrder;
    private boolean closed;

    public LiveStage(int speed) {
        this.speed = speed;
        thread.setDaemon(true);
    }

    public void begin() {
        thread.start();
    }

    @Override
    public long nowMicros() {
        return (System.nanoTime() - beganNanos) / 1_000 * speed;
    }

    @Override
    public int speed() {
        return speed;
    }

    @Override
    public Planned at(long examMicros, Runnable what) {
        lock.lock();
        try {
            PlannedAct act = new PlannedAct(examMicros, nextOrder++, what);
            acts.add(act);
            changed.signal();
            return act;
        } finally {
            lock.unlock();
        }
    }

    private void run() {
        for (PlannedAct act = await(); act != null; act = await()) {
            try {
                act.play();
            } catch (RuntimeException e) {
                LOG.error("an act of the yard failed", e);
            }
        }
    }

    /** The next act when it is due, or null after the end. */
    private PlannedAct await() {
        lock.lock();
        try {
            while (!closed) {
                PlannedAct first = acts.peek();
                long early = first == null ? Long.MAX_VALUE : first.examMicros() - nowMicros();
                if (early <= 0) {
                    return acts.poll();
                }
                if (first == null) {
                    changed.await();
                } else {
                    long ignored = changed.awaitNanos(early * 1_000 / speed + 1);
                }
            }
            return null;
        } catch (InterruptedException e) {
            return null;
        } finally {
            lock.unlock();
        }
    }

    @Override
    public void close() {
        lock.lock();
        try {
            closed = true;
            changed.signalAll();
        } finally {
            lock.unlock();
        }
    }
}
