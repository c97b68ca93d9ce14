package yardclock.app.web;

import yardclock.app.clock.GatewayClock;
import yardclock.app.lane.FeedRing;
import yardclock.app.lane.FrameSink;
import yardclock.app.lane.Inbox;
import yardclock.app.lane.Questions;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Engine.View;
import yardclock.core.engine.Entry;
import yardclock.core.engine.Input;
import yardclock.core.engine.Outcome;
import yardclock.core.time.GatewayTime;
import yardclock.core.time.WallTime;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicLong;
import java.util.function.Consumer;
import java.util.function.Function;

/** The real rules on one thread, without a journal, in a gateway time that the test moves. */
final class RulesLane implements Inbox, Questions, GatewayClock, AutoCloseable {
    final FeedRing feed = new FeedRing();
    final AtomicLong micros = new AtomicLong(1_000_000);
    volatile FrameSink frames = (engine, view) -> {};
    private final Engine engine = new Engine();
    private final ExecutorService thread =
            Executors.newSingleThreadExecutor(work -> new Thread(work, "rules-lane"));
    private long entries;

    @Override
    public boolean offer(List<? extends Input> inputs, Consumer<Receipt> done) {
        thread.execute(() -> done.accept(take(inputs)));
        return true;
    }

    private Receipt take(List<? extends Input> inputs) {
        List<Outcome> outcomes = new ArrayList<>();
        for (Input input : inputs) {
            Entry entry = new Entry(++entries, micros.get(), input);
            Outcome outcome = engine.apply(entry);
            feed.add(entry, outcome.facts());
            outcomes.add(outcome);
        }
        if (engine.plan().isPresent()) {
            frames.accept(engine, new View(micros.get(), List.of()));
        }
        return new Receipt(outcomes, null);
    }

    /** Offers an input and waits until it is applied. */
    void give(Input input) {
        CompletableFuture<Receipt> done = new CompletableFuture<>();
        offer(input, done::complete);
        done.join();
    }

    /** Lets gateway time go on. */
    void pass(long millis) {
        micros.addAndGet(millis * 1_000);
    }

    @Override
    public <T> CompletableFuture<T> ask(Function<Engine, T> question) {
        return CompletableFuture.supplyAsync(() -> question.apply(engine), thread);
    }

    @Override
    public GatewayTime now() {
        return new GatewayTime(micros.get());
    }

    @Override
    public WallTime wall() {
        return new WallTime(1_790_000_000_000_000L + micros.get());
    }

    @Override
    public int speed() {
        return 1;
    }

    @Override
    public long realNanos() {
        return System.nanoTime();
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }
}
