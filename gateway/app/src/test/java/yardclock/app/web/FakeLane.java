package yardclock.app.web;

import yardclock.app.lane.Inbox;
import yardclock.app.lane.Questions;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Input;
import yardclock.core.engine.Outcome;
import yardclock.core.ruling.Verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Function;

/** A lane without rules: one thread that takes inputs and gives the verdict the test wants. */
final class FakeLane implements Inbox, Questions, AutoCloseable {
    private final ExecutorService thread =
            Executors.newSingleThreadExecutor(work -> new Thread(work, "fake-lane"));
    private final List<Input> taken = new ArrayList<>();
    volatile Function<Input, Verdict> rules = input -> Verdict.accepted(1);
    volatile String lost;
    volatile boolean full;
    volatile boolean silent;

    @Override
    public boolean offer(List<? extends Input> inputs, Consumer<Receipt> done) {
        if (full) {
            return false;
        }
        if (!silent) {
            thread.execute(() -> done.accept(take(inputs)));
        }
        return true;
    }

    private Receipt take(List<? extends Input> inputs) {
        if (lost != null) {
            return new Receipt(List.of(), lost);
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (Input input : inputs) {
            synchronized (taken) {
                taken.add(input);
            }
            Verdict verdict = rules.apply(input);
            outcomes.add(new Outcome(List.of(), List.of(), verdict, OptionalLong.empty()));
        }
        return new Receipt(outcomes, null);
    }

    List<Input> taken() {
        synchronized (taken) {
            return List.copyOf(taken);
        }
    }

    /** Questions get no engine here; the fakes that ask do not look at it. */
    @Override
    public <T> CompletableFuture<T> ask(Function<Engine, T> question) {
        return CompletableFuture.supplyAsync(() -> question.apply(null), thread);
    }

    void onThread(Runnable work) {
        CompletableFuture.runAsync(work, thread).join();
    }

    @Override
    public void close() {
        thread.shutdownNow();
    }
}
