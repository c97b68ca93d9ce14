package yardclock.app.pins;

import yardclock.core.engine.Input;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/**
 * The unit's edges until the journal kept them. Listeners add, one thread takes; safe from any.
 *
 * <p>When it is full the newest edge is given up. Its number is used up all the same, so that the
 * gap shows.
 */
final class EdgeStore {
    /** Four hours at one edge a second, as the field-unit contract asks of every unit. */
    static final int EDGES = 14_400;

    /** As many as a unit may put into one message. */
    static final int BATCH = 32;

    private final String unit;
    private final String boot;
    private final int capacity;
    private final Deque<Input.Edge> edges = new ArrayDeque<>();

    /** Wakes the one that takes. A permit too many costs it a look at what is there already. */
    private final Semaphore came = new Semaphore(0);

    private long nextSeq;
    private long lastTick;

    EdgeStore(String unit, String boot, int capacity) {
        this.unit = unit;
        this.boot = boot;
        this.capacity = capacity;
    }

    /**
     * Numbers an edge and stores it.
     *
     * @param tick taken before the call. Two listeners may come in the other order than they took
     *     their times, microseconds apart; the later number then gets the later of the two ticks,
     *     because ticks never run backwards within a boot.
     */
    synchronized void add(int sensor, int state, long tick) {
        lastTick = Math.max(lastTick, tick);
        long seq = nextSeq++;
        if (edges.size() < capacity) {
            edges.addLast(new Input.Edge(unit, boot, seq, sensor, state, lastTick));
            came.release();
        }
    }

    /** The oldest edges, which stay in the store; none when none came within the time. */
    List<Input.Edge> oldest(long waitMillis) throws InterruptedException {
        if (fill() == 0) {
            var unused = came.tryAcquire(waitMillis, TimeUnit.MILLISECONDS);
        }
        came.drainPermits();
        return oldest();
    }

    private synchronized List<Input.Edge> oldest() {
        List<Input.Edge> oldest = new ArrayList<>();
        for (Input.Edge edge : edges) {
            if (oldest.size() == BATCH) {
                break;
            }
            oldest.add(edge);
        }
        return oldest;
    }

    /** The journal has the oldest so many. */
    synchronized void drop(int count) {
        for (int i = 0; i < count; i++) {
            edges.removeFirst();
        }
    }

    synchronized int fill() {
        return edges.size();
    }

    synchronized long nextSeq() {
        return nextSeq;
    }
}
