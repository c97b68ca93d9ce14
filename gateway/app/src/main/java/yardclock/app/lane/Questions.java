package yardclock.app.lane;

import yardclock.core.engine.Engine;

import java.util.concurrent.CompletableFuture;
import java.util.function.Function;

/**
 * Read-only questions to the state. Any thread may ask.
 *
 * <p>The question runs on the lane's thread between two batches, so it must be quick, must change
 * nothing and must not let the engine escape. The future fails with {@link LaneBusyException} when
 * too many questions wait or the lane has ended; use a timeout when you wait for it. Stages without
 * {@code Async} run on the lane's thread: write to no socket there.
 */
@FunctionalInterface
public interface Questions {
    <T> CompletableFuture<T> ask(Function<Engine, T> question);
}
