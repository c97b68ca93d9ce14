package yardclock.app.stations;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;

/**
 * What waits to be published. Any thread puts, one thread takes; putting never waits.
 *
 * <p>Retained messages are standing: only the newest of a topic counts, and all of them are sent
 * again on a new link. Others pass once; when too many wait, the oldest is dropped and counted.
 */
final class Outbox {
    /** Twelve units with every output and a resend each; more means that nobody takes. */
    static final int PASSING_MAX = 256;

    private final ReentrantLock lock = new ReentrantLock();
    private final Condition filled = lock.newCondition();
    private final Map<String, Outgoing> standing = new LinkedHashMap<>();
    private final Set<String> unsent = new LinkedHashSet<>();
    private final Deque<Outgoing> passing = new ArrayDeque<>();
    private long dropped;
    private boolean awake;

    void put(Outgoing message) {
        lock.lock();
        try {
            if (message.retained()) {
                standing.put(message.topic(), message);
                unsent.add(message.topic());
            } else {
                if (passing.size() == PASSING_MAX) {
                    passing.removeFirst();
                    dropped++;
                }
                passing.addLast(message);
            }
            filled.signal();
        } finally {
            lock.unlock();
        }
    }

    /** What could not be sent. A standing message is left out: the next link sends all of them. */
    void putBack(Outgoing message) {
        if (!message.retained() && message.qos() > 0) {
            put(message);
        }
    }

    /** A new link: all that stands is sent again; what was only for the moment is over. */
    void linkUp() {
        lock.lock();
        try {
            unsent.addAll(standing.keySet());
            passing.removeIf(message -> message.qos() == 0);
        } finally {
            lock.unlock();
        }
    }

    /** The next message, or null when none came within the time. */
    Outgoing poll(long waitNanos) throws InterruptedException {
        long left = Math.min(waitNanos, TimeUnit.SECONDS.toNanos(1));
        lock.lockInterruptibly();
        try {
            while (passing.isEmpty() && unsent.isEmpty()) {
                if (left <= 0 || awake) {
                    awake = false;
                    return null;
                }
                left = filled.awaitNanos(left);
            }
            return passing.isEmpty() ? nextStanding() : passing.removeFirst();
        } finally {
            lock.unlock();
        }
    }

    /** Lets the taker go, once, without a message. */
    void wake() {
        lock.lock();
        try {
            awake = true;
            filled.signal();
        } finally {
            lock.unlock();
        }
    }

    long dropped() {
        lock.lock();
        try {
            return dropped;
        } finally {
            lock.unlock();
        }
    }

    private Outgoing nextStanding() {
        Iterator<String> topics = unsent.iterator();
        String topic = topics.next();
        topics.remove();
        return standing.get(topic);
    }
}
