package yardclock.app.stations;

import yardclock.app.lane.Inbox;
import yardclock.core.engine.Input;
import yardclock.core.engine.Outcome;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.ArrayBlockingQueue;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;

/**
 * A lane on the bench: a bounded inbox and a thread that commits to a list, which outlives any
 * link.
 *
 * <p>It can be told to hold its commits back, or to lose them.
 */
final class BenchLane implements Inbox, AutoCloseable {
    private static final Outcome NOTHING =
            new Outcome(List.of(), List.of(), null, OptionalLong.empty());

    private final BlockingQueue<Offer> inbox;
    private final List<Input> journal = new CopyOnWriteArrayList<>();
    private final Semaphore mayCommit = new Semaphore(0);
    private final Thread thread = new Thread(this::run, "bench-lane");
    private volatile boolean isHeld;
    private volatile String trouble;

    private record Offer(List<? extends Input> inputs, Consumer<Receipt> done) {}

    BenchLane(int capacity) {
        inbox = new ArrayBlockingQueue<>(capacity);
        thread.start();
    }

    @Override
    public boolean offer(List<? extends Input> inputs, Consumer<Receipt> done) {
        return inbox.offer(new Offer(inputs, done));
    }

    void hold() {
        isHeld = true;
    }

    void resume() {
        isHeld = false;
        mayCommit.release();
    }

    void lose(String why) {
        trouble = why;
    }

    List<Input> journal() {
        return journal;
    }

    <T extends Input> List<T> journal(Class<T> kind) {
        return journal.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    int waiting() {
        return inbox.size();
    }

    private void run() {
        try {
            while (true) {
                Offer offer = inbox.poll(1, TimeUnit.HOURS);
                while (isHeld) {
                    mayCommit.acquire();
                }
                commit(offer);
            }
        } catch (InterruptedException closed) {
            Thread.currentThread().interrupt();
        }
    }

    private void commit(Offer offer) {
        String why = trouble;
        if (why == null) {
            journal.addAll(offer.inputs);
            offer.done.accept(new Receipt(outcomes(offer), null));
        } else {
            offer.done.accept(new Receipt(List.of(), why));
        }
    }

    private static List<Outcome> outcomes(Offer offer) {
        List<Outcome> outcomes = new ArrayList<>();
        offer.inputs.forEach(input -> outcomes.add(NOTHING));
        return outcomes;
    }

    @Override
    public void close() {
        thread.interrupt();
    }
}
