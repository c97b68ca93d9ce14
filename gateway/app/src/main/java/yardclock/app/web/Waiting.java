package yardclock.app.web;

import yardclock.app.lane.LaneBusyException;

import java.util.Optional;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;

/** Waits on a request's own thread for an answer that another thread gives. */
final class Waiting {
    private Waiting() {}

    /** The answer, or empty when it did not come in time or the lane is too busy to be asked. */
    static <T> Optional<T> forAnswer(CompletionStage<T> answer, int seconds) {
        try {
            return Optional.of(answer.toCompletableFuture().get(seconds, TimeUnit.SECONDS));
        } catch (TimeoutException e) {
            return Optional.empty();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof LaneBusyException) {
                return Optional.empty();
            }
            throw new IllegalStateException("no answer could be made", e.getCause());
        }
    }
}
