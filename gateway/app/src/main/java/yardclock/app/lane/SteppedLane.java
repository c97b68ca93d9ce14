package yardclock.app.lane;

import yardclock.core.engine.Engine;
import yardclock.core.engine.Input;

import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * The lane without a thread of its own, for days that are simulated in virtual time: whoever calls
 * {@link #turn} lends theirs. It keeps, applies, answers and draws as {@link Lane} does.
 */
public final class SteppedLane implements Inbox, Questions {
    private final Door door;
    private final Duty duty;

    public SteppedLane(LaneParts parts, LaneSinks sinks, Opening opening) {
        Waiting waiting = new Waiting(Limits.INBOX_INPUTS);
        this.door = new Door(waiting, parts.clock());
        this.duty = new Duty(parts, waiting, sinks, opening);
    }

    /** Does what is due now; for so many nanoseconds of the clock nothing else is. */
    public long turn() {
        return duty.turn();
    }

    @Override
    public boolean offer(List<? extends Input> inputs, Consumer<Receipt> done) {
        return door.offer(inputs, done);
    }

    @Override
    public <T> CompletableFuture<T> ask(Function<Engine, T> question) {
        return door.ask(question);
    }
}
