package yardclock.app.lane;

import yardclock.core.engine.Engine;
import yardclock.core.engine.Input;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Condition;
import java.util.concurrent.locks.ReentrantLock;
import java.util.function.Consumer;

/** What waits for the lane: offers of inputs, and questions. Any thread adds, the lane takes. */
final class Waiting {
    /** Inputs that belong together, who is to be told, and when (real time) they came. */
    record Offer(List<Input> inputs, Consumer<Inbox.Receipt> done, long realNanos) {}

    private final ReentrantLock lock = new ReentrantLock();
    private final Condition somethingCame = lock.newCondition();
    private final ArrayDeque<Offer> offers = new ArrayDeque<>();
    private final ArrayDeque<Consumer<Engine>> questions = new ArrayDeque<>();
    private final int capacity;
    private int inputs;
    private boolean closed;

    Waiting(int capacity) {
        this.capacity = capacity;
    }

    /** Whether there was room; all of the offer or nothing of it is taken. */
    boolean add(Offer offer) {
        lock.lock();
        try {
            if (closed || inputs + offer.inputs().size() > capacity) {
                return false;
            }
            inputs += offer.inputs().size();
            offers.addLast(offer);
            somethingCame.signal();
            return true;
        } finally {
            lock.unlock();
        }
    }

    boolean add(Consumer<Engine> question) {
        lock.lock();
        try {
            if (closed || questions.size() >= Limits.QUESTIONS) {
                return false;
            }
            questions.addLast(question);
            somethingCame.signal();
            return true;
        } finally {
            lock.unlock();
        }
    }

    /** The oldest offers, whole ones, of at most so many inputs together. */
    List<Offer> take(int inputsMax) {
        lock.lock();
        try {
            List<Offer> taken = new ArrayList<>();
            int left = inputsMax;
            while (!offers.isEmpty() && offers.getFirst().inputs().size() <= left) {
                Offer offer = offers.removeFirst();
                left -= offer.inputs().size();
                inputs -= offer.inputs().size();
                taken.add(offer);
            }
            return taken;
        } finally {
            lock.unlock();
        }
    }

    List<Consumer<Engine>> takeQuestions() {
        lock.lock();
        try {
            List<Consumer<Engine>> taken = new ArrayList<>(questions);
            questions.clear();
            return taken;
        } finally {
            lock.unlock();
        }
    }

    /** Waits until something is there, the waiting is over, or the door was closed. */
    void await(long nanos) throws InterruptedException {
        lock.lock();
        try {
            long left = nanos;
            while (left > 0 && offers.isEmpty() && questions.isEmpty() && !closed) {
                left = somethingCame.awaitNanos(left);
            }
        } finally {
            lock.unlock();
        }
    }

    /** Takes nothing more; what is inside can still be taken out. */
    void close() {
        lock.lock();
        try {
            closed = true;
            somethingCame.signal();
        } finally {
            lock.unlock();
        }
    }

    boolean isClosed() {
        lock.lock();
        try {
            return closed;
        } finally {
            lock.unlock();
        }
    }

    int depth() {
        lock.lock();
        try {
            return inputs;
        } finally {
            lock.unlock();
        }
    }

    static long millis(int millis) {
        return TimeUnit.MILLISECONDS.toNanos(millis);
    }
}
