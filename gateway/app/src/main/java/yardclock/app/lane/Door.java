package yardclock.app.lane;

import yardclock.app.clock.GatewayClock;
import yardclock.core.engine.Engine;
import yardclock.core.engine.Input;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Function;

/** The bounded way in to a lane: offers and questions, from any thread. */
final class Door implements Inbox, Questions {
    private final Waiting waiting;
    private final GatewayClock clock;

    Door(Waiting waiting, GatewayClock clock) {
        this.waiting = waiting;
        this.clock = clock;
    }

    @Override
    public boolean offer(List<? extends Input> inputs, Consumer<Receipt> done) {
        if (inputs.isEmpty() || inputs.size() > Limits.BATCH_INPUTS) {
            throw new IllegalArgumentException(
                    "an offer has 1 to " + Limits.BATCH_INPUTS + " inputs, not " + inputs.size());
        }
        return waiting.add(new Waiting.Offer(List.copyOf(inputs), done, clock.realNanos()));
    }

    @Override
    public <T> CompletableFuture<T> ask(Function<Engine, T> question) {
        CompletableFuture<T> answer = new CompletableFuture<>();
        boolean taken = waiting.add(engine -> answer(answer, question, engine));
        if (!taken) {
            answer.completeExceptionally(
                    new LaneBusyException("the lane takes no more questions at the moment"));
        }
        return answer;
    }

    private static <T> void answer(
            CompletableFuture<T> answer, Function<Engine, T> question, Engine engine) {
        if (engine == null) {
            answer.completeExceptionally(new LaneBusyException("the lane has ended"));
            return;
        }
        try {
            answer.complete(question.apply(engine));
        } catch (RuntimeException e) {
            answer.completeExceptionally(e);
        }
    }
}
